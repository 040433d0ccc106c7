import type { Item } from '../price/index.js';
import { optionId, type Draft } from './draft.js';

/** What pricing sees of a selection. */
export function makeItem({ id, room, selection, category, options }: Draft): Item {
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
