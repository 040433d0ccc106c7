import { expect } from 'vitest';
import { shareOut } from '../../../src/core/price/index.js';
import type { Cents } from '../../../src/base/units/index.js';
import { published } from '../published.js';

/** Sharing an order out to the places that it is for is the sharing out of seats, with cents for seats. */
const seats = (of: number, weights: readonly number[]): readonly number[] => shareOut(of as Cents, weights);

// Census of 1790 for sixty seats; the quota is 60 265.333, and eight seats go to the largest remainders.
const states: readonly (readonly [string, number, number])[] = [
  ['Virginia', 630_560, 11],
  ['Massachusetts', 475_327, 8],
  ['Pennsylvania', 432_879, 7],
  ['North Carolina', 353_523, 6],
  ['New York', 331_589, 6],
  ['Maryland', 278_514, 5],
  ['Connecticut', 236_841, 4],
  ['South Carolina', 206_236, 3],
  ['New Jersey', 179_570, 3],
  ['New Hampshire', 141_822, 2],
  ['Vermont', 85_533, 1],
  ['Georgia', 70_835, 1],
  ['Kentucky', 68_705, 1],
  ['Rhode Island', 68_446, 1],
  ['Delaware', 55_540, 1],
];

published(
  {
    what: 'sixty seats to fifteen states by whole quotas and largest remainders',
    source: 'electowiki.org, Hamilton method, example of 1790',
    mark: 'S',
  },
  () => {
    const people = states.map(([, count]) => count);
    expect(people.reduce((sum, count) => sum + count, 0)).toBe(3_615_920);
    expect(seats(60, people)).toEqual(states.map(([, , count]) => count));
  },
);
