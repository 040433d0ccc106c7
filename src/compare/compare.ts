import type { Book, BookRoom, BookSelection } from '../book/index.js';
import { optionId } from '../book/index.js';
import type { Cents } from '../units/index.js';
import { compareOptions } from './compare-options.js';
import { compareSelections } from './compare-selections.js';
import type { Comparison, MoneyChange, RecordChange, RoomChange } from './comparison.js';
import { matchOptions, matchRooms, matchSelections } from './match.js';
import type { Pair } from './match.js';

export interface CompareInput {
  readonly from: Book;
  readonly to: Book;
  readonly labels: { readonly from: string; readonly to: string };
  /** The newer rooms with the older price book, composed from records of both sides: what choices alone do. */
  readonly newRoomsAtOldPrices?: Book;
}

/** Compares two Books of one house. Comparing a Book with itself finds nothing; comparing the other way round turns every
 *  sign. */
export function compare({ from, to, labels, newRoomsAtOldPrices }: CompareInput): Comparison {
  const options = matchOptions(from, to);
  const renamed = new Map(
    options.flatMap((pair) => (pair.from && pair.to ? [[pair.from.id, pair.to.id] as const] : [])),
  );
  const sameOption = (category: string, a: string | undefined, b: string | undefined): boolean => {
    if (a === undefined || b === undefined) return a === b;
    return renamed.get(optionId(category, a)) === optionId(category, b);
  };
  const rooms = matchRooms(from, to)
    .map((pair) => compareRooms(pair, { from, to }, sameOption))
    .filter((change) => change !== undefined)
    .sort((a, b) => (a.number < b.number ? -1 : a.number > b.number ? 1 : 0));
  return {
    format: 'bookmatch/comparison/1',
    from: { label: labels.from, on: from.on, today: from.money.today },
    to: { label: labels.to, on: to.on, today: to.money.today },
    rooms,
    priceBook: options.map(compareOptions).filter((change) => change !== undefined),
    records: compareRecords(from, to),
    money: splitMoney(from, to, newRoomsAtOldPrices),
    milestones: compareMilestones(from, to),
    trades: [...new Set(rooms.flatMap((room) => room.selections.map((selection) => selection.trade)))].sort(),
  };
}

function compareRooms(
  { from, to }: Pair<BookRoom>,
  books: { readonly from: Book; readonly to: Book },
  sameOption: Parameters<typeof compareSelections>[2],
): RoomChange | undefined {
  const room = to ?? from;
  if (!room) return undefined;
  const pairs = matchSelections(selectionsOf(books.from, from), selectionsOf(books.to, to));
  const selections = pairs
    .map((pair) => compareSelections(pair, books, sameOption))
    .filter((change) => change !== undefined);
  const renamed = from && to && (from.slug !== to.slug || from.name !== to.name || from.number !== to.number);
  if (from && to && selections.length === 0 && !renamed) return undefined;
  return {
    room: room.slug,
    number: room.number,
    name: room.name,
    kind: !from ? 'added' : !to ? 'removed' : 'kept',
    ...(renamed && from && { renamedFrom: `${from.number} ${from.name}` }),
    selections,
    difference: selections.reduce((sum, selection) => sum + selection.cost, 0) as Cents,
  };
}

function selectionsOf(book: Book, room: BookRoom | undefined): BookSelection[] {
  return room ? book.selections.filter((selection) => selection.room === room.slug) : [];
}

function compareRecords(from: Book, to: Book): RecordChange[] {
  const before = new Map(from.sources.map((source) => [source.path, source.text]));
  const after = new Map(to.sources.map((source) => [source.path, source.text]));
  const paths = [...new Set([...before.keys(), ...after.keys()])].sort();
  return paths.flatMap((path): RecordChange[] => {
    if (!before.has(path)) return [{ path, kind: 'added' }];
    if (!after.has(path)) return [{ path, kind: 'removed' }];
    return before.get(path) === after.get(path) ? [] : [{ path, kind: 'edited' }];
  });
}

function splitMoney(from: Book, to: Book, mixed: Book | undefined): MoneyChange {
  const difference = (to.money.today - from.money.today) as Cents;
  if (!mixed) return { difference };
  const byChoice = (mixed.money.today - from.money.today) as Cents;
  return { difference, byChoice, byPriceBook: (difference - byChoice) as Cents };
}

function compareMilestones(from: Book, to: Book): Comparison['milestones'] {
  const before = new Map(from.calendar.milestones.map((milestone) => [milestone.id, milestone]));
  const after = new Map(to.calendar.milestones.map((milestone) => [milestone.id, milestone]));
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((id) => {
    const [a, b] = [before.get(id), after.get(id)];
    if (a?.date === b?.date) return [];
    return [{ id, name: b?.name ?? a?.name ?? id, ...(a && { from: a.date }), ...(b && { to: b.date }) }];
  });
}
