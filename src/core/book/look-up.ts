import { once } from '../../base/units/index.js';
import type { Caution } from '../caution/index.js';
import type { Range } from '../price/index.js';
import type { Book, BookCategory, BookOption, BookRoom, BookSelection, JointDecision } from './book.js';
import { groupBy } from './group-by.js';

/** Finds what the Book's ids point to. Names of what is missing fall back to the id, so that a page is never lost. */
export interface LookUp<B = Book> {
  readonly book: B;
  option(category: string, slug: string | undefined): BookOption | undefined;
  category(slug: string): BookCategory | undefined;
  room(slug: string): BookRoom | undefined;
  selection(id: string): BookSelection | undefined;
  selectionsOf(room: BookRoom): readonly BookSelection[];
  /** Cautions of a room, and those that speak of a selection. */
  cautionsIn(room: string): readonly Caution[];
  cautionsOf(selection: string): readonly Caution[];
  /** The decision that an open selection belongs to. */
  decisionOf(selection: string): JointDecision | undefined;
  /** What an option of an open selection moves over what else may be chosen with it. */
  rangeOf(selection: string, option: string): Range | undefined;
  /** Where a room stands in the order of the Book's. */
  orderOf(room: string): number;
  roomName(slug: string): string;
  /** `101 Great room`. */
  roomTitle(slug: string): string;
  categoryName(slug: string): string;
  tradeName(slug: string): string;
  levelName(id: string): string;
  milestoneName(id: string): string;
  allowanceName(id: string): string;
}

export function lookUp<B extends Omit<Book, 'schedules'> = Book>(book: B): LookUp<B> {
  const options = new Map(book.options.map((option) => [option.id, option]));
  const categories = new Map(book.categories.map((category) => [category.slug, category]));
  const selections = new Map(book.selections.map((selection) => [selection.id, selection]));
  const rooms = new Map(book.rooms.map((room) => [room.slug, room]));
  const order = new Map(book.rooms.map(({ slug }, index) => [slug, index]));
  const trades = new Map(book.trades.map((trade) => [trade.slug, trade.name]));
  const levels = new Map(book.levels.map((level) => [level.id, level.name]));
  const milestones = new Map(book.calendar.milestones.map((milestone) => [milestone.id, milestone.name]));
  const allowances = new Map(book.money.allowances.map((allowance) => [allowance.id, allowance.name]));
  const cautionsIn = groupBy(book.cautions, ({ room }) => room);
  const bySelection = groupBy(
    book.cautions.flatMap((caution) => caution.selections.map((selection) => ({ selection, caution }))),
    ({ selection }) => selection,
  );
  const decisions = once(
    () =>
      new Map(
        book.decisions.flatMap((decision) =>
          decision.choices.map((choice) => [choice.selection, { decision, choice }] as const),
        ),
      ),
  );
  return {
    book,
    option: (category, slug) => (slug === undefined ? undefined : options.get(`${category}/${slug}`)),
    category: (slug) => categories.get(slug),
    room: (slug) => rooms.get(slug),
    selection: (id) => selections.get(id),
    selectionsOf: (room) => room.selections.flatMap((id) => selections.get(id) ?? []),
    cautionsIn: (room) => cautionsIn.get(room) ?? [],
    cautionsOf: (selection) => (bySelection.get(selection) ?? []).map(({ caution }) => caution),
    decisionOf: (selection) => decisions().get(selection)?.decision,
    rangeOf: (selection, option) =>
      decisions()
        .get(selection)
        ?.choice.options.find((each) => each.option === option)?.range,
    orderOf: (slug) => order.get(slug) ?? 0,
    roomName: (slug) => rooms.get(slug)?.name ?? (slug === 'outside' ? 'Outside' : slug),
    roomTitle: (slug) => {
      const room = rooms.get(slug);
      return room ? `${room.number} ${room.name}` : slug;
    },
    categoryName: (slug) => categories.get(slug)?.name ?? slug,
    tradeName: (slug) => trades.get(slug) ?? slug,
    levelName: (id) => levels.get(id) ?? id,
    milestoneName: (id) => milestones.get(id) ?? id,
    allowanceName: (id) => allowances.get(id) ?? id,
  };
}
