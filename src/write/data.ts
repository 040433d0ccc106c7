import type { HouseCell, LaidRow, TableBlock } from '../sheet/index.js';
import { dataHead, raw } from '../sheet/index.js';
import { writeCsv } from './write-csv.js';

type Value = string | number;

/** A table as rows for machines: every column, raw values, the unit in the head. A finish says also how it stands and who
 *  furnishes it. */
export function dataRows(table: TableBlock): { readonly heads: readonly string[]; readonly rows: readonly Value[][] } {
  const columns = table.columns.filter(({ kind }) => kind !== 'swing');
  const isGrouped = table.groups.some(({ title }) => title !== undefined);
  const heads = [
    ...(isGrouped ? ['group'] : []),
    ...columns.flatMap(({ key, kind }) => {
      const head = dataHead(key, kind);
      return kind === 'finish' ? [head, `${head} standing`, `${head} by`] : [head];
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

/** A table as CSV by RFC 4180. */
export function tableCsv(table: TableBlock): string {
  const { heads, rows } = dataRows(table);
  return writeCsv(rows, heads);
}

/** A table as JSON: an object for each row, by the names of its columns. */
export function tableJson(table: TableBlock): readonly Readonly<Record<string, Value>>[] {
  const { heads, rows } = dataRows(table);
  return rows.map((row) => Object.fromEntries(heads.map((head, index) => [head, row[index] ?? ''])));
}
