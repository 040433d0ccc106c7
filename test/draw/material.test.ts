import { describe, expect, it } from 'vitest';
import { drawSwatch } from '../../src/draw/index.js';
import {
  boardInk,
  boardTones,
  materialOf,
  washed,
  type MaterialCell,
  type MaterialFacts,
} from '../../src/draw/swatch/index.js';
import { clip } from '../../src/draw/swatch/canvas.js';
import { lightness, mix } from '../../src/draw/swatch/color.js';
import type { Swatch } from '../../src/core/model/index.js';
import { svgText, type SvgNode } from '../../src/base/svg/index.js';
import type { Length } from '../../src/base/units/index.js';
import { nodesOf, pathCorners } from './reading.js';

type Corner = readonly [number, number];
type Covering = readonly [name: string, swatch: Swatch, facts: MaterialFacts];

const inches = (value: number): Length => (value * 25_400_000) as Length;
const gray = ['#8d877c', '#a39c8f', '#6f6a61'];
const buff = ['#b3a995', '#c4bba8', '#9d9482'];
const oak = ['#c6a578', '#b9976a'];
const white = ['#e9ede6', '#dfe5dc'];

const stones: readonly Covering[] = [
  ['full-bed ledge', { pattern: 'ledge', colors: gray, repeat: inches(6) }, { courses: [2, 3, 4, 5, 6] }],
  ['thin ledge', { pattern: 'ledge', colors: gray, repeat: inches(5) }, { courses: [1, 2, 3, 4] }],
  ['cast ledge', { pattern: 'ledge', colors: gray, repeat: inches(5) }, { courses: [2, 3, 4], shapes: 9 }],
  ['ashlar', { pattern: 'ashlar', colors: buff, repeat: inches(12) }, { courses: [4, 6, 8] }],
  ['ledge by its repeat', { pattern: 'ledge', colors: gray, repeat: inches(5) }, {}],
  ['ledge of one height', { pattern: 'ledge', colors: gray }, { courses: [4] }],
  ['ledge of courses that nobody lays', { pattern: 'ledge', colors: gray }, { courses: [1 / 64] }],
  ['ashlar of odd heights', { pattern: 'ashlar', colors: gray }, { courses: [3.625, 7.5] }],
  ['cobble', { pattern: 'cobble', colors: gray }, {}],
];
const tiles = ([0, 45, 90] as const).flatMap((turn) => [
  ...(['stack', 'half', 'third'] as const).map((bond): Covering => [
    `12 x 24 ${bond} ${turn}`,
    { pattern: 'tile', colors: white },
    { size: [24, 12], bond, turn },
  ]),
  [`4 x 4 at ${turn}`, { pattern: 'tile', colors: white, repeat: inches(4) }, { turn }] satisfies Covering,
  [`3 x 9 at ${turn}`, { pattern: 'tile', colors: white, repeat: inches(9) }, { turn }] satisfies Covering,
]);
const plasters: readonly Covering[] = [
  ['orange peel', { pattern: 'texture', colors: ['#ebe6dc', '#ddd6c8'], repeat: inches(0.75) }, {}],
  ['islands', { pattern: 'texture', colors: ['#ebe6dc', '#ddd6c8'], repeat: inches(2) }, {}],
  ['hand trowel', { pattern: 'texture', colors: ['#eae3d5', '#d9cfbc'], repeat: inches(9) }, {}],
  ['hand trowel, painted', { pattern: 'texture', colors: ['#eae3d5'] }, { relief: 9, paint: '#7d8a78' }],
];
const others: readonly Covering[] = [
  ...tiles,
  ...plasters,
  ['hex', { pattern: 'hex', colors: white, repeat: inches(2) }, {}],
  ['herringbone', { pattern: 'herringbone', colors: oak, repeat: inches(3) }, {}],
  ['planks', { pattern: 'planks', colors: oak, repeat: inches(5) }, {}],
  ['boards', { pattern: 'boards', colors: oak, repeat: inches(5.125) }, {}],
  ['timber', { pattern: 'timber', colors: oak, repeat: inches(9.5) }, {}],
  ['sheet metal', { pattern: 'metal', colors: ['#8a8f8f'], repeat: inches(16) }, {}],
];
const seeds = ['one', 'two', 'three'];

