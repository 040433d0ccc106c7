import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { misclosureOf } from '../../src/core/records/index.js';
import { readWalk } from '../../src/draft/index.js';
import { compass } from '../../src/base/units/index.js';
import { drawWalk, printPalette } from '../../src/draw/index.js';
import { svgText } from '../../src/base/svg/index.js';

const walked = (...lines: readonly string[]) => {
  const walk = readWalk(lines);
  if (!walk.ok) throw new Error(walk.why);
  return walk.value;
};

describe('a walk along walls', () => {
  it('names a wall by the side that it stands on, once each, or as it is told', () => {
    const { walls } = walked(`east 14' 2"`, `s 10'`, `W 6 ft`, `Window wall: south 4'`, `west, 8' 2"`, `north 14'`);
    expect(walls.map(({ name, go }) => `${name} ${go}`)).toEqual([
      'north east',
      'east south',
      'south west',
      'window wall south',
      'south-2 west',
      'west north',
    ]);
    expect(walls.map(({ run }) => run)).toEqual([`14' 2"`, `10'`, `6 ft`, `4'`, `8' 2"`, `14'`]);
  });

  it.each([
    ['up 3 ft', 'which way it goes cannot be told'],
    ['east', 'which way it goes cannot be told'],
    ['east 3 parsecs', "wall 1, 'east 3 parsecs'"],
    ["east 0'", 'a wall has a length'],
    ["east -3'", "wall 1, 'east -3''"],
  ])('%s is refused in its own words', (line, words) => {
    const walk = readWalk([line]);
    expect(walk.ok).toBe(false);
    expect(walk.ok ? '' : walk.why).toContain(words);
  });

  it('closes when each way is gone as far as the other, in whatever order', () => {
    const length = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(length, length, length, length, (a, b, c, d) => {
        const lines = [`e ${a}'`, `s ${b}'`, `e ${c}'`, `s ${d}'`, `w ${a + c}'`, `n ${b + d}'`];
        expect(misclosureOf(walked(...lines).walked)).toBeUndefined();
        const short = walked(...lines.slice(0, 5), `n ${b + d + 1}'`);
        expect(misclosureOf(short.walked)?.message).toBe(`the walls do not close: 1'-0" short going south`);
      }),
    );
  });

  it('reads all eight ways by word and by letters', () => {
    for (const go of compass) {
      const letters = go
        .split('-')
        .map((word) => word.charAt(0))
        .join('');
      expect([walked(`${go} 3'`), walked(`${letters} 3'`)].map(({ walls }) => walls[0]?.go)).toEqual([go, go]);
    }
  });
});

describe('a walk that is drawn', () => {
  it('says each length, and dashes what is missing with its length', () => {
    const svg = svgText(drawWalk(walked(`e 14' 2"`, `s 10'`, `w 14'`, `n 10'`).walked, printPalette));
    for (const run of [`14'-2&quot;`, `10'-0&quot;`, `2&quot;`]) expect(svg.replaceAll('&#39;', "'")).toContain(run);
    expect(svg).toContain('stroke-dasharray');
    expect(svgText(drawWalk(walked(`e 14'`, `s 10'`, `w 14'`, `n 10'`).walked, printPalette))).not.toContain(
      'dasharray',
    );
  });

  it('stays within its place, however long', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...compass), fc.integer({ min: 1, max: 4000 })), {
          minLength: 1,
          maxLength: 12,
        }),
        (walls) => {
          const { walked: all } = walked(...walls.map(([go, inches]) => `${go} ${inches}"`));
          const svg = svgText(drawWalk(all, printPalette));
          const places = [...svg.matchAll(/ [xy][12]="(-?[\d.]+)"/gu)].map(([, value]) => Number(value));
          expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
          expect(Math.max(...places)).toBeLessThanOrEqual(620);
          expect(svg).not.toContain('NaN');
        },
      ),
    );
  });
});
