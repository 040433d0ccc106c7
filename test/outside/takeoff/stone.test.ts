import { expect } from 'vitest';
import { stoneFlats, withWaste } from '../../../src/core/takeoff/arithmetic/index.js';
import { fromFeet, type Area } from '../../../src/base/units/index.js';
import { published } from '../published.js';

published({ what: '40 ft of corners stand for 20 sq ft of flats', source: 'https://nevilstone.com', mark: 'S' }, () => {
  expect(stoneFlats(200 as Area, fromFeet(40), 0.5)).toBeCloseTo(180, 9);
});

const other = 'https://luxurystoneproducts.com/helpfultools';
published({ what: 'at another maker a foot of corner stands for 0.75 sq ft', source: other, mark: 'S' }, () => {
  expect(stoneFlats(200 as Area, fromFeet(40), 0.75)).toBeCloseTo(170, 9);
});

published(
  { what: 'four walls of 50 by 10 ft: 2,000 sq ft, with 10 % 2,200', source: 'https://quarrymill.com', mark: 'S' },
  () => {
    expect(withWaste(stoneFlats((4 * 50 * 10) as Area, fromFeet(0), 0), 0.1)).toBeCloseTo(2200, 9);
  },
);
