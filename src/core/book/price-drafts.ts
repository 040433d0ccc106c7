import type { Records, RoomMeasure } from '../model/index.js';
import { nettedBy, priceHouse, type HousePrice, type Item } from '../price/index.js';
import { draftSelections, optionId, type Draft } from './draft.js';
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
  const drafts = taken.map((draft) => ({ draft, item: work.item(draft.id, makeItem(draft)) }));
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

function makeItem({ id, room, selection, category, options }: Draft): Item {
  const { standard, allowance, chosen, supply, facts, considering, insteadOf } = selection;
  const open = considering.length > 0 ? considering : standard === undefined ? [] : [standard];
  const considered = open.filter((slug) => options.has(slug)).map((slug) => optionId(category.slug, slug));
  return {
    selection: id,
    room: room.slug,
    category: category.slug,
    trade: category.trade,
    supply,
    decided: chosen !== undefined,
    ordered: facts.some(({ step }) => step !== 'released'),
    ...(allowance !== undefined && { allowance }),
    ...(standard !== undefined && { standard: optionId(category.slug, standard) }),
    ...(chosen !== undefined && chosen !== 'none' && { chosen: optionId(category.slug, chosen) }),
    ...(insteadOf && {
      before: {
        option: optionId(category.slug, insteadOf.option),
        ...(insteadOf.restocking !== undefined && { restocking: insteadOf.restocking }),
      },
    }),
    considered: [...new Set(considered)],
    takeoffs: new Map([...options].map(([slug, { takeoffs }]) => [optionId(category.slug, slug), takeoffs])),
  };
}
