import { PDFName } from 'pdf-lib';
import type { Entry, PdfFile, Revision } from '../pdf/index.js';
import { sameObject } from './same-object.js';

/** Two states of a file: `before` is signed and ends at `from`, `after` ends at `to`. Indexes of revisions, newest first. */
export interface Span {
  readonly before: number;
  readonly after: number;
  readonly from: number;
  readonly to: number;
}

/** Is every byte that was added part of an object, a cross-reference section or white space, and does every cross-reference
 *  point at an added object or where it did before? Otherwise two readers could see two documents, or an old draft that
 *  lies hidden in the signed bytes could be brought up. Returns what is wrong, in words. */
export function findStrayBytes(file: PdfFile, span: Span): string | undefined {
  const signed = file.revisions[span.before];
  if (!signed) return 'its revisions cannot be told apart';
  const pieces: Piece[] = [];
  for (let index = span.before - 1; index >= span.after; index -= 1) {
    const revision = file.revisions[index];
    const wrong = revision ? gather(revision, signed, span, pieces) : 'its revisions cannot be told apart';
    if (wrong !== undefined) return wrong;
  }
  return findGap(file.bytes, pieces, span);
}

interface Piece {
  readonly start: number;
  readonly end: number;
  readonly isSection: boolean;
}

function gather(revision: Revision, signed: Revision, span: Span, pieces: Piece[]): string | undefined {
  const { section, trailer } = revision;
  const root = PDFName.of('Root');
  if (section.start < span.from || section.end > span.to) return 'its cross-references are out of order';
  if (section.hybrid) return 'its cross-references can be read in two ways';
  if (trailer.has(PDFName.of('Encrypt'))) return 'it was encrypted';
  if (!sameObject(trailer.get(root), signed.trailer.get(root))) return 'another document was put in its place';
  pieces.push({ start: section.start, end: section.end, isSection: true });
  for (const [number, entry] of section.entries) {
    const old = signed.entries.get(number);
    if (sameEntry(entry, old)) continue;
    if (entry.kind === 'free') {
      if (number !== 0 && old !== undefined && old.kind !== 'free') return `object ${number} was taken out`;
    } else if (entry.kind === 'at') {
      if (entry.offset < span.from) return `object ${number} was pointed at older bytes`;
      const place = revision.span(number);
      if (!place || place.end > span.to) return `object ${number} does not end`;
      if (place.start !== section.start) pieces.push({ ...place, isSection: false });
    } else {
      const holder = revision.entries.get(entry.stream);
      const isAdded = holder?.kind === 'at' && holder.offset >= span.from;
      if (!isAdded) return `object ${number} was pointed at older bytes`;
    }
  }
  return undefined;
}

function sameEntry(a: Entry, b: Entry | undefined): boolean {
  if (b === undefined) return false;
  if (a.kind === 'at') return b.kind === 'at' && a.offset === b.offset && a.generation === b.generation;
  if (a.kind === 'in') return b.kind === 'in' && a.stream === b.stream && a.index === b.index;
  return b.kind === 'free';
}

/** White space and comments; nothing that a reader in search of a broken file's parts could take for one. */
const blank = /^(?:[\0\t\n\f\r ]|%(?!%EOF)(?![^\r\n]*(?:obj|xref|trailer|stream))[^\r\n]{0,200}(?:\r|\n))*$/u;
const ending = /^[\0\t\n\f\r ]*startxref[\t\n\r ]+(\d{1,12})[\t\n\r ]+%%EOF(?:\r\n|\r|\n|$)/u;

function findGap(bytes: Uint8Array, pieces: Piece[], { from, to }: Span): string | undefined {
  pieces.sort((a, b) => a.start - b.start);
  let at = from;
  let lastSection: number | undefined;
  for (const piece of [...pieces, { start: to, end: to, isSection: false }]) {
    if (piece.start < at) {
      if (piece.end <= at) continue;
      return 'its added parts overlap';
    }
    let gap = Buffer.from(bytes.buffer, bytes.byteOffset + at, piece.start - at).toString('latin1');
    if (lastSection !== undefined) {
      const end = ending.exec(gap);
      if (!end || Number(end[1]) !== lastSection) return 'an added part has no proper end';
      gap = gap.slice(end[0].length);
    }
    if (gap.length > 100_000 || !blank.test(gap)) return `there are stray bytes at byte ${at}`;
    at = piece.end;
    lastSection = piece.isSection ? piece.start : undefined;
  }
  return undefined;
}
