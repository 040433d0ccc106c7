import { byText } from '../base/units/index.js';
import {
  keyLevels,
  lookUp,
  optionSlugs,
  type Book,
  type BookOption,
  type BookRoom,
  type BookSelection,
  type BookTrade,
  type KeyLevel,
  type LookUp,
} from '../core/book/index.js';
import type { DatedMilestone } from '../core/calendar/index.js';
import type { Order } from '../core/price/index.js';
import type { Photo } from '../photo/index.js';
import type { PackedHouse } from '../try/index.js';
import { choicePaths } from './paths.js';

/** What lies beside a set of pages, as links from a page at its top; only what was written. */
export interface Beside {
  /** The book, from pages beside it. */
  readonly book?: string;
  readonly pdf?: string;
  /** What changed since the last issue. */
  readonly comparison?: string;
  /** Folder of the trades' handouts, and of the change orders' PDFs, each with a slash at its end. */
  readonly handouts?: string;
  readonly changeOrders?: string;
  /** What choices are tried with in the pages. */
  readonly trying?: Trying;
  /** Photographs of options by the option's id, as they may be shown; absent: each is fetched from the desk. */
  readonly photos?: ReadonlyMap<string, Photo>;
}

/** It holds every price: for owner and builder alone. */
interface Trying {
  readonly house: PackedHouse;
  /** The program that computes, as the text of one script; absent: it is fetched from the desk. */
  readonly script?: string;
}

/** A Book with its parts at hand by name. */
export interface View extends LookUp {
  readonly beside: Beside;
  /** False where the Book came without the text of its records: no page links to one then. */
  readonly hasRecords: boolean;
  trade(slug: string): BookTrade | undefined;
  /** By `<category>/<slug>`. */
  optionById(id: string): BookOption | undefined;
  milestone(id: string): DatedMilestone | undefined;
  /** The house's order that a part of an option belongs to. */
  order(option: string, part: string): Order | undefined;
  /** The page that sets the options of a place side by side; none where there is nothing to compare. */
  choicePath(selection: Pick<BookSelection, 'id'>): string | undefined;
  /** Levels as laid out, for key plans: made once, since their drawings are kept by them. */
  readonly levels: readonly KeyLevel[];
  levelOf(room: Pick<BookRoom, 'slug'>): KeyLevel | undefined;
  /** Open selections with options to compare, by the day they are due. */
  openChoices(): readonly BookSelection[];
  /** Selections for which an option is chosen, and those that consider it. */
  uses(option: BookOption): {
    readonly counted: readonly BookSelection[];
    readonly considered: readonly BookSelection[];
  };
}

export function makeView(book: Book, beside: Beside = {}): View {
  const trades = new Map(book.trades.map((trade) => [trade.slug, trade]));
  const options = new Map(book.options.map((option) => [option.id, option]));
  const milestones = new Map(book.calendar.milestones.map((milestone) => [milestone.id, milestone]));
  const orders = new Map(book.orders.map((order) => [`${order.option} ${order.part}`, order]));
  const uses = usesByOption(book.selections);
  const choices = choicePaths(book.selections.filter((selection) => optionSlugs(selection).length > 1));
  const open = book.selections
    .filter(({ id, state }) => state === 'open' && choices.has(id))
    .sort((a, b) => byText(a.decision.by, b.decision.by));
  const look = lookUp(book);
  const levels = keyLevels(look);
  const levelByRoom = new Map(levels.flatMap((level) => level.rooms.map(({ slug }) => [slug, level] as const)));
  return {
    ...look,
    beside,
    hasRecords: book.sources.length > 0,
    levels,
    levelOf: ({ slug }) => levelByRoom.get(slug),
    trade: (slug) => trades.get(slug),
    optionById: (id) => options.get(id),
    milestone: (id) => milestones.get(id),
    order: (option, part) => orders.get(`${option} ${part}`),
    openChoices: () => open,
    choicePath: ({ id }) => choices.get(id),
    uses: (option) => uses.get(option.id) ?? { counted: [], considered: [] },
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
    for (const slug of others(selection)) at(selection, slug).considered.push(selection);
  }
  return uses;
}

function others(selection: BookSelection): readonly string[] {
  return optionSlugs(selection).filter((slug) => slug !== selection.counted);
}
