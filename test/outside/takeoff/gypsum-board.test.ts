import { expect } from 'vitest';
import { packsFor, sheetOrder, sheetsFor, usedWith } from '../../../src/core/takeoff/arithmetic/index.js';
import type { Area } from '../../../src/base/units/index.js';
import { published } from '../published.js';
import { demoCategory } from './demo.js';

const book =
  'Estimating in Building Construction, p. 203, example 16-3, https://issuhub.com/view/index/4050?pageIndex=216';
const sheet = 32 as Area;

/** The demo's record gives the handbook's rates: what the Book works with is checked, not a copy of it. */
const supplies = ((await demoCategory('gypsum-board')).measure.supplies ?? []).filter(
  // Corner bead goes by corners, which the handbook's area has none of.
  ({ goesWith }) => goesWith === undefined,
);
const used = (area: number) => supplies.map(({ what, usage }) => [what, usedWith(area, usage), usage.unit]);

published({ what: 'tape, compound and screws for 1,000 sq ft', source: book, mark: 'S' }, () => {
  expect(used(1000)).toEqual([
    ['Joint tape', 380, 'lin ft'],
    ['Joint compound, ready-mixed', 5, 'gal'],
    ['Drywall screws', 1000, 'each'],
  ]);
});

published(
  {
    what: '346 ft of wall, 10 ft high, both sides, taken as 7,000 sq ft: 2,660 ft of tape in 59 rolls',
    source: book,
    mark: 'S',
  },
  () => {
    expect(346 * 10 * 2).toBe(6920);
    expect(used(7000).map(([, quantity]) => quantity)).toEqual([2660, 35, 7000]);
    const [tape] = supplies;
    expect(tape && packsFor(2660, tape.waste.amount / 10 ** tape.waste.scale, tape.pack?.holds ?? 0)).toBe(59);
  },
);

const walls = { outside: (148 * 8) as Area, inside: (149 * 8 * 2) as Area };
const ceiling = (24 * 50) as Area;

published({ what: 'a house: 37, 75 and 38 sheets', source: book, mark: 'S' }, () => {
  expect([walls.outside, walls.inside, ceiling]).toEqual([1184, 2384, 1200]);
  expect([walls.outside, walls.inside, ceiling].map((area) => sheetsFor(area, sheet))).toEqual([37, 75, 38]);
});

published({ what: 'the same with 5 % waste: 118 sheets for walls, 40 for ceilings', source: book, mark: 'S' }, () => {
  expect(sheetOrder([walls.outside, walls.inside], sheet, 0.05)).toBe(118);
  expect(sheetOrder([ceiling], sheet, 0.05)).toBe(40);
});

const pages = 'https://firstlinesales.com/estimating_page_9.htm';
for (const [length, count] of [
  [8, 32],
  [10, 25],
  [12, 21],
] as const) {
  published({ what: `1,000 sq ft in sheets of 4 by ${length}: ${count}`, source: pages, mark: 'S' }, () => {
    expect(sheetsFor(1000 as Area, (4 * length) as Area)).toBe(count);
  });
}

published(
  { what: '1,080 sq ft in sheets of 4 by 8: 34', source: 'https://howtobuildplans.com/?p=40', mark: 'S' },
  () => {
    expect(sheetsFor(1080 as Area, sheet)).toBe(34);
  },
);

const soffit =
  'Estimating in Building Construction, p. 169, example 13-25, https://issuhub.com/view/index/4050?pageIndex=182';
published({ what: 'a soffit of 1.5 by 104 ft: 156 sq ft, 5 sheets', source: soffit, mark: 'S' }, () => {
  const area = (1.5 * 104) as Area;
  expect(area).toBe(156);
  expect(sheetsFor(area, sheet)).toBe(5);
});
