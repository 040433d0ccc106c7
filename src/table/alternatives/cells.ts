import type { LookUp } from '../../core/book/index.js';
import { quiet, words, type Cell, type Names } from '../../sheet/index.js';

/** The house that alternatives are held beside. */
export const todayTitle = 'As it stands today';

export const openCell = quiet('open');

/** An option by its id; without one, a deliberate none. */
export function optionCell(id: string | undefined, names: Names): Cell {
  return id === undefined ? quiet('none') : words(names.option(id) ?? id, { to: 'option', id });
}

/** In the order of work. */
export function inOrder<Row extends { readonly category: string }>(
  rows: readonly Row[],
  { book }: LookUp,
): readonly Row[] {
  const order = new Map(book.categories.map(({ slug }, index) => [slug, index]));
  return rows.toSorted((a, b) => (order.get(a.category) ?? 0) - (order.get(b.category) ?? 0));
}
