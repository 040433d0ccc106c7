import { add, dinero, halfUp, multiply, toSnapshot, transformScale } from 'dinero.js/bigint';
import type { Cents, Decimal } from '../../base/units/index.js';

/** Any currency with cents will do: the house names its own, and no two are ever mixed. */
const cents = { code: 'XXX', base: 10n, exponent: 2n } as const;
const quantityScale = 6;

/** rate × quantity in whole cents, rounded half up, once. The quantity counts to a millionth. */
export function priceOf(rate: Decimal, quantity: number): Cents {
  const price = dinero({ amount: BigInt(rate.amount), currency: cents, scale: BigInt(rate.scale) });
  const times = { amount: BigInt(Math.round(quantity * 10 ** quantityScale)), scale: BigInt(quantityScale) };
  return wholeCents(multiply(price, times));
}

/** A share of an amount in whole cents, rounded half up (away from zero for credits, so that a change and its reverse
 *  are the same figure). */
export function shareOf(amount: Cents, share: Decimal): Cents {
  const sign = amount < 0 ? -1 : 1;
  const price = dinero({ amount: BigInt(Math.abs(amount)), currency: cents, scale: 2n });
  const rounded = wholeCents(multiply(price, { amount: BigInt(share.amount), scale: BigInt(share.scale) }));
  return (sign * rounded || 0) as Cents;
}

/** What several rates take of several amounts, together: the exact sum in whole cents, rounded half up, once. */
export function sumOfShares(parts: readonly { readonly amount: Cents; readonly share: Decimal }[]): Cents {
  const nothing = dinero({ amount: 0n, currency: cents, scale: 2n });
  const exact = parts.map(({ amount, share }) =>
    multiply(dinero({ amount: BigInt(amount), currency: cents, scale: 2n }), {
      amount: BigInt(share.amount),
      scale: BigInt(share.scale),
    }),
  );
  return wholeCents(exact.reduce(add, nothing));
}

function wholeCents(price: ReturnType<typeof multiply<bigint, string>>): Cents {
  return Number(toSnapshot(transformScale(price, 2n, halfUp)).amount) as Cents;
}

/** Shares an amount out by weight so that the shares add up to it to the cent: each gets its whole cents, and the cents
 *  left over go to the largest remainders, ties to the earlier one. All weights zero: the first takes it all.
 *  Source: the largest-remainder (Hamilton) method of apportionment. */
export function shareOut(amount: Cents, weights: readonly number[]): Cents[] {
  const whole = weights.map((weight) => BigInt(Math.round(weight * 10 ** quantityScale)));
  const sum = whole.reduce((total, weight) => total + weight, 0n);
  if (sum === 0n) return weights.map((_, index) => (index === 0 ? amount : 0) as Cents);
  const exact = whole.map((weight) => BigInt(amount) * weight);
  const shares = exact.map((share) => share / sum);
  let left = Number(BigInt(amount) - shares.reduce((total, share) => total + share, 0n));
  const byRemainder = exact
    .map((share, index) => ({ index, remainder: share % sum }))
    .sort((a, b) => (a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1));
  const result = shares.map(Number);
  for (const { index } of byRemainder) {
    if (left === 0) break;
    result[index] = (result[index] ?? 0) + 1;
    left -= 1;
  }
  return result as Cents[];
}
