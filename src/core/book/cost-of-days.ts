import type { Decision } from '../calendar/index.js';
import type { Contract, InsteadOf, Option } from '../model/index.js';
import { shareOf, type Cost } from '../price/index.js';
import { printPercent, type Cents } from '../../base/units/index.js';
import type { Alternative, ChangedOrder } from './book.js';
import type { Draft } from './draft.js';

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

/** What stood before a change, with what the supplier keeps: as the record says, or by the option's terms. */
export function changedOrder(
  { restocking, ...before }: InsteadOf,
  { options }: Draft,
  alternatives: readonly Alternative[],
): ChangedOrder {
  const what = 'Restocking';
  if (restocking !== undefined) return { ...before, restocking: { what, amount: restocking, why: 'as charged' } };
  const terms = options.get(before.option)?.option.returns;
  const amount = alternatives.find(({ option }) => option === before.option)?.restocking;
  if (!terms || amount === undefined) return before;
  const why = `${printPercent(terms.restocking)} of its material here, returned within ${terms.untilDays} days`;
  return { ...before, restocking: { what, amount, why } };
}
