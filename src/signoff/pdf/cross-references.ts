import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRawStream, type PDFContext } from 'pdf-lib';
import { Malformed, type Allowance } from './malformed.js';
import { ObjectParser } from './object-parser.js';
import { unpack } from './unpack.js';

/** Where an object is: at an offset of the file, inside an object stream, or nowhere any more. */
export type Entry =
  | { readonly kind: 'at'; readonly offset: number; readonly generation: number }
  | { readonly kind: 'in'; readonly stream: number; readonly index: number }
  | { readonly kind: 'free' };

/** One cross-reference section with its trailer (ISO 32000-1, 7.5.4 to 7.5.8). */
export interface Section {
  readonly start: number;
  /** After its last byte, before `startxref`. */
  readonly end: number;
  readonly form: 'table' | 'stream';
  readonly entries: ReadonlyMap<number, Entry>;
  readonly trailer: PDFDict;
  readonly previous?: number;
  /** A table that a stream adds to: two readers may see two files in it. */
  readonly hybrid: boolean;
}

export interface ReadInput {
  readonly bytes: Uint8Array;
  readonly context: PDFContext;
  readonly allowance: Allowance;
}

const mostSections = 200;
const mostObjects = 2_000_000;

/** All sections of the file whose newest one is at `start`, newest first. */
export function readSections(input: ReadInput, start: number): readonly Section[] {
  const sections: Section[] = [];
  const seen = new Set<number>();
  for (let at: number | undefined = start; at !== undefined;) {
    if (seen.has(at) || sections.length >= mostSections) throw new Malformed('the cross-references go round in a ring');
    seen.add(at);
    const section: Section = readSection(input, at);
    sections.push(section);
    at = section.previous;
  }
  return sections;
}

function readSection(input: ReadInput, start: number): Section {
  if (!Number.isInteger(start) || start < 0 || start >= input.bytes.length) {
    throw new Malformed('a cross-reference points outside the file');
  }
  const parser = ObjectParser.at(input.bytes, start, input.context, input.allowance);
  if (!parser.isWord('xref')) return readStreamSection(input, start);
  const table = readTable(parser, input.allowance);
  const trailer = parser.parseObject();
  if (!(trailer instanceof PDFDict)) throw new Malformed('there is no trailer');
  const added = trailer.get(PDFName.of('XRefStm'));
  const hybrid = added instanceof PDFNumber;
  const entries = hybrid
    ? new Map([...readStreamSection(input, added.asNumber()).entries, ...withoutFree(table)])
    : table;
  return { start, end: parser.offset, form: 'table', entries, trailer, hybrid, ...previousOf(trailer) };
}

function withoutFree(entries: ReadonlyMap<number, Entry>): readonly (readonly [number, Entry])[] {
  return [...entries].filter(([, { kind }]) => kind !== 'free');
}

function readTable(parser: ObjectParser, allowance: Allowance): ReadonlyMap<number, Entry> {
  const entries = new Map<number, Entry>();
  while (!parser.isWord('trailer')) {
    const first = parser.integer();
    const count = parser.integer();
    if (first + count > mostObjects) throw new Malformed('the cross-reference table is too long');
    for (let number = first; number < first + count; number += 1) {
      allowance.step();
      const offset = parser.integer();
      const generation = parser.integer();
      const used = parser.isWord('n');
      if (!used) parser.word('f');
      entries.set(number, used ? { kind: 'at', offset, generation } : { kind: 'free' });
    }
  }
  return entries;
}

function readStreamSection(input: ReadInput, start: number): Section {
  const parsed = ObjectParser.at(input.bytes, start, input.context, input.allowance).parseIndirect();
  const stream = parsed.object;
  if (!(stream instanceof PDFRawStream) || stream.dict.get(PDFName.of('Type')) !== PDFName.of('XRef')) {
    throw new Malformed('there is no cross-reference where the file says');
  }
  const { dict } = stream;
  const widths = numbers(dict.get(PDFName.of('W')));
  const [kinds = 0, seconds = 0, thirds = 0] = widths;
  const wide = kinds + seconds + thirds;
  if (widths.length !== 3 || wide < 1 || widths.some((width) => width > 6))
    throw new Malformed('bad cross-reference stream');
  const size = dict.get(PDFName.of('Size'));
  const ranges = numbers(dict.get(PDFName.of('Index')));
  const runs = ranges.length > 0 ? ranges : [0, size instanceof PDFNumber ? size.asNumber() : 0];
  const data = unpack(stream, input.allowance);
  const entries = new Map<number, Entry>();
  let at = 0;
  const next = (width: number): number => {
    let value = 0;
    for (let index = 0; index < width; index += 1) value = value * 256 + (data[at + index] ?? 0);
    at += width;
    return value;
  };
  for (let run = 0; run + 1 < runs.length; run += 2) {
    const first = runs[run] ?? 0;
    const last = first + (runs[run + 1] ?? 0);
    if (last > mostObjects) throw new Malformed('the cross-reference stream is too long');
    for (let number = first; number < last; number += 1) {
      input.allowance.step();
      if (at + wide > data.length) throw new Malformed('the cross-reference stream is cut off');
      const kind = kinds === 0 ? 1 : next(kinds);
      entries.set(number, entryOf(kind, next(seconds), next(thirds)));
    }
  }
  return { start, end: parsed.end, form: 'stream', entries, trailer: dict, hybrid: false, ...previousOf(dict) };
}

function entryOf(kind: number, second: number, third: number): Entry {
  if (kind === 1) return { kind: 'at', offset: second, generation: third };
  return kind === 2 ? { kind: 'in', stream: second, index: third } : { kind: 'free' };
}

function numbers(object: unknown): readonly number[] {
  if (!(object instanceof PDFArray)) return [];
  const all = object.asArray().map((one) => (one instanceof PDFNumber ? one.asNumber() : -1));
  if (all.some((one) => !Number.isInteger(one) || one < 0)) throw new Malformed('bad cross-reference stream');
  return all;
}

function previousOf(trailer: PDFDict): { readonly previous?: number } {
  const previous = trailer.get(PDFName.of('Prev'));
  return previous instanceof PDFNumber ? { previous: previous.asNumber() } : {};
}
