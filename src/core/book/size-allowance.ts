import type { Allowance } from '../model/index.js';
import { asPrinted, fewestDigits, printAmount, printDecimal } from '../../base/units/index.js';
import { priceOf, type SizedAllowance } from '../price/index.js';
import type { Draft } from './draft.js';

/** The sum an allowance holds; `drafts` are those that draw on it. One given as a rate is that rate for each unit measured, net of waste, at the places that
 *  draw on it. */
export function sizeAllowance(allowance: Allowance, drafts: readonly Draft[]): SizedAllowance {
  const { amount } = allowance;
  if (amount.by === 'lump') return { allowance, amount: amount.sum, basis: 'lump sum' };
  const measured = drafts.reduce((sum, draft) => sum + netOf(draft, amount.unit), 0);
  const sum = priceOf(amount.rate, measured);
  const digits = fewestDigits(2, (count) => priceOf(amount.rate, asPrinted(measured, count)) === sum);
  const basis = `${printAmount(measured, digits)} ${amount.unit} × $${printDecimal(amount.rate, 2)}`;
  return { allowance, amount: sum, basis };
}

function netOf({ options }: Draft, unit: string): number {
  const [first] = options.values();
  return first?.takeoffs.find((takeoff) => takeoff.unit === unit)?.net ?? 0;
}
