import { add, dinero, halfUp, multiply, toSnapshot, transformScale, type Dinero } from 'dinero.js/bigint';
import { currency, houseRate, type Cents, type Decimal, type Rate } from '../../base/units/index.js';

/** Any currency will do: the house names its own, and no two are ever mixed. */
const coins = () => ({ code: 'XXX', base: 10n, exponent: scaleOfCoins() });
const scaleOfCoins = (): bigint => BigInt(currency().digits);
const quantityScale = 6;

/** rate × quantity in whole cents, rounded half up, once. The quantity counts to a millionth of the unit that the house reads: what is
 *  printed is what is multiplied, in square feet as in square metres. */
export function priceOf(of: Rate, quantity: number): Cents {
  const { rate, times } = houseRate(of);
  const price = dinero({ amount: BigInt(rate.amount), currency: coins(), scale: BigInt(rate.scale) });
  const count = { amount: BigInt(Math.round(quantity * times * 10 ** quantityScale)), scale: BigInt(quantityScale) };
  return wholeCoins(multiply(price, count));
}

/** A share of an amount in whole cents, rounded half up (away from zero for credits, so that a change and its reverse
 *  are the same figure). */
export function shareOf(amount: Cents, share: Decimal): Cents {
  const sign = amount < 0 ? -1 : 1;
  const rounded = wholeCoins(
    multiply(inCoins(Math.abs(amount)), { amount: BigInt(share.amount), scale: BigInt(share.scale) }),
  );
  return (sign * rounded || 0) as Cents;
}

/** What several rates take of several amounts, together: the exact sum in whole cents, rounded half up, once. */
export function sumOfShares(parts: readonly { readonly amount: Cents; readonly share: Decimal }[]): Cents {
  const exact = parts.map(({ amount, share }) =>
    multiply(inCoins(amount), { amount: BigInt(share.amount), scale: BigInt(share.scale) }),
  );
  return wholeCoins(exact.reduce(add, inCoins(0)));
}

function inCoins(amount: number): Dinero<bigint, string> {
  return dinero({ amount: BigInt(amount), currency: coins(), scale: scaleOfCoins() });
}

function wholeCoins(price: Dinero<bigint, string>): Cents {
  return Number(toSnapshot(transformScale(price, scaleOfCoins(), halfUp)).amount) as Cents;
}

/** Shares an amount out by weight so that the shares add up to it to the cent: each gets its whole cents, and the cents
 *  left over go to the largest remainders, ties to the earlier one. All weights zero: the first takes it all.
 *  Source: the largest-remainder (Hamilton) method of apportionment. */
export function shareOut(amount: Cents, weights: readonly number[]): Cents[] {
  if (amount === 0) return weights.map(() => 0 as Cents);
  const whole = weights.map((weight) => Math.round(weight * 10 ** quantityScale));
  const sum = whole.reduce((total, weight) => total + weight, 0);
  if (sum === 0) return weights.map((_, index) => (index === 0 ? amount : 0) as Cents);
  const parts = isExact(amount, whole, sum) ? dividedNumbers(amount, whole, sum) : dividedIntegers(amount, whole);
  const result = parts.map(({ share }) => share);
  let left = amount - result.reduce((total, share) => total + share, 0);
  const byRemainder = parts
    .map(({ remainder }, index) => ({ index, remainder }))
    .sort((a, b) => (a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1));
  for (const { index } of byRemainder) {
    if (left === 0) break;
    result[index] = (result[index] ?? 0) + 1;
    left -= 1;
  }
  return result as Cents[];
}

/** A whole share, and what is left of the division. */
interface Part {
  readonly share: number;
  readonly remainder: number | bigint;
}

/** Do an amount and weights stay whole numbers where they are multiplied, and added up? Those of a house do, and are divided many times faster. */
function isExact(amount: Cents, whole: readonly number[], sum: number): boolean {
  const most = whole.reduce((greatest, weight) => Math.max(greatest, weight), 0);
  return sum <= Number.MAX_SAFE_INTEGER && Math.abs(amount) * most <= Number.MAX_SAFE_INTEGER;
}

function dividedNumbers(amount: Cents, whole: readonly number[], sum: number): readonly Part[] {
  return whole.map((weight) => {
    const remainder = (amount * weight) % sum;
    return { share: (amount * weight - remainder) / sum, remainder };
  });
}

function dividedIntegers(amount: Cents, weights: readonly number[]): readonly Part[] {
  const whole = weights.map(BigInt);
  const sum = whole.reduce((total, weight) => total + weight, 0n);
  return whole.map((weight) => {
    const exact = BigInt(amount) * weight;
    return { share: Number(exact / sum), remainder: exact % sum };
  });
}
