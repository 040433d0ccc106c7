import { Decimal as Reference } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priceOf, shareOf, shareOut } from '../../src/core/price/index.js';
import type { Cents } from '../../src/base/units/index.js';

describe('priceOf', () => {
  test('rounds half a cent up, once', () => {
    expect(priceOf({ rate: { amount: 1235, scale: 3 }, unit: 'sq ft' }, 1)).toBe(124);
    expect(priceOf({ rate: { amount: 1234, scale: 3 }, unit: 'sq ft' }, 1)).toBe(123);
    expect(priceOf({ rate: { amount: 740, scale: 2 }, unit: 'sq ft' }, 444.5)).toBe(328930);
  });

  test('agrees with a second decimal library', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5_000_000 }),
        fc.integer({ min: 0, max: 4 }),
        fc.integer({ min: 0, max: 10_000_000_000 }),
        (amount, scale, millionths) => {
          const quantity = millionths / 1e6;
          const expected = new Reference(amount)
            .div(new Reference(10).pow(scale))
            .mul(new Reference(millionths).div(1e6))
            .mul(100);
          expect(priceOf({ rate: { amount, scale }, unit: 'sq ft' }, quantity)).toBe(
            expected.toDecimalPlaces(0, Reference.ROUND_HALF_UP).toNumber(),
          );
        },
      ),
    );
  });
});

describe('shareOf', () => {
  test('a credit rounds as its charge does', () => {
    expect(shareOf(1099 as Cents, { amount: 625, scale: 4 })).toBe(69);
    expect(shareOf(-1099 as Cents, { amount: 625, scale: 4 })).toBe(-69);
    expect(Object.is(shareOf(0 as Cents, { amount: 625, scale: 4 }), 0)).toBe(true);
  });
});

describe('shareOut', () => {
  test('gives left-over cents to the largest remainders', () => {
    expect(shareOut(100 as Cents, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(shareOut(100 as Cents, [2, 3, 6])).toEqual([18, 27, 55]);
    expect(shareOut(5 as Cents, [0, 0])).toEqual([5, 0]);
  });

  test('adds up, gives nothing to no weight, and never strays by a cent', () => {
    const weights = fc.array(fc.double({ min: 0, max: 1e5, noNaN: true }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), weights, (amount, list) => {
        const shares = shareOut(amount as Cents, list);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBe(amount);
        const rounded = list.map((weight) => Math.round(weight * 1e6));
        const total = rounded.reduce((sum, weight) => sum + weight, 0);
        if (total === 0) return;
        shares.forEach((share, index) => {
          const exact = (amount * (rounded[index] ?? 0)) / total;
          expect(Math.abs(share - exact)).toBeLessThan(1 + 1e-6);
        });
      }),
    );
  });
});
