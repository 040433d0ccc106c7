import type { Order } from '../price/index.js';
import type { Length } from '../units/index.js';
import type { BookSelection } from './book.js';
import { optionId } from './draft.js';

/** Orders with the pieces to buy by stock length, added up over the places where the product is laid out. */
export function withStock(orders: readonly Order[], selections: readonly BookSelection[]): Order[] {
  const counts = new Map<string, Map<Length, number>>();
  for (const { category, counted, takeoff } of selections) {
    if (counted === undefined) continue;
    for (const { part, layout } of takeoff) {
      for (const { length, count } of layout?.stock ?? []) {
        const key = `${optionId(category, counted)} ${part}`;
        const list = counts.get(key) ?? new Map<Length, number>();
        counts.set(key, list.set(length, (list.get(length) ?? 0) + count));
      }
    }
  }
  return orders.map((order) => {
    const stock = [...(counts.get(`${order.option} ${order.part}`) ?? [])].sort(([a], [b]) => a - b);
    return { ...order, stock: stock.map(([length, count]) => ({ length, count })) };
  });
}
