import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  balustersIn,
  baseLength,
  cablesUnder,
  hingesFor,
  packsFor,
  paintFor,
  postsAlong,
  sheetOrder,
  sheetsFor,
  stoneFlats,
  usedWith,
  wholePieces,
  withWaste,
} from '../../../src/core/takeoff/arithmetic/index.js';
import { feet, fromInches, type Area } from '../../../src/base/units/index.js';

/** What is bought in whole pieces, by adding one after another until there are enough. No publication is behind it. */

const inch = fromInches;
const inches = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 8, max: most * 8 }).map((count) => count / 8);

/** The first count, from `from` on, with which there is enough. */
function fewest(from: number, isEnough: (count: number) => boolean): number {
  let count = from;
  while (!isEnough(count)) count += 1;
  return count;
}

describe('equal spaces', () => {
  test('posts: one more than the fewest spaces that are none too wide', () => {
    fc.assert(
      fc.property(inches(1, 600), inches(12, 120), (run, apart) => {
        const spaces = fewest(1, (count) => run / count <= apart);
        const { posts, spacing } = postsAlong(inch(run), inch(apart));
        expect(posts).toBe(spaces + 1);
        expect(spacing * 12).toBeCloseTo(run / spaces, 6);
      }),
    );
    expect(postsAlong(inch(0), inch(48))).toEqual({ posts: 0, spacing: 0 });
    expect(postsAlong(inch(-12), inch(48))).toEqual({ posts: 0, spacing: 0 });
    // Where no spacing is given, a post at each end.
    expect(postsAlong(inch(144), inch(0))).toEqual({ posts: 2, spacing: 12 });
  });

  test('balusters: the fewest that leave no gap wider than allowed, all gaps alike', () => {
    fc.assert(
      fc.property(inches(1, 120), inches(0.5, 4), inches(1, 6), (bay, width, widest) => {
        const gapWith = (count: number): number => (bay - count * width) / (count + 1);
        const count = fewest(0, (each) => gapWith(each) <= widest + 1e-9);
        const { balusters, gap } = balustersIn(inch(bay), inch(width), inch(widest));
        expect(balusters).toBe(count);
        expect(feet(gap) * 12).toBeCloseTo(gapWith(count), 4);
      }),
    );
    expect(balustersIn(inch(0), inch(1), inch(4))).toEqual({ balusters: 0, gap: 0 });
    expect(balustersIn(inch(12), inch(0), inch(0))).toEqual({ balusters: 0, gap: inch(12) });
  });

  test('cables: the fewest that leave no gap from floor to rail wider than allowed', () => {
    fc.assert(
      fc.property(inches(6, 60), inches(1, 12), (height, apart) => {
        expect(cablesUnder(inch(height), inch(apart))).toBe(fewest(0, (count) => height / (count + 1) <= apart));
      }),
    );
    expect([cablesUnder(inch(36), inch(0)), cablesUnder(inch(0), inch(3))]).toEqual([0, 0]);
  });

  test('hinges: two up to five feet, and one for each two and a half feet begun above', () => {
    fc.assert(
      fc.property(inches(12, 180), (height) => {
        expect(hingesFor(inch(height))).toBe(fewest(2, (count) => height <= 60 + (count - 2) * 30));
      }),
    );
  });
});

describe('whole packs and sheets', () => {
  const amounts = fc.integer({ min: 0, max: 500_000 }).map((count) => count / 100);
  const shares = fc.integer({ min: 0, max: 25 }).map((percent) => percent / 100);

  test('as many as hold it', () => {
    fc.assert(
      fc.property(amounts, shares, fc.integer({ min: 1, max: 500 }), (amount, waste, holds) => {
        const needed = amount + amount * waste;
        expect(withWaste(amount, waste)).toBeCloseTo(needed, 9);
        expect(packsFor(amount, waste, holds)).toBe(fewest(0, (count) => count * holds > needed - 1e-7));
        expect(wholePieces(amount)).toBe(fewest(0, (count) => count > amount - 1e-7));
      }),
    );
    expect([wholePieces(-3), wholePieces(3 + 1e-12), wholePieces(3.01)]).toEqual([0, 3, 4]);
  });

  test('sheets for each part by itself, then waste, then whole sheets again', () => {
    fc.assert(
      fc.property(fc.array(amounts, { minLength: 1, maxLength: 4 }), shares, (parts, waste) => {
        const each = parts.map((area) => fewest(0, (count) => count * 32 > area - 1e-6));
        const all = each.reduce((sum, count) => sum + count, 0);
        expect(parts.map((area) => sheetsFor(area as Area, 32 as Area))).toEqual(each);
        expect(sheetOrder(parts as Area[], 32 as Area, waste)).toBe(
          fewest(0, (count) => count > all + all * waste - 1e-6),
        );
      }),
    );
  });

  test('cans of paint, each spread as far as it goes, coat after coat', () => {
    fc.assert(
      fc.property(
        amounts,
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 200, max: 450 }),
        fc.constantFrom(1, 5),
        (area, coats, spread, holds) => {
          const { gallons, cans } = paintFor(area as Area, coats, spread, holds);
          expect(gallons * spread).toBeCloseTo(
            Array.from({ length: coats }, () => area).reduce((a, b) => a + b, 0),
            6,
          );
          expect(cans).toBe(fewest(0, (count) => count * holds * spread > area * coats - 1e-4));
        },
      ),
    );
  });

  test('in proportion: twice as much takes twice as much, and what is for one lot is for one lot', () => {
    fc.assert(
      fc.property(amounts, fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 2000 }), (lots, amount, per) => {
        expect(usedWith(per * lots, { amount, per })).toBeCloseTo(amount * lots, 4);
      }),
    );
  });
});

describe('less, and never less than nothing', () => {
  test('base by walking along it: each side of each wall, then each opening', () => {
    const walls = fc.array(fc.record({ run: inches(6, 400), sides: fc.constantFrom(1 as const, 2 as const) }), {
      maxLength: 5,
    });
    fc.assert(
      fc.property(walls, fc.array(inches(6, 72), { maxLength: 5 }), (list, openings) => {
        const faces = list.flatMap(({ run, sides }) => (sides === 2 ? [run, run] : [run]));
        let left = faces.reduce((sum, run) => sum + run, 0);
        for (const width of openings) left -= width;
        const runs = list.map(({ run, sides }) => ({ run: inch(run), sides }));
        expect(baseLength(runs, openings.map(inch)) * 12).toBeCloseTo(Math.max(left, 0), 6);
      }),
    );
  });

  test('flats of stone: what a foot of corner covers comes off for each foot', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 400 }),
        fc.integer({ min: 0, max: 200 }),
        inches(0, 1),
        (area, run, each) => {
          const rest = Array.from({ length: run }).reduce<number>((left) => left - each, area);
          expect(stoneFlats(area as Area, inch(run * 12), each)).toBeCloseTo(Math.max(rest, 0), 6);
        },
      ),
    );
  });
});
