import { Decimal as Reference } from 'decimal.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contractEffect, priceOf, shareOf } from '../../../src/core/price/index.js';
import type { Cents } from '../../../src/base/units/index.js';
import { contract } from '../../price/house.js';

/** A second decimal library, at a precision that never cuts. */
const Wide = Reference.clone({ precision: 60 });
const rounded = (value: Reference): number => value.toDecimalPlaces(0, Reference.ROUND_HALF_UP).toNumber() || 0;
const decimal = fc.record({ amount: fc.integer({ min: 0, max: 20_000 }), scale: fc.integer({ min: 0, max: 5 }) });
const money = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }).map((n) => n as Cents);

const valueOf = ({ amount, scale }: { readonly amount: number; readonly scale: number }): number =>
  amount / 10 ** scale;

test('a share of an amount, charge or credit', () => {
  fc.assert(
    fc.property(money, decimal, (amount, share) => {
      const expected = new Wide(amount).mul(share.amount).div(new Wide(10).pow(share.scale));
      expect(shareOf(amount, share)).toBe(rounded(expected));
    }),
  );
});

test('a rate times a quantity, at and around every half cent', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100_000 }), fc.constantFrom(-1, 0, 1), (halves, side) => {
      const millionths = halves * 5_000 + side;
      const expected = new Wide(Math.max(0, millionths)).div(10_000);
      expect(priceOf({ rate: { amount: 1, scale: 0 }, unit: 'sq ft' }, Math.max(0, millionths) / 1e6)).toBe(
        rounded(expected),
      );
    }),
  );
});

test('mark-up and credit: each rounded once, and change = difference + mark-up + what does not return', () => {
  fc.assert(
    fc.property(money, decimal, decimal, fc.boolean(), (difference, markup, returns, creditMarkup) => {
      // Whole cents are exact as far as whole numbers are: two shares of thousands of times an amount are no contract's.
      fc.pre(Math.abs(difference) * valueOf(markup) * Math.max(1, valueOf(returns)) < Number.MAX_SAFE_INTEGER / 4);
      const credit = creditMarkup && ('as-added' as const);
      const rules = { ...contract, overageMarkup: markup, creditReturns: returns, creditMarkup: credit };
      const effect = contractEffect(difference, 'allowance', rules);
      expect(effect.difference + effect.markup + effect.retained).toBe(effect.change);
      const of = (amount: number, share: typeof markup) =>
        rounded(new Wide(amount).mul(share.amount).div(new Wide(10).pow(share.scale)));
      const back = of(difference, returns);
      const expected =
        difference > 0 ? difference + of(difference, markup) : back + (creditMarkup ? of(back, markup) : 0);
      expect(effect.change).toBe(expected);
    }),
  );
});
