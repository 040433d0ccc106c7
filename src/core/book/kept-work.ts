import { keepBy, keepEach, remember } from '../../base/units/index.js';
import type { Selection } from '../model/index.js';
import { pricePool, type Item, type PricePool } from '../price/index.js';
import type { Takeoff } from '../takeoff/index.js';
import type { Draft, Drafted, KeepDraft } from './draft.js';
import type { Decider } from './make-decider.js';

/** Work that Books have in common whose records are the same objects but for the selections in which something else is chosen: what is taken off,
 *  laid out, dated and priced for places that nobody touched. For one house: asked with other records it would answer wrongly. */
export interface KeptWork {
  readonly draft: KeepDraft;
  readonly item: (draft: Draft, make: () => Item) => Item;
  readonly laid: (draft: Draft, option: string, make: () => readonly Takeoff[]) => readonly Takeoff[];
  readonly decider: (key: string, make: () => Decider) => Decider;
  readonly pool: PricePool;
}

export function keptWork(): KeptWork {
  const drafts = new WeakMap<Selection, Drafted>();
  // A draft's options are made once with it, and stay the same object in a copy that stands in another room's object.
  const items = new WeakMap<Draft['options'], Item>();
  const layouts = new WeakMap<Draft['options'], Map<string, readonly Takeoff[]>>();
  const deciders = new Map<string, Decider>();
  return {
    draft: (selection, make) => remember(drafts, selection, make),
    item: ({ options }, make) => remember(items, options, make),
    laid: ({ options }, option, make) =>
      remember(
        remember(layouts, options, () => new Map<string, readonly Takeoff[]>()),
        option,
        make,
      ),
    decider: (key, make) => remember(deciders, key, make),
    pool: keptPools(),
  };
}

/** Prices orders as `pricePool` does; the same places buying the same product are priced once. */
function keptPools(): PricePool {
  let last = 0;
  const numberOf = keepEach((_item: Item) => (last += 1));
  return keepBy(
    (id, items, supply, { invoiced }) =>
      `${supply} ${id} ${invoiced?.has(id) ? 'invoiced' : ''} ${items.map(numberOf).join()}`,
    pricePool,
  );
}
