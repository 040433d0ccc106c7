import { ref, type Cell, type HouseCell, type Kind, type Ref, type Sieved, type TradeCell } from './cell.js';
import { gated, open, type Gate } from './gate.js';
import { headInHouse } from './head.js';
import type { Names } from './names.js';

/** How wide on paper and screen; the theme gives each its number. Figures are as wide as they are. */
export type Width = 'fit' | 'short' | 'words' | 'long';
export type Output = 'html' | 'pdf' | 'text';

export interface Column<Row, C extends HouseCell = Cell> {
  /** Name in CSV and JSON, in camelCase: published, never renamed. */
  readonly key: string;
  /** For people. */
  readonly head: string;
  /** Decides alignment, figures, size, dash or blank, and the unit in a CSV's head. */
  readonly kind: Kind;
  /** A property, not a method, so that rows are checked both ways. `names` holds no Book: money is not reached sideways. */
  readonly value: (row: Row, names: Names) => C;
  /** Key of the column beneath which people read it in small print. Data keeps a column of its own. */
  readonly under?: string;
  readonly width?: Width;
  /** On a small screen a row of a long table is one line, which this column is in: what one looks for it by. `now`: what the column before it became. */
  readonly brief?: true | 'now';
  /** Left out where people read it there. Data leaves nothing out. */
  readonly not?: readonly Output[];
}

export interface Table<Row, C extends HouseCell = Cell> {
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly Column<Row, C>[];
  /** Unique in the table: anchor, and what a test asks by. */
  readonly rowId: (row: Row) => string;
  /** What its rows' anchors begin with; the table's id when absent. */
  readonly anchor?: string;
  /** Key of the column that names the row: its head for those who hear the table. */
  readonly named: string;
  readonly group?: (row: Row, names: Names) => GroupTitle;
  /** Of few rows, which are read at a glance: on paper they stand on one sheet. */
  readonly together?: true;
  /** Rows that are sums among the rows. */
  readonly strong?: (row: Row) => boolean;
  readonly sums?: (rows: readonly Row[]) => readonly Sum<C>[];
  /** Small print beneath the rows. */
  readonly notes?: (rows: readonly Row[]) => readonly string[];
}

interface GroupTitle {
  readonly title: string;
  /** Small print beside it. */
  readonly why?: string;
  readonly cell?: Cell;
}

/** A table for the house alone. */
export type HouseTable<Row> = Table<Row, HouseCell>;

/** A line below the rows. `what` stands in the column that names the row. */
export interface Sum<C> {
  readonly what: string;
  readonly why?: string;
  readonly strong?: boolean;
  readonly cells: Readonly<Record<string, C>>;
}

/** A table laid out: plain data that can be kept, compared and asked by a test. Columns stay atomic. */
export interface TableBlock<C extends HouseCell = HouseCell, Words extends string = string> {
  readonly block: 'table';
  readonly id: Ref;
  readonly caption: Words;
  readonly anchor: Ref;
  readonly named: Ref;
  readonly together?: true;
  readonly columns: readonly LaidColumn<Words>[];
  readonly groups: readonly Group<C, Words>[];
  readonly sums: readonly LaidSum<C, Words>[];
  readonly notes: readonly Words[];
}

export type LaidColumn<Words extends string = string> = Omit<
  Column<never, never>,
  'value' | 'key' | 'head' | 'under'
> & {
  readonly key: Ref;
  readonly head: Words;
  readonly under?: Ref;
};

interface Group<C, Words extends string = string> {
  readonly title?: Words;
  readonly why?: Words;
  readonly cell?: C;
  readonly rows: readonly LaidRow<C>[];
}

export interface LaidRow<C> {
  readonly id: Ref;
  readonly strong?: boolean;
  readonly cells: Readonly<Record<string, C>>;
}

export interface LaidSum<C, Words extends string = string> {
  readonly what: Words;
  readonly why?: Words;
  readonly strong?: boolean;
  readonly cells: Readonly<Record<string, C>>;
}

export type HouseBlock = TableBlock<HouseCell>;
export type TradeBlock = TableBlock<TradeCell, Sieved>;

/** A table with its rows, for the house. */
export function layOut<Row, C extends HouseCell>(
  table: Table<Row, C>,
  rows: readonly Row[],
  names: Names,
): TableBlock<HouseCell> {
  return lay<Row, C, HouseCell, string>(table, rows, names, (cell) => cell, open);
}

/** The same table for a trade: every word goes through the gate. */
export function layOutFor<Row, Words extends string>(
  table: Table<Row>,
  rows: readonly Row[],
  names: Names,
  gate: Gate<Words>,
): TableBlock<Cell<Words>, Words> {
  return lay<Row, Cell, Cell<Words>, Words>(table, rows, names, (cell) => gated(cell, gate), gate);
}

function lay<Row, C extends HouseCell, Out extends HouseCell, Words extends string>(
  table: Table<Row, C>,
  rows: readonly Row[],
  names: Names,
  made: (cell: C | Cell) => Out,
  gate: Gate<Words>,
): TableBlock<Out, Words> {
  const groups = new Map<string, Group<Out, Words> & { readonly rows: LaidRow<Out>[] }>();
  const cellsOf = (cells: readonly (readonly [string, C])[]) =>
    Object.fromEntries(cells.map(([key, cell]) => [key, made(cell)]));
  for (const row of rows) {
    const cells = table.columns.map((column) => [column.key, column.value(row, names)] as const);
    // What may not be named is left out whole.
    const named = cells.find(([key]) => key === table.named)?.[1];
    if (named && named.is !== 'nothing' && made(named).is === 'nothing') continue;
    const title = table.group?.(row, names);
    const key = title?.title ?? '';
    const group = groups.get(key) ?? {
      ...(title && { title: gate(title.title) }),
      ...(title?.why !== undefined && { why: gate(title.why) }),
      ...(title?.cell && { cell: made(title.cell) }),
      rows: [],
    };
    groups.set(key, group);
    group.rows.push({
      id: ref(gate(table.rowId(row), 'name')),
      ...(table.strong?.(row) && { strong: true }),
      cells: cellsOf(cells),
    });
  }
  return {
    block: 'table',
    id: ref(table.id),
    caption: gate(table.caption),
    anchor: ref(table.anchor ?? table.id),
    named: ref(table.named),
    ...(table.together && { together: true }),
    columns: table.columns.map(({ value: _, key, head, under, ...column }) => ({
      ...column,
      key: ref(key),
      head: gate(headInHouse(head)),
      ...(under !== undefined && { under: ref(under) }),
    })),
    groups: [...groups.values()],
    sums: (table.sums?.(rows) ?? []).map(({ what, why, cells, ...rest }) => ({
      ...rest,
      what: gate(what),
      ...(why !== undefined && { why: gate(why) }),
      cells: cellsOf(Object.entries(cells)),
    })),
    notes: (table.notes?.(rows) ?? []).map((note) => gate(note)).filter((note) => note !== ''),
  };
}

export const rowsOf = <C extends HouseCell>(table: TableBlock<C>): readonly LaidRow<C>[] =>
  table.groups.flatMap(({ rows }) => rows);
