import type { Records } from '../model/index.js';
import type { Order } from '../price/index.js';
import { poolCounts } from '../takeoff/index.js';
import type { BookSelection } from './book.js';
import { optionId } from './draft.js';
import { groupBy } from './group-by.js';

/** Orders as their trades count them, where the category's record names a way: gallons, lineal feet, sheets. */
export function withCounts(
  orders: readonly Order[],
  selections: readonly BookSelection[],
  { categories, options }: Pick<Records, 'categories' | 'options'>,
): Order[] {
  const byOption = groupBy(selections, ({ category, counted }) => optionId(category, counted ?? ''));
  const rules = new Map(categories.map(({ slug, measure }) => [slug, measure]));
  const known = new Map(options.map((option) => [optionId(option.category, option.slug), option]));
  return orders.map((order) => {
    const option = known.get(order.option);
    const rule = option && rules.get(option.category);
    if (!option || rule?.counted === undefined) return order;
    const takeoffs = (byOption.get(order.option) ?? [])
      .filter(({ supply }) => supply === order.supply)
      .flatMap(({ takeoff }) => takeoff.filter(({ part }) => part === order.part));
    return { ...order, counts: poolCounts(rule, option, takeoffs) };
  });
}
