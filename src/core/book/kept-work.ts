import { dateMilestones } from '../calendar/index.js';
import type { Contract, Option } from '../model/index.js';
import { pricePool, type InvoicedOrder, type Item, type PricedPool, type PricePool } from '../price/index.js';
import { keepAlike, keepSame, numbering, remember } from '../../base/units/index.js';
import { describeChoice } from './describe-choice.js';
import type { Draft } from './draft.js';
import { draftRoom } from './draft-room.js';
import { layCounted } from './lay-counted.js';
import { makeDecider } from './make-decider.js';
import { makeItem } from './make-item.js';
import type { Neighbours } from './neighbours.js';
import { takeSelection, type Taken, type TakeSelection } from './take-selection.js';

/** Steps that Books may have in common: each a function of nothing but what it is given. */
export interface Work {
  readonly draftRoom: typeof draftRoom;
  readonly take: TakeSelection;
  readonly describeChoice: typeof describeChoice;
  readonly layCounted: typeof layCounted;
  readonly dateMilestones: typeof dateMilestones;
  readonly decider: typeof makeDecider;
  readonly pool: PricePool;
  readonly item: (draft: Draft) => Item;
  /** What says the same under one name may be the same object. */
  readonly neighbours: (name: string, neighbours: Neighbours) => Neighbours;
}

/** All of it is made anew. */
export const freshWork: Work = {
  draftRoom,
  take: takeSelection,
  describeChoice,
  layCounted,
  dateMilestones,
  decider: makeDecider,
  pool: pricePool,
  item: makeItem,
  neighbours: (_, neighbours) => neighbours,
};

/** What was made stays as long as all that it was made from does, as objects: records, measures, choices. Of Books one after the other only that is
 *  taken off, laid out, dated and priced which changed between them, and what shares an order with it. */
export function keptWork(): Work {
  const [alike, alikeItem] = [keepAlike<Taken>(), keepAlike<Item>()];
  return {
    draftRoom: keepSame(draftRoom),
    // Where a room was measured again, or a price moved, most quantities are what they were.
    take: keepSame((selection, id, ...inputs) => alike(id, takeSelection(selection, id, ...inputs))),
    describeChoice: keepSame(describeChoice),
    layCounted: keepSame(layCounted),
    dateMilestones: keepSame(dateMilestones),
    decider: keepSame(makeDecider),
    pool: keptPools(),
    item: keepSame((draft: Draft) => alikeItem(draft.id, makeItem(draft))),
    neighbours: keepAlike(),
  };
}

/** Prices orders as `pricePool` does; the same places buying the same product under the same contract are priced once. */
function keptPools(): PricePool {
  const numberOf = numbering();
  const invoiced = keepAlike<readonly InvoicedOrder[]>();
  const poolsOf = keepSame(
    (_option: Option, _contract: Contract, _orders: readonly InvoicedOrder[]) => new Map<string, PricedPool>(),
  );
  return (id, items, supply, book) => {
    const price = (): PricedPool => pricePool(id, items, supply, book);
    const option = book.options.get(id);
    if (!option) return price();
    const pools = poolsOf(option, book.contract, invoiced(id, book.invoiced?.get(id) ?? []));
    return remember(pools, `${supply} ${items.map(numberOf).join()}`, price);
  };
}
