import { stringify } from 'csv-stringify/sync';
import { dataHead, raw, type HouseCell, type LaidRow, type TableBlock } from '../sheet/index.js';

type Value = string | number;

/** A table as rows for machines: every column, raw values, the unit in the head. A finish says also how it stands and who
 *  furnishes it. */
function dataRows(table: TableBlock): { readonly heads: readonly string[]; readonly rows: readonly Value[][] } {
  const columns = table.columns.filter(({ kind }) => kind !== 'swing');
  const isGrouped = table.groups.some(({ title }) => title !== undefined);
  const heads = [
    ...(isGrouped ? ['group'] : []),
    ...columns.flatMap((column) => {
      const head = dataHead(column);
      return column.kind === 'finish' ? [head, `${head} standing`, `${head} by`] : [head];
    }),
  ];
  const valuesOf = ({ cells }: LaidRow<HouseCell>): Value[] =>
    columns.flatMap(({ key, kind }) => {
      const cell = cells[key];
      if (kind !== 'finish') return [raw(cell)];
      return cell?.is === 'finish' ? [raw(cell), cell.standing, cell.by] : [raw(cell), '', ''];
    });
  const rows = table.groups.flatMap(({ title = '', rows: own }) =>
    own.map((row) => [...(isGrouped ? [title] : []), ...valuesOf(row)]),
  );
  return { heads, rows };
}

/** Tables beneath one another: every column of any of them, and which table a row is of where there are several. */
function stacked(tables: readonly TableBlock[]): {
  readonly heads: readonly string[];
  readonly rows: readonly Value[][];
} {
  const [first, ...others] = tables;
  if (first && others.length === 0) return dataRows(first);
  const parts = tables.map((table) => ({ id: table.id, ...dataRows(table) }));
  const heads = [...new Set(parts.flatMap((part) => part.heads))];
  const rows = parts.flatMap(({ id, heads: own, rows: of }) =>
    of.map((row) => [id, ...heads.map((head) => row[own.indexOf(head)] ?? '')]),
  );
  return { heads: ['table', ...heads], rows };
}

/** Tables as one CSV by RFC 4180: a line of heads, CRLF line ends. A text that a spreadsheet would run as a formula is led by
 *  an apostrophe. */
export function tableCsv(...tables: readonly TableBlock[]): string {
  const { heads, rows } = stacked(tables);
  return stringify([[...heads], ...rows.map((row) => row.map(plain))], { record_delimiter: 'windows' });
}

function plain(value: Value): string {
  if (typeof value === 'number') return String(value);
  return /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
}

/** Tables as JSON: an object for each row, by the names of its columns. */
export function tableJson(...tables: readonly TableBlock[]): readonly Readonly<Record<string, Value>>[] {
  const { heads, rows } = stacked(tables);
  return rows.map((row) => Object.fromEntries(heads.map((head, index) => [head, row[index] ?? ''])));
}
