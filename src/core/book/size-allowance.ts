import type { Allowance } from '../model/index.js';
import {
  asPrinted,
  currency,
  fewestDigits,
  houseRate,
  printAmount,
  printDecimal,
  unitName,
  unitSize,
  withSign,
} from '../../base/units/index.js';
import { priceOf, type SizedAllowance } from '../price/index.js';
import type { Draft } from './draft.js';

/** The sum an allowance holds; `drafts` are those that draw on it. One given as a rate is that rate for each unit measured, net of waste, at the places that
 *  draw on it. */
export function sizeAllowance(allowance: Allowance, drafts: readonly Draft[]): SizedAllowance {
  const { amount } = allowance;
  if (amount.by === 'lump') return { allowance, amount: amount.sum, basis: 'lump sum' };
  const measured = drafts.reduce((sum, draft) => sum + netOf(draft, amount.unit), 0);
  const sum = priceOf(amount, measured);
  const one = unitSize(amount.unit);
  const digits = fewestDigits(2, (count) => priceOf(amount, asPrinted(measured / one, count) * one) === sum);
  const rate = withSign(printDecimal(houseRate(amount).rate, currency().digits));
  const basis = `${printAmount(measured / one, digits)} ${unitName(amount.unit)} × ${rate}`;
  return { allowance, amount: sum, basis };
}

function netOf({ options }: Draft, unit: string): number {
  const [first] = options.values();
  return first?.takeoffs.find((takeoff) => takeoff.unit === unit)?.net ?? 0;
}
