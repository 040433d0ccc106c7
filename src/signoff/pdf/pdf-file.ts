import { PDFContext, PDFDict, PDFName, PDFNumber, PDFRawStream, PDFRef, type PDFObject } from 'pdf-lib';
import { readSections, type Entry, type ReadInput, type Section } from './cross-references.js';
import { Malformed, type Allowance } from './malformed.js';
import { ObjectParser } from './object-parser.js';
import { unpack } from './unpack.js';

/** A PDF as its cross-references give it, at its newest state and at each one before. */
export interface PdfFile {
  readonly bytes: Uint8Array;
  readonly context: PDFContext;
  readonly allowance: Allowance;
  /** Newest first: one for each time the file was written or added to. */
  readonly revisions: readonly Revision[];
}

/** The file as it stood after one cross-reference section was written. */
export interface Revision {
  readonly section: Section;
  /** This section's entries over those of the ones before. */
  readonly entries: ReadonlyMap<number, Entry>;
  readonly trailer: PDFDict;
  /** An object by number; undefined when there is none. Throws `Malformed`. */
  read(number: number): PDFObject | undefined;
  /** What a value stands for: itself, or the object that it refers to. */
  resolve(value: PDFObject | undefined): PDFObject | undefined;
  /** The dictionary that a value stands for. */
  dict(value: PDFObject | undefined): PDFDict | undefined;
  /** Offset and end of an object that stands on its own. */
  span(number: number): { readonly start: number; readonly end: number } | undefined;
}

/** Opens a PDF by its last `startxref`. Throws `Malformed` or `TooMuchWork`. */
export function openPdf(bytes: Uint8Array, allowance: Allowance): PdfFile {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 1024)).toString('latin1');
  if (!head.includes('%PDF-')) throw new Malformed('it does not begin as a PDF does');
  const start = lastStart(bytes, bytes.length);
  if (start === undefined) throw new Malformed('its end is missing');
  const context = PDFContext.create();
  const input = { bytes, context, allowance };
  const sections = readSections(input, start);
  const cache = new Map<string, Parsed>();
  const revisions: Revision[] = [];
  let entries = new Map<number, Entry>();
  for (const section of [...sections].reverse()) {
    entries = section.entries.size === 0 ? entries : new Map([...entries, ...section.entries]);
    revisions.unshift(makeRevision(input, section, entries, cache));
  }
  return { bytes, context, allowance, revisions };
}

/** The offset that the last `startxref` before `end` gives. */
export function lastStart(bytes: Uint8Array, end: number): number | undefined {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, end);
  const at = file.lastIndexOf('startxref');
  if (at < 0) return undefined;
  const digits = /^startxref\s+(\d{1,12})\s/u.exec(file.subarray(at, at + 64).toString('latin1'))?.[1];
  return digits === undefined ? undefined : Number(digits);
}

interface Parsed {
  readonly object: PDFObject;
  readonly start: number;
  readonly end: number;
}

function makeRevision(
  input: ReadInput,
  section: Section,
  entries: ReadonlyMap<number, Entry>,
  cache: Map<string, Parsed>,
): Revision {
  const readAt = (number: number, entry: Entry & { kind: 'at' }): Parsed => {
    const key = `${number}@${entry.offset}`;
    const known = cache.get(key);
    if (known) return known;
    const parsed = ObjectParser.at(input.bytes, entry.offset, input.context, input.allowance).parseIndirect();
    if (parsed.number !== number) throw new Malformed(`object ${number} is not where the file says`);
    const made = { object: parsed.object, start: entry.offset, end: parsed.end };
    cache.set(key, made);
    return made;
  };

  const readIn = (number: number, entry: Entry & { kind: 'in' }): PDFObject | undefined => {
    const holder = entries.get(entry.stream);
    if (holder?.kind !== 'at') throw new Malformed(`object ${number} is in a stream that is not there`);
    const key = `${number}@${holder.offset}#`;
    if (!cache.has(key)) {
      for (const [inner, object] of unpackObjects(input, readAt(entry.stream, holder).object)) {
        cache.set(`${inner}@${holder.offset}#`, { object, start: -1, end: -1 });
      }
    }
    return cache.get(key)?.object;
  };

  const read = (number: number): PDFObject | undefined => {
    input.allowance.step();
    const entry = entries.get(number);
    if (entry === undefined || entry.kind === 'free') return undefined;
    return entry.kind === 'at' ? readAt(number, entry).object : readIn(number, entry);
  };

  const resolve = (value: PDFObject | undefined): PDFObject | undefined => {
    let found = value;
    for (let hops = 0; found instanceof PDFRef; hops += 1) {
      if (hops > 8) throw new Malformed('references go round in a ring');
      found = read(found.objectNumber);
    }
    return found;
  };

  return {
    section,
    entries,
    trailer: section.trailer,
    read,
    resolve,
    dict: (value) => {
      const found = resolve(value);
      return found instanceof PDFDict ? found : undefined;
    },
    span: (number) => {
      const entry = entries.get(number);
      if (entry?.kind !== 'at') return undefined;
      const { start, end } = readAt(number, entry);
      return { start, end };
    },
  };
}

/** The objects of an object stream, by number (ISO 32000-1, 7.5.7). */
function unpackObjects({ context, allowance }: ReadInput, stream: PDFObject): ReadonlyMap<number, PDFObject> {
  if (!(stream instanceof PDFRawStream)) throw new Malformed('an object stream is not a stream');
  const [count, first] = ['N', 'First'].map((key) => stream.dict.get(PDFName.of(key)));
  if (!(count instanceof PDFNumber) || !(first instanceof PDFNumber)) throw new Malformed('bad object stream');
  const bytes = unpack(stream, allowance);
  const heads = ObjectParser.at(bytes, 0, context, allowance);
  const objects = new Map<number, PDFObject>();
  for (let index = 0; index < count.asNumber(); index += 1) {
    const number = heads.integer();
    const at = first.asNumber() + heads.integer();
    if (objects.has(number)) throw new Malformed(`object ${number} stands twice in one stream`);
    objects.set(number, ObjectParser.at(bytes, at, context, allowance).parseObject());
  }
  return objects;
}
