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

/** What printed terms leave of their printed sum, each rounded by itself: 0 where they add up, else some units of the last digit. */
export function leftByRounding(terms: readonly number[], sum: number, digits: number): number {
  const printed = terms.reduce((all, term) => all + asPrinted(term, digits), 0);
  return asPrinted(asPrinted(sum, digits) - printed, digits);
}

/** The digits with which figures are printed that should add up: one more where the sums tick only then, else those given, and what
 *  rounding leaves is said. More are not tried: thirds never add up, and nobody measures by them. */
export function digitsToTick(digits: number, ticks: (digits: number) => boolean): number {
  return !ticks(digits) && ticks(digits + 1) ? digits + 1 : digits;
}

/** The 14th digit of a float is noise: 0.15 × 10 must round as 1.5 does. */
function steady(value: number): number {
  return Number(value.toPrecision(14));
}
