import {
  lookUp,
  optionId,
  type Book,
  type BookCategory,
  type BookOption,
  type BookSelection,
  type BookTrade,
  type LookUp,
} from '../core/book/index.js';
import { optionsAt } from '../table/index.js';

/** What belongs to one trade in a Book, at hand while its handout is made. */
export interface Work {
  readonly look: LookUp;
  readonly trade: BookTrade;
  /** Its categories in working order. */
  readonly categories: readonly BookCategory[];
  /** Its selections: by working order, then by room. */
  readonly selections: readonly BookSelection[];
  /** Options that stand in its selections or are considered for open ones, by id, in working order. */
  readonly products: ReadonlyMap<string, BookOption>;
  /** Keys of the room finish schedule, by id of the option. */
  readonly keys: ReadonlyMap<string, string>;
}

export function workOf(book: Book, trade: BookTrade): Work {
  const look = lookUp(book);
  const categories = book.categories.filter((category) => category.trade === trade.slug);
  const places = new Map(book.rooms.map(({ slug }, index) => [slug, index]));
  const sequence = new Map(categories.map(({ slug }, index) => [slug, index]));
  const selections = book.selections
    .filter((selection) => selection.trade === trade.slug)
    .toSorted(
      (a, b) =>
        (sequence.get(a.category) ?? 0) - (sequence.get(b.category) ?? 0) ||
        (places.get(a.room) ?? 0) - (places.get(b.room) ?? 0),
    );
  const used = new Set(selections.flatMap((selection) => optionsAt(selection)));
  const options = book.options.filter(({ id }) => used.has(id));
  return {
    look,
    trade,
    categories,
    selections,
    products: new Map(options.map((option) => [option.id, option])),
    keys: new Map(book.schedules.finish.legend.map(({ option, key }) => [option, key])),
  };
}

/** The product that counts at a selection. */
export function productOf(work: Work, { category, counted }: BookSelection): BookOption | undefined {
  return counted === undefined ? undefined : work.products.get(optionId(category, counted));
}
