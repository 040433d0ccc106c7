import { expect, test } from 'vitest';
import {
  casingLength,
  paintFor,
  postsAlong,
  stoneFlats,
  transmittance,
  wholePieces,
} from '../../../src/core/takeoff/arithmetic/index.js';
import { fromFeet, fromInches, type Area } from '../../../src/base/units/index.js';

test('casing of a door: two legs of 6-8 and a head of 3-0, past the legs by 3 1/2" at each end', () => {
  // 2 × 6.6667 + 3 = 16.3333; 2 × 3.5" = 7".
  const { opening, past } = casingLength({ width: fromFeet(3), height: fromInches(80), sides: 3 }, fromInches(3.5));
  expect([opening, past]).toEqual([expect.closeTo(16 + 1 / 3, 9), expect.closeTo(7 / 12, 9)]);
});

test('casing of a window of 6 by 5 ft has four sides: 22 ft, and four corners', () => {
  const { opening, past } = casingLength({ width: fromFeet(6), height: fromFeet(5), sides: 4 }, fromInches(3.5));
  expect([opening, past]).toEqual([expect.closeTo(22, 9), expect.closeTo(14 / 12, 9)]);
});

test.each([
  [14, 4, 5, 3.5], // 14 / 4 = 3.5: four spaces of 3'-6", five posts
  [12, 4, 4, 4], // three spaces exactly
  [3, 4, 2, 3], // a post at each end at least
])('a railing of %s ft, posts not over %s ft apart: %s posts', (run, apart, posts, spacing) => {
  expect(postsAlong(fromFeet(run), fromFeet(apart))).toEqual({ posts, spacing: expect.closeTo(spacing, 9) });
});

test('paint: 1,250 sq ft in two coats at 350 sq ft a gallon is 7.14 gallons: 8 of one gallon or 2 of five', () => {
  expect(paintFor(1250 as Area, 2, 350)).toEqual({ gallons: expect.closeTo(7.142857, 5), cans: 8 });
  expect(paintFor(1250 as Area, 2, 350, 5).cans).toBe(2);
});

test('corners never take more flats than there are', () => {
  expect(stoneFlats(10 as Area, fromFeet(40), 0.5)).toBe(0);
});

test('shares of one path are the path: 40 % and 60 % of R-10 are R-10', () => {
  expect(
    transmittance([
      { share: 0.4, layers: [10] },
      { share: 0.6, layers: [4, 6] },
    ]),
  ).toBeCloseTo(0.1, 12);
});

test('whole pieces forgive the last digit of a float, not a hundredth', () => {
  expect([wholePieces(0.1 * 30), wholePieces(3.01), wholePieces(0)]).toEqual([3, 4, 0]);
});
