import { stringify } from 'csv-stringify/sync';

/** Rows as CSV by RFC 4180: a header of keys, CRLF line ends. A text that a spreadsheet would run as a formula is led by
 *  an apostrophe. */
export function writeCsv<Row extends object>(rows: readonly Row[], columns: readonly (keyof Row & string)[]): string {
  return stringify(
    rows.map((row) => columns.map((column) => cell(row[column]))),
    {
      header: true,
      columns: columns.map((key) => ({ key, header: key })),
      record_delimiter: 'windows',
    },
  );
}

function cell(value: unknown): string {
  if (typeof value === 'number') return String(Number(value.toFixed(6)));
  const text = String(value ?? '');
  return /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}
