import { PDFArray, PDFDict, PDFRawStream, PDFRef, type PDFObject } from 'pdf-lib';
import type { Revision } from '../pdf/index.js';

/** How often each object number is referred to by the objects of a revision, those that nothing leads to included. Undefined
 *  when an object reaches past `end`, or cannot be read: then nobody can say what it refers to. */
export function countReferences(revision: Revision, end: number): ReadonlyMap<number, number> | undefined {
  const counts = new Map<number, number>();
  const count = (object: PDFObject): void => {
    if (object instanceof PDFRef) counts.set(object.objectNumber, (counts.get(object.objectNumber) ?? 0) + 1);
    else if (object instanceof PDFRawStream) count(object.dict);
    else if (object instanceof PDFArray) object.asArray().forEach(count);
    else if (object instanceof PDFDict) object.values().forEach(count);
  };
  for (const [number, entry] of revision.entries) {
    if (entry.kind === 'free') continue;
    const object = revision.read(number);
    const span = revision.span(number);
    if (span && span.end > end) return undefined;
    if (object) count(object);
  }
  return counts;
}
