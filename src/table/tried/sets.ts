import { lookUp, type Book } from '../../core/book/index.js';
import { col, layOut, type HouseBlock, type HouseTable } from '../../sheet/index.js';
import { inLocale, type Cents } from '../../base/units/index.js';
import { namesOf } from '../names-of.js';

/** A set of choices that is tried as a whole. */
export interface TriedSet {
  /** Unlike the others'. */
  readonly name: string;
  /** Choices in it, as a sentence tells them: `2 of 3 choices`. */
  readonly choices: string;
  /** The house with all of them; absent where there is no such house. */
  readonly book?: Book;
}

interface Row extends TriedSet {
  /** What the house comes to as it stands; absent in the row that says so. */
  readonly today?: Cents;
}

const table: HouseTable<Row> = {
  id: 'tried-sets',
  caption: 'The whole house with each',
  named: 'set',
  rowId: ({ name }) => name,
  columns: [
    col.words('set', 'With', ({ name }) => name, { width: 'words' }),
    col.words('choices', 'Choices', ({ choices }) => choices, { under: 'set' }),
    col.money('total', 'House total', ({ book }) => book?.money.today),
    col.money('difference', 'Difference', differenceOf, { change: true, zero: 'told', under: 'total' }),
  ],
};

function differenceOf({ book, today }: Row): Cents | undefined {
  return book && today !== undefined ? ((book.money.today - today) as Cents) : undefined;
}

/** The house as it stands, and with sets of choices, a whole Book for each: sums of single choices would not do. */
export function setsTable(from: Book, sets: readonly TriedSet[]): HouseBlock {
  const today = from.money.today;
  const rows: readonly Row[] = [
    { name: 'The house as it stands', choices: '', book: from },
    ...sets.map((set) => ({ ...set, today })),
  ];
  return inLocale(from.house, () => layOut(table, rows, namesOf(lookUp(from))));
}
