import { byText } from '../../base/units/index.js';
import { timesOf } from '../takeoff/index.js';
import type { Lot, Order } from './cost.js';
import type { PricedPart, PricedPool } from './pool.js';
import type { World } from './world.js';

/** Counts what is bought of one part of a product: pieces by stock length, and as its trade counts it. */
export type CountOrder = (order: Pick<Order, 'option' | 'part' | 'supply'>) => Pick<Order, 'stock' | 'laid' | 'counts'>;

/** What the whole house buys, with its shares: by option id, its parts in the record's order. */
export function orderList(world: World, count: CountOrder = () => ({ stock: [] })): Order[] {
  const orders = [...world.pools.values()].flatMap((pool) => pool.parts.map((part) => makeOrder(pool, part, count)));
  return orders.sort((a, b) => byText(a.option, b.option));
}

/** How much is bought of each part of a product. */
export function lotsOf({ parts }: PricedPool): Lot[] {
  return parts.map(({ part: { part, unit, pack }, ordered: { packs, quantity } }) => ({
    part,
    unit,
    packs,
    ...(pack && { pack }),
    ordered: quantity,
  }));
}

function makeOrder({ option, items, supply }: PricedPool, priced: PricedPart, count: CountOrder): Order {
  const { part, ordered, cost, takeoffs, shares } = priced;
  const times = timesOf(takeoffs.find((takeoff) => takeoff !== undefined)?.factors ?? []);
  const { stock, laid, counts } = count({ option, part: part.part, supply });
  return {
    option,
    part: part.part,
    trade: items[0]?.trade ?? '',
    unit: part.unit,
    net: ordered.net,
    ...(times !== 1 && { times }),
    required: ordered.required,
    packs: ordered.packs,
    ...(part.pack && { pack: part.pack }),
    ordered: ordered.quantity,
    stock,
    ...(laid && { laid }),
    rate: part.material,
    supply,
    cost,
    shares: items.flatMap((item, index) => {
      const takeoff = takeoffs[index];
      const share = shares[index];
      return takeoff && share ? [{ selection: item.selection, required: takeoff.required, cost: share }] : [];
    }),
    ...(counts && { counts }),
  };
}
