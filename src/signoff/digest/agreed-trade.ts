import type { Book, BookOption, BookTrade } from '../../core/book/index.js';
import { workOf } from './agreed-room.js';
import { leaveOut, withoutPaths } from './leave-out.js';

/** What one trade works from: its scope, its categories' rules, the rooms it works in, its selections, what it orders. Free
 *  of money, as its handout is: a price that moves does not make the handout an old one, and the digest gives no hint of
 *  a price. */
export function agreedTrade(book: Book, trade: BookTrade): object {
  const selections = book.selections.filter((selection) => selection.trade === trade.slug);
  const rooms = new Set(selections.map(({ room }) => room));
  const used = new Set(
    selections.flatMap(({ category, counted, chosen }) =>
      [counted, chosen].flatMap((slug) => (slug === undefined ? [] : [`${category}/${slug}`])),
    ),
  );
  return {
    format: 'bookmatch/agreed-trade/1',
    house: { name: book.house.name, number: book.house.number },
    // Which schedules its handout carries is no part of the work.
    trade: leaveOut(trade, 'source', 'schedules'),
    categories: book.categories
      .filter((category) => category.trade === trade.slug)
      .map((category) => leaveOut(category, 'source')),
    rooms: book.rooms
      .filter(({ slug }) => rooms.has(slug))
      .map(({ slug, number, name, level, use, measure }) => ({
        slug,
        number,
        name,
        level,
        use,
        measure: withoutPaths(measure),
      })),
    selections: selections.map(workOf),
    options: book.options.filter(({ id }) => used.has(id)).map(withoutMoney),
    orders: book.orders
      .filter((order) => order.trade === trade.slug)
      .map((order) => ({
        ...leaveOut(order, 'rate', 'cost'),
        shares: order.shares.map(({ selection, required }) => ({ selection, required })),
      })),
  };
}

function withoutMoney(option: BookOption): object {
  return {
    ...leaveOut(option, 'source', 'shared', 'quoted', 'leadDays', 'freight'),
    parts: option.parts.map(({ part, unit, pack, waste }) => ({ part, unit, pack, waste })),
  };
}
