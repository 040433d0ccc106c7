import { stringify } from 'csv-stringify/sync';

/** Rows as CSV by RFC 4180: a line of heads, CRLF line ends. A text that a spreadsheet would run as a formula is led by an
 *  apostrophe. */
export function writeCsv(rows: readonly (readonly (string | number)[])[], heads: readonly string[]): string {
  return stringify([[...heads], ...rows.map((row) => row.map(plain))], { record_delimiter: 'windows' });
}

function plain(value: string | number): string {
  if (typeof value === 'number') return String(value);
  return /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
}
