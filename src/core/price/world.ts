import type { Cents } from '../../base/units/index.js';
import { addCosts, type Cost } from './cost.js';
import type { Item, PriceBook } from './item.js';
import { pricePool, type PricedPool, type PricePool } from './pool.js';

/** A house priced with one option for each selection. */
export interface World {
  /** Pooled products by key: option id and who supplies it. */
  readonly pools: ReadonlyMap<string, PricedPool>;
  /** Items of each pool, in order. */
  readonly members: ReadonlyMap<string, readonly Item[]>;
  /** Cost of each selection; absent where nothing is counted. */
  readonly costs: ReadonlyMap<string, Cost>;
  /** The option counted for each selection. */
  readonly counted: ReadonlyMap<string, string | undefined>;
}

/** Prices the house with `choose` telling which option stands for each item. Items must be sorted by selection id, so
 *  that the order of files on disk changes no cent. Linear in the selections. */
export function priceWorld(
  items: readonly Item[],
  choose: (item: Item) => string | undefined,
  book: PriceBook,
  price: PricePool = pricePool,
): World {
  const counted = new Map(items.map((item) => [item.selection, choose(item)]));
  const members = new Map<string, Item[]>();
  for (const item of items) {
    const option = counted.get(item.selection);
    if (option === undefined) continue;
    const key = keyOf(option, item.supply);
    const list = members.get(key);
    if (list) list.push(item);
    else members.set(key, [item]);
  }
  const pools = new Map([...members].map(([key, list]) => [key, priceKey(key, list, book, price)]));
  const costs = new Map<string, Cost>();
  for (const pool of pools.values()) for (const [selection, cost] of pool.costs) costs.set(selection, cost);
  return { pools, members, costs, counted };
}

/** What a place costs by its quantities, where an invoice counts instead; else what it costs. */
export function computedCost({ pools, counted, costs }: World, { selection, supply }: Item): Cost | undefined {
  const option = counted.get(selection);
  const pool = option === undefined ? undefined : pools.get(keyOf(option, supply));
  return pool?.computed?.get(selection) ?? costs.get(selection);
}

export function ownerPurchases(world: World): Cents {
  let sum = 0;
  for (const pool of world.pools.values()) sum += pool.ownerPays;
  return sum as Cents;
}

export function worldCost(world: World): Cost {
  return addCosts(world.costs.values());
}

/** Who buys which product. */
export function keyOf(option: string, supply: Item['supply']): string {
  return `${supply} ${option}`;
}

function priceKey(key: string, items: readonly Item[], book: PriceBook, price: PricePool): PricedPool {
  const [supply, option] = key.split(' ') as [Item['supply'], string];
  return price(option, items, supply, book);
}
