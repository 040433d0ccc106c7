import type { Book } from '../../book/index.js';
import { writeCsv } from '../csv/index.js';
import { finishKeyRows, finishRows } from './finish.js';

/** Each schedule of the Book as CSV, by file name. A schedule without rows is left out. Lengths are text in feet and
 *  inches, as on the printed sheets; areas are sq ft. */
export function scheduleFiles(book: Book): ReadonlyMap<string, string> {
  const tables: readonly (readonly [string, readonly object[]])[] = [
    ['finish', finishRows(book)],
    ['finish-keys', finishKeyRows(book)],
  ];
  return new Map(
    tables.filter(([, rows]) => rows.length > 0).map(([name, rows]) => [`schedule-${name}.csv`, tableCsv(rows)]),
  );
}

/** Every row of a table has the same keys, in the order of its columns. */
function tableCsv(rows: readonly object[]): string {
  return writeCsv(rows, Object.keys(rows[0] ?? {}) as never[]);
}
