import { printPercent, type Cents } from '../../base/units/index.js';
import type { ReasonedFigure } from './cost.js';
import type { Item, PriceBook } from './item.js';
import type { OpenChoices } from './open-choices.js';
import { shareOf } from './rounding.js';

/** What suppliers keep of orders that were changed, by selection: as charged, or by the terms of the option that was ordered
 *  before, on its material at the place. Passed on as it is: no mark-up is on it. Not known where neither is. */
export function restockingOf(
  items: readonly Item[],
  choices: OpenChoices,
  { options }: PriceBook,
): ReadonlyMap<string, ReasonedFigure> {
  return new Map(
    items.flatMap((item) => {
      const figure = item.before && keptOf(item, item.before, choices, options);
      return figure ? [[item.selection, figure] as const] : [];
    }),
  );
}

function keptOf(
  item: Item,
  { option, restocking }: NonNullable<Item['before']>,
  choices: OpenChoices,
  options: PriceBook['options'],
): ReasonedFigure | undefined {
  const what = 'Restocking';
  if (restocking !== undefined) return { what, amount: restocking, why: 'as charged' };
  const terms = options.get(option)?.returns;
  if (!terms || !item.takeoffs.has(option)) return undefined;
  const amount: Cents = shareOf(choices.figure(item, option).cost.material, terms.restocking);
  const why = `${printPercent(terms.restocking)} of its material here, returned within ${terms.untilDays} days`;
  return { what, amount, why };
}
