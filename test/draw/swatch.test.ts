import { describe, expect, it } from 'vitest';
import { drawSwatch } from '../../src/draw/index.js';
import { isOther, lightness, mix, shade } from '../../src/draw/swatch/color.js';
import { swatchPatterns, type Swatch } from '../../src/core/model/index.js';
import { svgText, type SvgNode } from '../../src/base/svg/index.js';
import type { Length } from '../../src/base/units/index.js';
import { nodesOf, outside, unfinite } from './reading.js';

/** Shapes that every renderer draws alike. */
const plain = new Set(['svg', 'title', 'path', 'rect', 'circle', 'ellipse', 'line']);

const palettes = [['#b08a5e', '#96714a'], ['#f3f0ea'], ['#22302c', '#d8d4cc', '#9a8468', '#77706a']];
const repeats = [undefined, 0.75, 2, 3, 6.75, 9, 12, 24];

const cases = swatchPatterns.flatMap((pattern) =>
  palettes.flatMap((colors) => repeats.map((repeat) => ({ pattern, colors, repeat }))),
);

function swatch({ pattern, colors, repeat }: (typeof cases)[number]): Swatch {
  return { pattern, colors, ...(repeat === undefined ? {} : { repeat: (repeat * 25_400_000) as Length }) };
}

describe.each([
  [320, 200],
  [96, 60],
])('swatches of %d by %d', (width, height) => {
  it.each(swatchPatterns)('%s is small, finite, inside and plain', (pattern) => {
    for (const one of cases.filter((candidate) => candidate.pattern === pattern)) {
      const svg = drawSwatch(swatch(one), { width, height, seed: 'a', title: 'T' });
      expect({ one, bytes: Math.max(12_000, svgText(svg).length) }).toEqual({ one, bytes: 12_000 });
      expect({ one, outside: outside(svg, 0.2), unfinite: unfinite(svg) }).toEqual({ one, outside: [], unfinite: [] });
      expect(
        nodesOf(svg)
          .map(({ name }) => name)
          .filter((name) => !plain.has(name)),
      ).toEqual([]);
      expect(nodesOf(svg).flatMap(({ attributes }) => attributes['id'] ?? [])).toEqual([]);
    }
  });
});

describe('a swatch', () => {
  const draw = (seed: string): string =>
    svgText(drawSwatch({ pattern: 'ledge', colors: ['#8d8378'] }, { width: 320, height: 200, seed, title: 'Ledge' }));

  it('is the same for one seed and another for another', () => {
    expect(draw('one')).toBe(draw('one'));
    expect(draw('one')).not.toBe(draw('two'));
  });

  it('has a name for those who do not see it, escaped', () => {
    const text = svgText(
      drawSwatch(
        { pattern: 'solid', colors: ['#abc'] },
        { width: 96, height: 60, seed: 's', title: 'Oak 3/4" & <wax>' },
      ),
    );
    expect(text).toContain('role="img" aria-label="Oak 3/4&quot; &amp; &lt;wax&gt;"');
    expect(text).toContain('fill="#aabbcc"');
  });

  it('stands on a neutral when the record gives no colour that can be read', () => {
    expect(
      svgText(drawSwatch({ pattern: 'solid', colors: ['teal'] }, { width: 96, height: 60, seed: 's', title: 'T' })),
    ).toContain('fill="#b8b2a6"');
  });
});

describe('colours', () => {
  it('go to OKLab and back', () =>
    expect(['#000000', '#ffffff', '#b08a5e', '#336699'].map((color) => mix(color, color, 0.5))).toEqual([
      '#000000',
      '#ffffff',
      '#b08a5e',
      '#336699',
    ]));

  // Source: B. Ottosson 2020: white has L = 1; sRGB mid grey #777777 has L about 0.57.
  it('have the published lightness', () => {
    expect(lightness('#ffffff')).toBeCloseTo(1, 4);
    expect(lightness('#777777')).toBeCloseTo(0.5693, 2);
  });

  it('darken and lighten', () => {
    expect(lightness(shade('#b08a5e', -0.1))).toBeCloseTo(lightness('#b08a5e') - 0.1, 1);
    expect(lightness(shade('#b08a5e', 0.1))).toBeGreaterThan(lightness('#b08a5e'));
  });

  it('know a tone from another thing', () => {
    expect(isOther('#b98a5a', '#a87848')).toBe(false);
    expect(isOther('#b98a5a', '#2e312f')).toBe(true);
  });
});

describe('an option whose record describes no sample', () => {
  const texts = (node: SvgNode): readonly string[] =>
    node.name === 'text'
      ? node.children.map(String)
      : node.children.flatMap((child) => (typeof child === 'string' ? [] : texts(child)));

  it.each([
    ['Cork', 66, 66],
    ['Handmade-look glazed tile, 4 by 4 inches', 400, 300],
    ['x'.repeat(80), 144, 108],
  ])('is hatched with its name: %s', (title, width, height) => {
    const svg = drawSwatch(undefined, { width, height, seed: 's', title });
    expect(svg.attributes['data-pattern']).toBe('untold');
    expect(texts(svg).join(' ')).toBe(title);
    const size = Number(/"font-size":([\d.]+)/u.exec(JSON.stringify(svg))?.[1]);
    // No line is wider than the picture, at a width of a letter that few names reach.
    expect(Math.max(...texts(svg).map((line) => line.length)) * size * 0.6).toBeLessThanOrEqual(width);
  });
});
