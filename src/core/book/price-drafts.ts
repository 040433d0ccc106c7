import type { Records, RoomMeasure } from '../model/index.js';
import { nettedBy, priceHouse, type HousePrice, type Item } from '../price/index.js';
import { optionId, type Draft } from './draft.js';
import { draftSelections } from './draft-selections.js';
import { groupBy } from './group-by.js';
import { freshWork, type Work } from './kept-work.js';
import { sizeAllowance } from './size-allowance.js';

/** A selection that is taken off, beside what pricing sees of it. */
export interface PricedDraft {
  readonly draft: Draft;
  readonly item: Item;
}

/** Selections that are taken off, priced as one house; each draft beside what pricing sees of it. */
export function priceDrafts(
  records: Records,
  taken: readonly Draft[],
  work: Pick<Work, 'item' | 'pool'> = freshWork,
): { readonly drafts: readonly PricedDraft[]; readonly house: HousePrice } {
  const drafts = taken.map((draft) => ({ draft, item: work.item(draft) }));
  const options = new Map(records.options.map((option) => [optionId(option.category, option.slug), option]));
  const onAllowance = groupBy(taken, ({ selection }) => selection.allowance ?? '');
  const allowances = records.house.allowances.map((each) => sizeAllowance(each, onAllowance.get(each.id) ?? []));
  const items = drafts.map(({ item }) => item);
  const book = { contract: records.house.contract, options, netted: nettedBy(records.changes) };
  return { drafts, house: priceHouse(items, allowances, book, work.pool) };
}

/** Takes the house off once, and answers what prices it: to time pricing alone. */
export function priceRecords(records: Records, measures: ReadonlyMap<string, RoomMeasure>): () => HousePrice {
  const taken = draftSelections(records, measures).value;
  return () => priceDrafts(records, taken).house;
}
