import { asPrinted, digitsToTick, lastDigits, leftByRounding, shown } from '../../base/units/index.js';

/** An area in the house's units, and with how many digits it is printed. */
export interface Figure {
  readonly value: number;
  readonly digits: number;
}

export function figure(area: number): Figure {
  return { value: shown(area, 'sq ft').amount, digits: lastDigits() };
}

/** A whole and what it is made of, with the digits that tick. */
export function ticking(whole: number, parts: readonly number[]): readonly [whole: Figure, ...parts: Figure[]] {
  const [sum, ...terms] = [whole, ...parts].map((area) => shown(area, 'sq ft').amount) as [number, ...number[]];
  const digits = digitsToTick(lastDigits(), (count) => leftByRounding(terms, sum, count) === 0);
  return [{ value: sum, digits }, ...terms.map((value) => ({ value, digits }))];
}

/** The sum of what is printed, so that a table ticks. */
export function sumOf(figures: readonly Figure[]): Figure & { readonly is: 'amount' } {
  const digits = Math.max(lastDigits(), ...figures.map((one) => one.digits));
  const value = figures.reduce((sum, one) => sum + asPrinted(one.value, one.digits), 0);
  return { is: 'amount', value, digits };
}

/** Under a table with sums. */
export const roundedNote = 'Each figure is rounded by itself; a sum is that of the printed figures.';
