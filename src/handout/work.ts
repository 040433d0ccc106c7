import {
  groupBy,
  lookUp,
  optionId,
  type Book,
  type BookCategory,
  type BookOption,
  type BookSelection,
  type BookTrade,
  type LookUp,
} from '../core/book/index.js';
import type { BuildUp } from '../core/scope/index.js';
import { optionsAt } from '../table/index.js';

/** What belongs to one trade in a Book, at hand while its handout is made. */
export interface Work {
  readonly look: LookUp;
  readonly trade: BookTrade;
  /** Its categories in working order. */
  readonly categories: readonly BookCategory[];
  /** Its selections: by working order, then by room. */
  readonly selections: readonly BookSelection[];
  /** The same by room, by option that stands or is considered, and the build-ups of the house by room. */
  readonly ownIn: (room: string) => readonly BookSelection[];
  readonly ownOf: (option: string) => readonly BookSelection[];
  readonly buildUpsIn: (room: string) => readonly BuildUp[];
  /** Options that stand in its selections or are considered for open ones, by id, in working order. */
  readonly products: ReadonlyMap<string, BookOption>;
  /** Keys of the room finish schedule, by id of the option. */
  readonly keys: ReadonlyMap<string, string>;
}

export function workOf(book: Book, trade: BookTrade): Work {
  const look = lookUp(book);
  const categories = book.categories.filter((category) => category.trade === trade.slug);
  const sequence = new Map(categories.map(({ slug }, index) => [slug, index]));
  const selections = book.selections
    .filter((selection) => selection.trade === trade.slug)
    .toSorted(
      (a, b) =>
        (sequence.get(a.category) ?? 0) - (sequence.get(b.category) ?? 0) ||
        look.orderOf(a.room) - look.orderOf(b.room),
    );
  const byRoom = groupBy(selections, ({ room }) => room);
  const buildUps = groupBy(book.scope.buildUps, ({ room }) => room);
  const standing = selections.flatMap((selection) =>
    [...new Set(optionsAt(selection))].map((id) => ({ id, selection })),
  );
  const byOption = groupBy(standing, ({ id }) => id);
  const options = book.options.filter(({ id }) => byOption.has(id));
  return {
    look,
    trade,
    categories,
    selections,
    ownIn: (room) => byRoom.get(room) ?? [],
    ownOf: (option) => (byOption.get(option) ?? []).map(({ selection }) => selection),
    buildUpsIn: (room) => buildUps.get(room) ?? [],
    products: new Map(options.map((option) => [option.id, option])),
    keys: new Map(book.schedules.finish.legend.map(({ option, key }) => [option, key])),
  };
}

/** The product that counts at a selection. */
export function productOf(work: Work, { category, counted }: BookSelection): BookOption | undefined {
  return counted === undefined ? undefined : work.products.get(optionId(category, counted));
}
