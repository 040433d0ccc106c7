import { expect } from 'vitest';
import { baseLength } from '../../../src/core/takeoff/arithmetic/index.js';
import { loadBook } from '../../../src/disk/load/index.js';
import { fromFeet, type IsoDate } from '../../../src/base/units/index.js';
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

/** The demo house's primary bath by hand: walls of 6, 6.5, 11 and 10 ft outside of the shower = 33.5, less door D06 of 2'-8" and door D08
 *  of 2'-6" = 28.33. The shower's two walls are tiled to the floor, and the niche in one of them hangs above it. */
published(
  {
    what: 'base of a bath: 6 + 6.5 + 11 + 10 less doors of 2.67 and 2.5: 28.33 ft, as the handbook takes openings off',
    source: book,
    mark: 'C',
  },
  async () => {
    const { book: demo } = await loadBook('.', '2026-04-20' as IsoDate);
    const base = demo?.selections.find(({ id }) => id.startsWith('primary-bath/base-trim'));
    expect(base?.takeoff[0]?.net).toBeCloseTo(33.5 - 2 - 8 / 12 - 2.5, 6);
    expect(base?.placeText).toContain('except');
  },
);
