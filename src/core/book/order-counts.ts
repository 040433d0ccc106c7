import type { Records } from '../model/index.js';
import type { CountOrder, Order } from '../price/index.js';
import { poolCounts, sumLaid, sumStock, type Takeoff } from '../takeoff/index.js';
import type { BookSelection } from './book.js';
import { optionId } from './draft.js';
import { groupBy } from './group-by.js';

/** Counts orders as they are bought: pieces by stock length where the product is laid out or cut from lengths, and, where the category's record
 *  names a way of its trade, gallons, lineal feet or sheets. */
export function orderCounter(
  selections: readonly BookSelection[],
  { categories, options }: Pick<Records, 'categories' | 'options'>,
): CountOrder {
  const byOption = groupBy(selections, ({ category, counted }) => optionId(category, counted ?? ''));
  const rules = new Map(categories.map(({ slug, measure }) => [slug, measure]));
  const known = new Map(options.map((option) => [optionId(option.category, option.slug), option]));
  return ({ option: id, part, supply }) => {
    const users = byOption.get(id) ?? [];
    const supplied = users
      .filter((user) => user.supply === supply)
      .flatMap(({ takeoff }) => takeoff.filter((each) => each.part === part));
    const sum = sumLaid(supplied);
    const laid = {
      stock: sum?.stock ?? cutStock(supplied),
      ...(sum && { laid: { orderBy: sum.orderBy, surface: sum.surface } }),
    };
    const option = known.get(id);
    const rule = option && rules.get(option.category);
    if (!option || !rule) return laid;
    const counts = poolCounts(rule, option, supplied);
    return counts.length === 0 && rule.counted === undefined ? laid : { ...laid, counts };
  };
}

/** Pieces that timbers are cut from, over all places. */
function cutStock(takeoffs: readonly Takeoff[]): Order['stock'] {
  return sumStock(takeoffs.flatMap(({ cutting }) => cutting?.stock ?? []));
}
