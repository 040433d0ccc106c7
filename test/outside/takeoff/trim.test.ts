import { expect } from 'vitest';
import { baseLength } from '../../../src/core/takeoff/arithmetic/index.js';
import { fromFeet } from '../../../src/base/units/index.js';
import { published } from '../published.js';

const book =
  'Estimating in Building Construction, p. 169, example 13-25, https://issuhub.com/view/index/4050?pageIndex=182';

published(
  {
    what: 'base: 148 ft of outside walls, 149 ft of inside walls on both sides, less 25 ft of doors: 421 ft',
    source: book,
    mark: 'S',
  },
  () => {
    const walls = [
      { run: fromFeet(148), sides: 1 },
      { run: fromFeet(149), sides: 2 },
    ] as const;
    expect(baseLength(walls, [fromFeet(25)])).toBeCloseTo(421, 9);
  },
);

published({ what: 'fascia: two of 52 ft and four of 13.9 ft: 159.6 ft', source: book, mark: 'S' }, () => {
  const runs = [52, 52, 13.9, 13.9, 13.9, 13.9].map((length) => ({ run: fromFeet(length), sides: 1 as const }));
  expect(baseLength(runs, [])).toBeCloseTo(159.6, 6);
});
