import type { LookUp } from '../core/book/index.js';
import { words, type HouseBlock, type Sheet } from '../sheet/index.js';
import { orders, pricedOrders } from './orders.js';
import { isFilled } from './part.js';
import { supplies } from './supplies.js';

const lead =
  'Each product is bought once for the whole house and rounded up once, so a bundle opened for one room serves the next. Open choices are counted with their standard; one that is open on an allowance is not counted until it is decided. The installer confirms before ordering.';

/** What the house buys, by trade. On paper it holds no money, so that it may be handed on. */
export function orderSheet(look: LookUp, { withMoney }: { readonly withMoney: boolean }): Sheet {
  return {
    format: 'bookmatch/sheet/1',
    id: 'orders',
    title: withMoney ? 'Order list' : 'Order list by trade',
    paper: 'portrait',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words(withMoney ? lead : `${lead} No money stands on these sheets.`)] },
      ...(withMoney ? [pricedOrders(look), supplies.lay(look)].filter(isFilled) : orderTables(look)),
    ],
  };
}

/** The same without money. */
export const orderTables = (look: LookUp): readonly HouseBlock[] =>
  [orders.lay(look), supplies.lay(look)].filter(isFilled);
