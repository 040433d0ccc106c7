import { parse } from 'csv-parse/sync';
import { read, unread, type Reading } from '../../base/units/index.js';

/** A cell of a list: text as it stands there, or the number that a workbook has. A day is text such as `2026-05-04`; an empty cell is `''`. */
export type Cell = string | number;

/** A list as rows of cells. */
export type Grid = readonly (readonly Cell[])[];

/** Rows and columns that a list may have: more is something else that went astray. */
export const mostRows = 20_000;
export const mostColumns = 200;

/** Characters of a cell that are read. */
const longestCell = 2000;

/** Text of a list, and in which code it was written where that had to be guessed. */
interface ListText {
  readonly text: string;
  readonly guessed?: 'Windows-1252';
}

/** Text in UTF-8, or in UTF-16 with its mark; what is neither is taken for Windows-1252, in which older spreadsheet programs save. */
export function textOfList(bytes: Uint8Array): Reading<ListText> {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return read({ text: new TextDecoder('utf-16le').decode(bytes) });
  if (first === 0xfe && second === 0xff) return read({ text: new TextDecoder('utf-16be').decode(bytes) });
  if (bytes.includes(0)) return unread('it is not text', 'save it as CSV in UTF-8, or as .xlsx');
  try {
    return read({ text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) });
  } catch {
    return read({ text: ofWindows(bytes), guessed: 'Windows-1252' });
  }
}

/** What bytes 0x80 to 0x9f are in Windows-1252. Source: WHATWG Encoding, index-windows-1252, from memory. Some releases of Node read them as
 *  Latin-1 under that name. */
const fromHex80 =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

function ofWindows(bytes: Uint8Array): string {
  const latin = new TextDecoder('latin1').decode(bytes);
  return latin.replace(/[\u0080-\u009f]/gu, (sign) => fromHex80[sign.charCodeAt(0) - 0x80] ?? sign);
}

const separators = [',', ';', '\t'];

/** Takes a text of separated values apart (RFC 4180), by the one of comma, semicolon and tab that makes the most of its first rows. */
export function gridOfText(text: string): Reading<Grid> {
  const first = separators.map((separator) => ({ separator, rows: rowsOf(text, separator, 30) }));
  const widest = first.map(({ separator, rows }) => ({ separator, width: rows.ok ? filledOf(rows.value) : 0 }));
  const { separator } = widest.reduce((best, one) => (one.width > best.width ? one : best));
  return rowsOf(text, separator, mostRows + 1);
}

/** Cells of the row that has the most. */
function filledOf(rows: Grid): number {
  return Math.max(0, ...rows.map((row) => row.filter((cell) => cell !== '').length));
}

function rowsOf(text: string, separator: string, most: number): Reading<Grid> {
  try {
    const rows = parse(text, {
      delimiter: separator,
      bom: true,
      relax_column_count: true,
      // A quote inside a cell that is not quoted, such as 5" boards, is part of it.
      relax_quotes: true,
      trim: true,
      max_record_size: 200_000,
      to: most,
    });
    return read(rows);
  } catch (error) {
    const line = (error as { readonly lines?: number }).lines;
    const where = line === undefined ? '' : ` at line ${line}`;
    return unread(
      `its rows cannot be told apart${where}`,
      'look for a quotation mark that is not closed, and save it again',
    );
  }
}

/** The list within its bounds, or which one it is past. */
export function boundedGrid(grid: Grid): Reading<Grid> {
  if (grid.length > mostRows)
    return unread(
      `it has more than ${mostRows} rows`,
      'keep the rows of one category, and take in the rest by another list',
    );
  if (grid.some((row) => row.length > mostColumns))
    return unread(`it has more than ${mostColumns} columns`, 'keep the columns that say something of the products');
  const row = grid.findIndex((cells) => cells.some((cell) => typeof cell === 'string' && cell.length > longestCell));
  if (row >= 0) return unread(`a cell of row ${row + 1} has more than ${longestCell} characters`, 'shorten it');
  return read(grid);
}

/** `A` for 0, `AB` for 27: a column as spreadsheets name it. */
export function columnLetters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : `${columnLetters(Math.floor(index / 26) - 1)}${last}`;
}
