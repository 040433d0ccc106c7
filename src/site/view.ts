import type { Alternative, Book, BookCategory, BookOption, BookRoom, BookSelection, BookTrade } from '../book/index.js';
import type { DatedMilestone } from '../calendar/index.js';
import type { Order } from '../price/index.js';

/** A Book with its parts at hand by name. */
export interface View {
  readonly book: Book;
  room(slug: string): BookRoom | undefined;
  selection(id: string): BookSelection | undefined;
  selectionsOf(room: BookRoom): readonly BookSelection[];
  category(slug: string): BookCategory | undefined;
  trade(slug: string): BookTrade | undefined;
  /** By category and slug. */
  option(category: string, slug: string | undefined): BookOption | undefined;
  /** By `<category>/<slug>`. */
  optionById(id: string): BookOption | undefined;
  milestone(id: string): DatedMilestone | undefined;
  allowanceName(id: string): string;
  /** The house's order that a part of an option belongs to. */
  order(option: string, part: string): Order | undefined;
  /** Selections for which an option is chosen, and those that consider it. */
  uses(option: BookOption): {
    readonly counted: readonly BookSelection[];
    readonly considered: readonly BookSelection[];
  };
  levelName(id: string): string;
}

export function makeView(book: Book): View {
  const rooms = new Map(book.rooms.map((room) => [room.slug, room]));
  const selections = new Map(book.selections.map((selection) => [selection.id, selection]));
  const categories = new Map(book.categories.map((category) => [category.slug, category]));
  const trades = new Map(book.trades.map((trade) => [trade.slug, trade]));
  const options = new Map(book.options.map((option) => [option.id, option]));
  const milestones = new Map(book.calendar.milestones.map((milestone) => [milestone.id, milestone]));
  const allowances = new Map(book.money.allowances.map((entry) => [entry.id, entry.name]));
  const orders = new Map(book.orders.map((order) => [`${order.option} ${order.part}`, order]));
  const levels = new Map(book.levels.map((level) => [level.id, level.name]));
  const uses = usesByOption(book.selections);
  return {
    book,
    room: (slug) => rooms.get(slug),
    selection: (id) => selections.get(id),
    selectionsOf: (room) => room.selections.flatMap((id) => selections.get(id) ?? []),
    category: (slug) => categories.get(slug),
    trade: (slug) => trades.get(slug),
    option: (category, slug) => (slug === undefined ? undefined : options.get(`${category}/${slug}`)),
    optionById: (id) => options.get(id),
    milestone: (id) => milestones.get(id),
    allowanceName: (id) => allowances.get(id) ?? id,
    order: (option, part) => orders.get(`${option} ${part}`),
    uses: (option) => uses.get(option.id) ?? { counted: [], considered: [] },
    levelName: (id) => levels.get(id) ?? id,
  };
}

function usesByOption(
  selections: readonly BookSelection[],
): Map<string, { counted: BookSelection[]; considered: BookSelection[] }> {
  const uses = new Map<string, { counted: BookSelection[]; considered: BookSelection[] }>();
  const at = (selection: BookSelection, slug: string) => {
    const id = `${selection.category}/${slug}`;
    const found = uses.get(id) ?? { counted: [], considered: [] };
    uses.set(id, found);
    return found;
  };
  for (const selection of selections) {
    if (selection.counted !== undefined) at(selection, selection.counted).counted.push(selection);
    for (const alternative of others(selection)) at(selection, alternative.option).considered.push(selection);
  }
  return uses;
}

function others(selection: BookSelection): readonly Alternative[] {
  return selection.alternatives.filter((alternative) => alternative.option !== selection.counted);
}
