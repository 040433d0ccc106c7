import { expect } from 'vitest';
import { facingWeight, stoneCorners, stoneFlats, withWaste } from '../../../src/core/takeoff/arithmetic/index.js';
import { fromFeet, fromInches } from '../../../src/base/units/index.js';
import type { Area } from '../../../src/base/units/index.js';
import { published } from '../published.js';

published({ what: '40 ft of corners stand for 20 sq ft of flats', source: 'https://nevilstone.com', mark: 'S' }, () => {
  expect(stoneFlats(200 as Area, fromFeet(40), 0.5)).toBeCloseTo(180, 9);
});

const other = 'https://luxurystoneproducts.com/helpfultools';
published({ what: 'at another maker a foot of corner stands for 0.75 sq ft', source: other, mark: 'S' }, () => {
  expect(stoneFlats(200 as Area, fromFeet(40), 0.75)).toBeCloseTo(170, 9);
});

published({ what: 'corners are ordered in whole feet', source: other, mark: 'S' }, () => {
  expect([stoneCorners(fromInches(12 * 33 + 1)), stoneCorners(fromFeet(33))]).toEqual([34, 33]);
});

published(
  { what: 'four walls of 50 by 10 ft: 2,000 sq ft, with 10 % 2,200', source: 'https://quarrymill.com', mark: 'S' },
  () => {
    expect(withWaste(stoneFlats((4 * 50 * 10) as Area, fromFeet(0), 0), 0.1)).toBeCloseTo(2200, 9);
  },
);

// The page prints 64, from 5/12 = 0.4267: a slip, 5/12 is 0.4167.
const forum = 'https://www.thebuildingcodeforum.com, post 287839';
published({ what: 'stone 5" thick at 150 lb / cu ft weighs 62.5 lb / sq ft', source: forum, mark: 'C' }, () => {
  expect(facingWeight(fromInches(5), 150)).toBeCloseTo(62.5, 9);
});
