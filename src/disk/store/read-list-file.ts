import { open } from 'node:fs/promises';
import { strFromU8, Unzip, UnzipInflate, zipSync } from 'fflate';
import { readSheet, SheetNotFoundError } from 'read-excel-file/universal';
import { mostColumns, mostRows, type Cell, type Grid } from '../../draft/index.js';
import { read, unread, type Reading } from '../../base/units/index.js';

/** Bytes that a list of prices may have, as a file and unpacked, and parts of a workbook. */
const largestList = 10_000_000;
const largestUnpacked = 40_000_000;
const mostParts = 500;

/** Bytes unpacked at once: a thousand times as many may come of them. */
const aLittle = 16_384;

/** The bytes of a list; no more of it is read than a list may have. Rejects when the disk refuses. */
export async function readListFile(path: string): Promise<Reading<Uint8Array>> {
  const file = await open(path);
  try {
    const facts = await file.stat();
    if (!facts.isFile()) return unread('it is no file');
    if (facts.size > largestList)
      return unread(
        `it has ${(facts.size / 1_000_000).toFixed(1)} MB; a list has 10 MB at most`,
        'keep what is priced',
      );
    const bytes = Buffer.alloc(facts.size);
    const { bytesRead } = await file.read(bytes, 0, facts.size, 0);
    return read(new Uint8Array(bytes.subarray(0, bytesRead)));
  } finally {
    await file.close();
  }
}

/** Is it a workbook by its first bytes: `xlsx`, packed in a ZIP; `xls`, the older form, which is not read? */
export function workbookKind(bytes: Uint8Array): 'xlsx' | 'xls' | undefined {
  const starts = (...first: readonly number[]): boolean => first.every((byte, index) => bytes[index] === byte);
  if (starts(0x50, 0x4b, 0x03, 0x04)) return 'xlsx';
  return starts(0xd0, 0xcf, 0x11, 0xe0) ? 'xls' : undefined;
}

const fix = 'open it in a spreadsheet program and save it anew, as .xlsx or as CSV in UTF-8';

/** One sheet of a workbook, by its name or the first: the values that were computed when it was saved, no formula of it. What it unpacks to
 *  is bounded before anything reads it. */
export async function readWorkbook(bytes: Uint8Array, sheet?: string): Promise<Reading<Grid>> {
  const parts = unpack(bytes);
  if (!parts.ok) return parts;
  const addresses = checkAddresses(parts.value);
  if (!addresses.ok) return addresses;
  // Packed again without packing: the reader meets nothing that grows.
  const plain = zipSync(parts.value, { level: 0 });
  try {
    const rows: readonly (readonly unknown[])[] = await readSheet(
      plain.buffer.slice(plain.byteOffset, plain.byteOffset + plain.byteLength) as ArrayBuffer,
      sheet ?? 1,
    );
    return read(rows.map((row) => row.map(cellOf)));
  } catch (error) {
    if (sheet !== undefined && error instanceof SheetNotFoundError)
      return unread(`it has no sheet '${sheet}'`, "correct sheet in the price list's record");
    return unread('the workbook cannot be read', fix);
  }
}

function cellOf(value: unknown): Cell {
  if (typeof value === 'number') return value;
  if (typeof value === 'string') return value.trim();
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value instanceof Date ? value.toISOString().slice(0, 10) : '';
}

type Parts = Record<string, Uint8Array>;

/** Parts that say where the sheets are and what is in them. */
const wanted = /^(?:\[Content_Types\]\.xml|(?:xl\/)?_rels\/[^/]+\.rels|xl\/[^/]+\.xml|xl\/worksheets\/[^/]+\.xml)$/u;

class TooLarge extends Error {}

/** The XML of a workbook. It is unpacked a little at a time and counted, whatever it says of its own size. */
function unpack(bytes: Uint8Array): Reading<Parts> {
  const parts = new Map<string, Uint8Array[]>();
  let [size, count] = [0, 0];
  const unzip = new Unzip((part) => {
    count += 1;
    if (count > mostParts) throw new TooLarge();
    if (!wanted.test(part.name)) return;
    const pieces: Uint8Array[] = [];
    parts.set(part.name, pieces);
    part.ondata = (error, piece) => {
      if (error) throw error;
      size += piece.length;
      if (size > largestUnpacked) throw new TooLarge();
      pieces.push(piece);
    };
    part.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let from = 0; from < bytes.length; from += aLittle)
      unzip.push(bytes.subarray(from, from + aLittle), from + aLittle >= bytes.length);
  } catch (error) {
    if (!(error instanceof TooLarge)) return unread('the workbook cannot be unpacked', fix);
    return unread('it unpacks to more than a list of prices has', 'save the one sheet with the prices as CSV');
  }
  return read(Object.fromEntries([...parts].map(([name, pieces]) => [name, new Uint8Array(Buffer.concat(pieces))])));
}

/** Rows and cells of every sheet stand within the bounds: the reader fills what lies before a cell, wherever it says that it stands. */
function checkAddresses(parts: Parts): Reading<true> {
  for (const [name, bytes] of Object.entries(parts)) {
    if (!name.startsWith('xl/worksheets/')) continue;
    for (const [, tag = '', rest = ''] of strFromU8(bytes).matchAll(/<(?:\w+:)?(row|c|dimension)\b([^>]*)/gu)) {
      if (tag === 'dimension') continue;
      const [, letters = '', digits] = /\sr="([A-Z]{0,3})(\d{1,7})"/u.exec(rest) ?? [];
      if (digits === undefined && (tag === 'c' || /\sr\s*=/u.test(rest)))
        return unread('the workbook has cells without a place', fix);
      const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
      if (Number(digits ?? 0) > mostRows)
        return unread(`it has more than ${mostRows} rows`, 'keep the rows of one category');
      if (column > mostColumns)
        return unread(`it has more than ${mostColumns} columns`, 'keep the columns that say something of the products');
    }
  }
  return read(true);
}
