/** Figures that hold as printed: whoever ticks a page has the printed digits and nothing else. */

/** A figure as `printAmount` prints it, as a number. */
export function asPrinted(amount: number, digits: number): number {
  const steps = stepsOf(amount, digits);
  return steps === 0 ? 0 : (Math.sign(amount) * steps) / 10 ** digits;
}

/** How many units of the last printed digit an amount is, whatever its sign; halves away from zero. */
export function stepsOf(amount: number, digits: number): number {
  return Math.floor(steady(Math.abs(amount) * 10 ** digits) + 0.5);
}

/** Do two figures print alike? */
export function printsAs(one: number, other: number, digits: number): boolean {
  return asPrinted(one, digits) === asPrinted(other, digits);
}

const most = 8;

/** The fewest digits, from `from` on, with which a figure as printed leads to the result as printed. */
export function fewestDigits(from: number, leads: (digits: number) => boolean): number {
  for (let digits = from; digits < most; digits++) if (leads(digits)) return digits;
  return most;
}

/** Terms with so many digits, so that they add up to their sum with as many: each is rounded down, and what is left goes to the
 *  largest remainders, ties to the earlier one. Source: the largest-remainder (Hamilton) method of apportionment. */
export function addingUp(terms: readonly number[], digits: number): readonly number[] {
  const step = 10 ** digits;
  const exact = terms.map((term) => steady(term * step));
  const down = exact.map(Math.floor);
  const sum = asPrinted(total(terms), digits) * step;
  const left = Math.round(sum - total(down));
  const first = new Set(
    exact
      .map((term, index) => ({ index, rest: term - Math.floor(term) }))
      .sort((a, b) => b.rest - a.rest || a.index - b.index)
      .slice(0, Math.max(0, left))
      .map(({ index }) => index),
  );
  return down.map((term, index) => (term + (first.has(index) ? 1 : 0)) / step);
}

/** The 14th digit of a float is noise: 0.15 × 10 must round as 1.5 does. */
function steady(value: number): number {
  return Number(value.toPrecision(14));
}

const total = (terms: readonly number[]): number => terms.reduce((sum, term) => sum + term, 0);
