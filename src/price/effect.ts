import type { Allowance, Contract } from '../model/index.js';
import { costParts } from '../model/index.js';
import type { Cents } from '../units/index.js';
import { costOf } from './cost.js';
import type { Cost } from './cost.js';
import type { Item } from './item.js';
import { shareOf } from './rounding.js';

/** What moves the contract when a cost lies `difference` over (or, negative, under) what the contract holds: mark-up is
 *  added to what is over; what is under returns as the contract says. */
export function contractEffect(difference: number, contract: Contract): { markup: Cents; change: Cents } {
  const amount = difference as Cents;
  if (amount > 0) {
    const markup = shareOf(amount, contract.overageMarkup);
    return { markup, change: (amount + markup) as Cents };
  }
  const returned = shareOf(amount, contract.creditReturns);
  const markup = contract.creditMarkup ? shareOf(returned, contract.overageMarkup) : (0 as Cents);
  return { markup, change: (returned + markup) as Cents };
}

/** Change of the contract by one selection, outside any allowance. `cost` is absent while nothing is counted for it.
 *  - No allowance: the whole cost against the standard's (against nothing when there is no standard: an extra).
 *  - With an allowance: only what the allowance does not cover, against the standard's; without a standard the contract
 *    sum is taken to hold it. */
export function selectionEffect(
  item: Item,
  cost: Cost | undefined,
  standard: Cost | undefined,
  allowance: Allowance | undefined,
  contract: Contract,
): Cents {
  if (!cost) return 0 as Cents;
  if (!allowance) return contractEffect(cost.total - (standard?.total ?? 0), contract).change;
  if (item.standard === undefined || !standard) return 0 as Cents;
  const uncovered = costParts.filter((part) => !allowance.covers.includes(part));
  return contractEffect(costOf(cost, uncovered) - costOf(standard, uncovered), contract).change;
}

/** Change of the contract by one allowance: an overrun counts at once, an underrun once everything on it is decided. */
export function allowanceEffect(
  amount: Cents,
  committed: Cents,
  settled: boolean,
  contract: Contract,
): { overage: Cents; markup: Cents; credit: Cents; change: Cents } {
  const difference = committed - amount;
  if (difference > 0) {
    const { markup, change } = contractEffect(difference, contract);
    return { overage: difference as Cents, markup, credit: 0 as Cents, change };
  }
  if (!settled) return { overage: 0 as Cents, markup: 0 as Cents, credit: 0 as Cents, change: 0 as Cents };
  const { change } = contractEffect(difference, contract);
  return { overage: 0 as Cents, markup: 0 as Cents, credit: (-change || 0) as Cents, change };
}