describe.each([...stones, ...others])('a cell of %s', (_, swatch, facts) => {
  it.each(seeds)('wraps in both directions (%s)', (seed) => {
    const cell = cellOf(swatch, facts, seed);
    expect(outlinesOf(cell).length).toBeGreaterThan(2);
    expect(withoutTwin(cell)).toEqual([]);
  });

  it('is the same for one seed, and another for another', () => {
    expect(materialOf(swatch, facts, 'one')).toEqual(materialOf(swatch, facts, 'one'));
    if (swatch.pattern !== 'metal')
      expect(cellOf(swatch, facts, 'one').nodes).not.toEqual(cellOf(swatch, facts, 'two').nodes);
  });

  it('is plain shapes in literal colors', () => {
    const { nodes } = cellOf(swatch, facts, 'one');
    expect(nodes.map(({ name }) => name).filter((name) => name !== 'path' && name !== 'rect')).toEqual([]);
    for (const { attributes } of nodes) {
      expect(attributes['id']).toBeUndefined();
      expect(String(attributes['stroke'] ?? attributes['fill'])).toMatch(/^#[0-9a-f]{6}$/u);
    }
  });
});

it.each(stones)('%s is small to write', (_, swatch, facts) => {
  for (const seed of seeds) expect(bytesOf(cellOf(swatch, facts, seed))).toBeLessThan(4096);
});

it.each(others)('%s is smaller', (_, swatch, facts) => {
  for (const seed of seeds) expect(bytesOf(cellOf(swatch, facts, seed))).toBeLessThan(2800);
});

it('a twin that is missing is seen', () => {
  const [, swatch, facts] = stones[0]!;
  const cell = cellOf(swatch, facts, 'one');
  const beyond = outlinesOf(cell).find(({ corners }) => corners.some(([x]) => x > cell.width))!;
  const nodes = cell.nodes.map((node) => ({
    ...node,
    attributes: { ...node.attributes, d: String(node.attributes['d'] ?? '').replace(beyond.data, '') },
  }));
  expect(withoutTwin({ ...cell, nodes })).toHaveLength(1);
});

describe('stone', () => {
  const highs = (name: string): number[] => {
    const [, swatch, facts] = stones.find(([known]) => known === name)!;
    return outlinesOf(cellOf(swatch, facts, 'one')).map(({ corners }) => {
      const ys = corners.map(([, y]) => y);
      return Math.max(...ys) - Math.min(...ys);
    });
  };
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

  it('has the heights of its courses, less a joint', () => {
    for (const high of highs('ashlar')) expect([4, 6, 8].some((told) => high < told && high > told - 0.6)).toBe(true);
    expect(Math.max(...highs('full-bed ledge'))).toBeGreaterThan(5);
    expect(Math.max(...highs('thin ledge'))).toBeLessThan(4);
  });

  it('differs so far between kinds that a quarter inch to the foot shows it', () => {
    // A point and a half to the inch: a point in the usual stone's height.
    expect(mean(highs('full-bed ledge')) - mean(highs('thin ledge'))).toBeGreaterThan(0.66);
    expect(mean(highs('ashlar')) - mean(highs('full-bed ledge'))).toBeGreaterThan(0.66);
  });

  it('that is molded comes again after four feet, in few lengths', () => {
    const [, swatch, facts] = stones[2]!;
    expect(cellOf(swatch, facts, 'one').width).toBe(48);
  });
});

describe('plaster', () => {
  it.each(plasters)('%s is a few hundredths of lightness from its wall', (_, swatch, facts) => {
    const { base, cell } = washed(materialOf(swatch, facts, 'one'));
    const tones = cell!.nodes.map(({ attributes: { fill, stroke, opacity } }) =>
      mix(base, String(stroke ?? fill), Number(opacity ?? 1)),
    );
    const off = tones.map((tone) => Math.abs(lightness(tone) - lightness(base)));
    expect(Math.max(...off)).toBeLessThan(0.07);
    expect(Math.max(...off)).toBeGreaterThan(0.004);
  });

  it('has the color of its paint', () => {
    expect(materialOf({ pattern: 'texture', colors: ['#eae3d5'] }, { relief: 9, paint: '#7D8A78' }, 's').base).toBe(
      '#7d8a78',
    );
  });

  it('that is smooth does not repeat', () => {
    expect(materialOf({ pattern: 'texture', colors: ['#f3f0ea', '#efeae1'] }, {}, 's')).toEqual({ base: '#f3f0ea' });
    expect(materialOf({ pattern: 'texture', colors: ['#f3f0ea', '#aaaaaa'] }, { relief: 0 }, 's').cell).toBeUndefined();
  });
});

describe('in a room', () => {
  it('materials go toward paper by a share', () => {
    const oat = materialOf({ pattern: 'solid', colors: ['#e2d6bf'] }, {}, 's');
    expect(oat).toEqual({ base: '#e2d6bf' });
    expect(washed(oat).base).toBe(mix('#e2d6bf', '#fdfcf8', 0.28));
    expect(washed(oat, 0).base).toBe('#e2d6bf');
    const [, swatch, facts] = stones[0]!;
    const ledge = materialOf(swatch, facts, 's');
    washed(ledge).cell!.nodes.forEach(({ attributes }, index) => {
      const own = String(ledge.cell!.nodes[index]!.attributes['fill']);
      expect(attributes['fill']).toBe(mix(own, '#fdfcf8', 0.28));
    });
  });

  it('what nobody decided is hatched', () => {
    expect(withoutTwin(materialOf(undefined, {}, '').cell!)).toEqual([]);
  });

  it('glass is the pane, not its frame', () => {
    expect(materialOf({ pattern: 'glass', colors: ['#3d352e', '#d5e2e3'] }, {}, 's')).toEqual({ base: '#d5e2e3' });
  });

  it('a stone seen from afar is between its joints and its stones', () => {
    const { base } = materialOf({ pattern: 'ledge', colors: ['#8d877c'] }, {}, 's');
    expect(lightness(base)).toBeLessThan(lightness('#8d877c') + 0.02);
    expect(lightness(base)).toBeGreaterThan(lightness('#8d877c') - 0.12);
  });
});

describe('card and room', () => {
  const laid = [...stones, ...others].filter(([, { pattern }]) => !/planks|boards|timber|metal/u.test(pattern));

  it.each(laid)('are of one %s', (_, swatch, facts) => {
    const card = drawSwatch(swatch, { width: 400, height: 300, seed: 'one', title: 'T', facts });
    const onCard = new Set(colorsOf(nodesOf(card)));
    const missing = colorsOf(cellOf(swatch, facts, 'one').nodes).filter((color) => !onCard.has(color));
    // A window may show less than a repeat, and so not every tone of it; most it does.
    expect(missing.length).toBeLessThanOrEqual(onCard.size / 2);
  });

  it.each(['boards', 'planks'] as const)('have the same tones of %s', (pattern) => {
    const swatch: Swatch = { pattern, colors: oak, repeat: inches(5) };
    const tones = boardTones(swatch, 'one', 0);
    expect(tones).toHaveLength(6);
    expect(boardTones(swatch, 'one')).toEqual(tones.map((tone) => mix(tone, '#fdfcf8', 0.28)));
    const known = new Set([...tones, boardInk(swatch, 0)]);
    expect(colorsOf(cellOf(swatch, {}, 'one').nodes).filter((color) => !known.has(color))).toEqual([]);
    const card = drawSwatch(swatch, { width: 400, height: 300, seed: 'one', title: 'T' });
    expect(colorsOf(nodesOf(card)).filter((color) => tones.includes(color)).length).toBeGreaterThan(2);
  });
});

function cellOf(swatch: Swatch, facts: MaterialFacts, seed: string): MaterialCell {
  const { cell } = materialOf(swatch, facts, seed);
  if (cell === undefined) throw new Error(`${swatch.pattern} has no cell`);
  return cell;
}

function bytesOf({ nodes }: MaterialCell): number {
  return nodes.map(svgText).join('').length;
}

function colorsOf(nodes: readonly SvgNode[]): readonly string[] {
  return nodes
    .map(({ attributes: { fill, stroke } }) => String(fill === 'none' ? stroke : fill))
    .filter((color) => color.startsWith('#'));
}

interface Outline {
  readonly data: string;
  readonly look: string;
  readonly corners: readonly Corner[];
}

/** Each closed shape of the cell's paths; a dot as the square around it. */
function outlinesOf({ nodes }: MaterialCell): readonly Outline[] {
  return nodes.flatMap(({ attributes }) => {
    const { d, ...look } = attributes;
    if (d === undefined) return [];
    return String(d)
      .split(/(?=M)/u)
      .map((data) => {
        const corners = pathCorners(data);
        const reach = Number(look['stroke-width'] ?? 0) / 2;
        return { data, look: JSON.stringify(look), corners: reach > 0 ? around(corners[0]!, reach) : corners };
      });
  });
}

function around([x, y]: Corner, reach: number): readonly Corner[] {
  return [
    [x - reach, y - reach],
    [x + reach, y - reach],
    [x + reach, y + reach],
    [x - reach, y + reach],
  ];
}

/** Shapes that a neighboring cell would continue and this one does not, or the other way around. */
function withoutTwin(cell: MaterialCell): readonly string[] {
  const outlines = outlinesOf(cell);
  const key = ({ look, corners }: Omit<Outline, 'data'>): string =>
    look + corners.map(([x, y]) => `${Math.round(x * 100)} ${Math.round(y * 100)}`).join(',');
  const known = new Set(outlines.map(key));
  return outlines.flatMap(({ data, look, corners }) =>
    [-1, 0, 1]
      .flatMap((up) => [-1, 0, 1].map((right) => [right * cell.width, up * cell.height] as const))
      .filter(([right, up]) => {
        const shifted = corners.map(([x, y]): Corner => [x + right, y + up]);
        return areaOf(clip(shifted, cell.width, cell.height)) > 0.02 && !known.has(key({ look, corners: shifted }));
      })
      .map(([right, up]) => `${data} by ${right} ${up}`),
  );
}

function areaOf(corners: readonly Corner[]): number {
  const twice = corners.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = corners[(index + 1) % corners.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}
