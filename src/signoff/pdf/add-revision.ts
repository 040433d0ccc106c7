import { PDFDict, PDFName, PDFNumber, PDFRawStream, PDFRef, type PDFObject, type PDFArray } from 'pdf-lib';
import type { PdfFile } from './pdf-file.js';

/** What an added revision writes: objects as pdf-lib has them, or as text in Latin-1. */
type Written = PDFObject | string;

/** Gathers objects that change or are new. */
export interface Additions {
  readonly objects: ReadonlyMap<number, Written>;
  /** A new object; returns what refers to it. */
  add(object: Written): PDFRef;
  /** Another state of an object that there is. */
  put(number: number, object: Written): void;
}

export function startAdditions({ revisions }: PdfFile): Additions {
  const [newest] = revisions;
  const size = newest?.trailer.get(PDFName.of('Size'));
  let next = Math.max(size instanceof PDFNumber ? size.asNumber() : 1, 1 + greatest(newest?.entries.keys() ?? []));
  const objects = new Map<number, Written>();
  return {
    objects,
    add: (object) => {
      const ref = PDFRef.of(next);
      objects.set(next, object);
      next += 1;
      return ref;
    },
    put: (number, object) => void objects.set(number, object),
  };
}

/** The file with one revision added at its end; its own bytes stay as they are (ISO 32000-1, 7.5.6). The cross-references
 *  take the form, table or stream, that the file has. */
export function addRevision(file: PdfFile, { objects }: Additions): Uint8Array {
  const [newest] = file.revisions;
  if (!newest) throw new TypeError('a file without revisions');
  const chunks: Uint8Array[] = [file.bytes];
  let length = file.bytes.length;
  const write = (bytes: Uint8Array): void => {
    chunks.push(bytes);
    length += bytes.length;
  };
  write(latin1('\n'));
  const offsets = new Map<number, number>();
  for (const [number, object] of objects) {
    offsets.set(number, length);
    write(indirect(number, object));
  }
  const start = length;
  const sorted = [...offsets].sort(([a], [b]) => a - b);
  write(newest.section.form === 'table' ? table(file, newest, sorted) : stream(file, newest, sorted, start));
  write(latin1(`startxref\n${start}\n%%EOF\n`));
  return Buffer.concat(chunks);
}

type Offsets = readonly (readonly [number, number])[];
type Newest = PdfFile['revisions'][number];

function table(file: PdfFile, newest: Newest, offsets: Offsets): Uint8Array {
  const lines = offsets.map(([number, offset]) => `${number} 1\n${String(offset).padStart(10, '0')} 00000 n \n`);
  const trailer = trailerAfter(file, newest, offsets);
  return latin1(`xref\n${lines.join('')}trailer\n${trailer.toString()}\n`);
}

function stream(file: PdfFile, newest: Newest, offsets: Offsets, start: number): Uint8Array {
  const number = Math.max(greatest(newest.entries.keys()), greatest(offsets.map(([one]) => one))) + 1;
  const all: Offsets = [...offsets, [number, start]];
  const rows = Buffer.alloc(all.length * 7);
  all.forEach(([, offset], index) => {
    rows.writeUInt8(1, index * 7);
    rows.writeUInt32BE(offset, index * 7 + 1);
  });
  const dict = trailerAfter(file, newest, all);
  const list = (numbers: readonly number[]): PDFArray => file.context.obj([...numbers]);
  dict.set(PDFName.of('Type'), PDFName.of('XRef'));
  dict.set(PDFName.of('W'), list([1, 4, 2]));
  dict.set(PDFName.of('Index'), list(all.flatMap(([one]) => [one, 1])));
  dict.set(PDFName.of('Length'), PDFNumber.of(rows.length));
  return indirect(number, PDFRawStream.of(dict, rows));
}

function trailerAfter({ context }: PdfFile, newest: Newest, offsets: Offsets): PDFDict {
  const old = newest.trailer.get(PDFName.of('Size'));
  const size = Math.max(old instanceof PDFNumber ? old.asNumber() : 0, 1 + greatest(offsets.map(([number]) => number)));
  const trailer = PDFDict.withContext(context);
  trailer.set(PDFName.of('Size'), PDFNumber.of(size));
  for (const key of ['Root', 'Info', 'ID'].map((name) => PDFName.of(name))) {
    const value = newest.trailer.get(key);
    if (value) trailer.set(key, value);
  }
  trailer.set(PDFName.of('Prev'), PDFNumber.of(newest.section.start));
  return trailer;
}

function indirect(number: number, object: Written): Uint8Array {
  const head = latin1(`${number} 0 obj\n`);
  const tail = latin1('\nendobj\n');
  if (typeof object === 'string') return Buffer.concat([head, latin1(object), tail]);
  const body = new Uint8Array(object.sizeInBytes());
  object.copyBytesInto(body, 0);
  return Buffer.concat([head, body, tail]);
}

function latin1(text: string): Uint8Array {
  return Buffer.from(text, 'latin1');
}

function greatest(numbers: Iterable<number>): number {
  let most = 0;
  for (const number of numbers) most = Math.max(most, number);
  return most;
}
