import { expect } from 'vitest';
import { boardFootFactor, boardLength, linealFactor } from '../../../src/core/takeoff/arithmetic/index.js';
import { layOut } from '../../../src/core/takeoff/layout/index.js';
import { feet, fromInches, type Area } from '../../../src/base/units/index.js';
import { boards, rectangle } from '../../takeoff/layout/shapes.js';
import { published } from '../published.js';

/** Table 4 of a mill's installation guide, from the WWPA coverage estimator: nominal width and thickness, face, feet and board
 *  feet for a square foot, printed to two places. */
const table =
  'WWPA coverage estimator, as Table 4 of https://www.manualshelf.com/manual/sierra-pacific-industries/168bstg/installation-guide-english/page-11.html';
const rows: readonly (readonly [
  pattern: string,
  width: number,
  thickness: number,
  face: number,
  lineal: number,
  board: number,
])[] = [
  ['Bevel and bungalow', 4, 1, 2.5, 4.8, 1.6],
  ['Bevel and bungalow', 6, 1, 4.5, 2.67, 1.33],
  ['Bevel and bungalow', 8, 1, 6.25, 1.92, 1.28],
  ['Bevel and bungalow', 10, 1, 8.25, 1.45, 1.21],
  ['Dolly Varden', 4, 1, 3, 4, 1.33],
  ['Dolly Varden', 6, 1, 5, 2.4, 1.2],
  ['Dolly Varden', 8, 1, 6.75, 1.78, 1.19],
  ['Dolly Varden', 10, 1, 8.75, 1.37, 1.14],
  ['Dolly Varden', 12, 1, 10.75, 1.12, 1.12],
  ['Drop, T&G and channel rustic', 4, 1, 3.125, 3.84, 1.28],
  ['Drop, T&G and channel rustic', 6, 1, 5.125, 2.34, 1.17],
  ['Drop, T&G and channel rustic', 8, 1, 6.875, 1.75, 1.16],
  ['Drop, T&G and channel rustic', 10, 1, 8.875, 1.35, 1.13],
  ['Log cabin', 6, 2, 4.9375, 2.43, 2.43],
  ['Log cabin', 8, 2, 6.625, 1.81, 2.42],
  ['Log cabin', 10, 2, 8.625, 1.39, 2.32],
];
for (const [pattern, width, thickness, face, lineal, board] of rows) {
  published(
    { what: `${pattern} ${thickness}x${width}: ${lineal} ft, ${board} bd ft for a sq ft`, source: table, mark: 'S' },
    () => {
      expect(linealFactor(fromInches(face)).toFixed(2)).toBe(lineal.toFixed(2));
      expect(boardFootFactor({ width, thickness }, fromInches(face)).toFixed(2)).toBe(board.toFixed(2));
    },
  );
}

const rule = 'WWPA coverage estimator, rule text at https://www.edmundallen.com/products/coverage-estimator';
published({ what: 'openings come off and 10 % goes on before the factor', source: rule, mark: 'C' }, () => {
  // (1,000 − 100) × 1.1 = 990 sq ft; a face of 6" takes 2 ft for each: 1,980 ft.
  const surface = { gross: 1000 as Area, openings: 100 as Area, trimAndWaste: 0.1, face: fromInches(6) };
  expect(boardLength(surface)).toBeCloseTo(1980, 6);
});

const logs = 'https://twincreeksloghomes.com/lumber-conversion-tips';
published(
  { what: '1,000 sq ft in a face of 7" takes 1,714 ft; the text drops the fraction', source: logs, mark: 'S' },
  () => {
    const surface = { gross: 1000 as Area, openings: 0 as Area, trimAndWaste: 0, face: fromInches(7) };
    expect(Math.floor(boardLength(surface))).toBe(1714);
  },
);

published({ what: 'courses laid out on whole faces take the factor times the area', source: table, mark: 'C' }, () => {
  // 24 courses of 5 1/8" make 123"; 30' of each is 307.5 sq ft × 12 / 5.125 = 720 ft.
  const layout = layOut(boards([rectangle(360, 123)]));
  expect(layout.courses).toHaveLength(24);
  expect(feet(layout.needed)).toBeCloseTo(307.5 * linealFactor(fromInches(5.125)), 9);
});
