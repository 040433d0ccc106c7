import type { Decision } from '../calendar/index.js';
import type { Contract, Option } from '../model/index.js';
import { shareOf, type Cost } from '../price/index.js';
import type { Cents } from '../../base/units/index.js';

/** What the day after the last one costs: the days by which the job ends later, at the contract's cost of a day. */
export function delayOf(
  { dayAfter }: Decision,
  { dayCost }: Pick<Contract, 'dayCost'>,
): { readonly delayCost?: Cents } {
  if (dayCost === undefined || !dayAfter?.last) return {};
  return { delayCost: (dayCost * dayAfter.last.days) as Cents };
}

/** What the supplier keeps of the material of an option when it is sent back. */
export function restockingOf({ returns }: Option, { material }: Cost): { readonly restocking?: Cents } {
  return returns ? { restocking: shareOf(material, returns.restocking) } : {};
}
