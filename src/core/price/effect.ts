import { costParts, type Allowance, type Contract, type CostPart } from '../model/index.js';
import type { Cents } from '../../base/units/index.js';
import { costOf, type Cost, type Effect } from './cost.js';
import type { Item } from './item.js';
import { markupRate, type ChangeKind } from './markup.js';
import { shareOf } from './rounding.js';

const noEffect: Effect = { difference: 0, markup: 0, retained: 0, change: 0 } as Effect;

/** What moves the contract when a cost lies `difference` over (or, negative, under) what the contract holds: mark-up is
 *  added to what is over; what is under returns as the contract says. A contract that figures mark-up on the net of a
 *  change order adds none here. */
export function contractEffect(difference: number, kind: ChangeKind, contract: Contract): Effect {
  if (difference === 0) return noEffect;
  const amount = difference as Cents;
  const back = amount > 0 ? amount : shareOf(amount, contract.creditReturns);
  const markup = contract.markupOn === 'net' ? 0 : shareOf(back, markupRate(amount, kind, contract));
  return {
    difference: amount,
    markup: markup as Cents,
    retained: (back - amount) as Cents,
    change: (back + markup || 0) as Cents,
  };
}

/** What an effect adds to the net of a change order: all of it but the mark-up on its line. */
export function netOf({ difference, retained }: Effect): number {
  return difference + retained;
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
  if (!allowance) return contractEffect(cost.total - (standard?.total ?? 0), 'work', contract);
  if (item.standard === undefined || !standard) return noEffect;
  const parts = comparedParts(allowance);
  return contractEffect(costOf(cost, parts) - costOf(standard, parts), 'work', contract);
}

/** Effect of one allowance on the contract: an overrun counts at once, an underrun once everything on it is decided. */
export function allowanceEffect(amount: Cents, committed: Cents, settled: boolean, contract: Contract): Effect {
  const difference = committed - amount;
  return difference > 0 || settled ? contractEffect(difference, 'allowance', contract) : noEffect;
}
