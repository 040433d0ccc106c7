import type { Book } from '../book/index.js';
import type { TouchedTrade } from './comparison.js';
import type { NoticeChange } from './notice-change.js';
import type { SelectionChange } from './room-change.js';

/** Trades whose work changed, in the order of their slugs. */
export function touchedTrades(
  selections: readonly SelectionChange[],
  notices: readonly NoticeChange[],
  books: readonly Pick<Book, 'trades'>[],
): TouchedTrade[] {
  const own = selections.filter((selection) => selection.own);
  const names = new Map(books.flatMap((book) => book.trades.map(({ slug, name }) => [slug, name] as const)).reverse());
  const slugs = [...new Set([...own.map(({ trade }) => trade), ...notices.flatMap(({ trades }) => trades)])].sort();
  return slugs.map((trade) => ({
    trade,
    name: names.get(trade) ?? trade,
    selections: own.filter((selection) => selection.trade === trade).length,
  }));
}
