import type { Allowance } from '../model/index.js';
import { currency, houseRate, printDecimal, printQuantity, withSign } from '../../base/units/index.js';
import { priceOf, type SizedAllowance } from '../price/index.js';
import type { Draft } from './draft.js';

/** The sum an allowance holds; `drafts` are those that draw on it. One given as a rate is that rate for each unit measured, net of waste, at the places that
 *  draw on it. */
export function sizeAllowance(allowance: Allowance, drafts: readonly Draft[]): SizedAllowance {
  const { amount } = allowance;
  if (amount.by === 'lump') return { allowance, amount: amount.sum, basis: 'lump sum' };
  const measured = drafts.reduce((sum, draft) => sum + netOf(draft, amount.unit), 0);
  const basis = `${printQuantity(measured, amount.unit, 2)} × ${withSign(printDecimal(houseRate(amount).rate, currency().digits))}`;
  return { allowance, amount: priceOf(amount, measured), basis };
}

function netOf({ options }: Draft, unit: string): number {
  const [first] = options.values();
  return first?.takeoffs.find((takeoff) => takeoff.unit === unit)?.net ?? 0;
}
