import { costParts, type Allowance, type Contract, type CostPart } from '../model/index.js';
import type { Cents } from '../../base/units/index.js';
import { costOf, type Cost, type Effect } from './cost.js';
import type { Item } from './item.js';
import { shareOf } from './rounding.js';

const noEffect: Effect = { difference: 0, markup: 0, retained: 0, change: 0 } as Effect;

/** What moves the contract when a cost lies `difference` over (or, negative, under) what the contract holds: mark-up is
 *  added to what is over; what is under returns as the contract says. */
export function contractEffect(difference: number, contract: Contract): Effect {
  if (difference === 0) return noEffect;
  const amount = difference as Cents;
  if (amount > 0) {
    const markup = shareOf(amount, contract.overageMarkup);
    return { difference: amount, markup, retained: 0 as Cents, change: (amount + markup) as Cents };
  }
  const returned = shareOf(amount, contract.creditReturns);
  const markup = contract.creditMarkup ? shareOf(returned, contract.overageMarkup) : (0 as Cents);
  const retained = (returned - amount) as Cents;
  return { difference: amount, markup, retained, change: (returned + markup || 0) as Cents };
}

/** What of a selection's cost is compared with its standard's: all, or what its allowance does not cover. */
export function comparedParts(allowance: Allowance | undefined): readonly CostPart[] {
  return allowance ? costParts.filter((part) => !allowance.covers.includes(part)) : costParts;
}

/** Effect of one selection on the contract, outside any allowance. `cost` is absent while nothing is counted for it.
 *  - No allowance: the whole cost against the standard's (against nothing when there is no standard: an extra).
 *  - With an allowance: only what the allowance does not cover, against the standard's; without a standard the contract
 *    sum is taken to hold it. */
export function selectionEffect(
  item: Item,
  cost: Cost | undefined,
  standard: Cost | undefined,
  allowance: Allowance | undefined,
  contract: Contract,
): Effect {
  if (!cost) return noEffect;
  if (!allowance) return contractEffect(cost.total - (standard?.total ?? 0), contract);
  if (item.standard === undefined || !standard) return noEffect;
  const parts = comparedParts(allowance);
  return contractEffect(costOf(cost, parts) - costOf(standard, parts), contract);
}

/** Effect of one allowance on the contract: an overrun counts at once, an underrun once everything on it is decided. */
export function allowanceEffect(amount: Cents, committed: Cents, settled: boolean, contract: Contract): Effect {
  const difference = committed - amount;
  return difference > 0 || settled ? contractEffect(difference, contract) : noEffect;
}
