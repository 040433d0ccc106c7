import { PDFArray, PDFDict, PDFRawStream, PDFRef, type PDFObject } from 'pdf-lib';
import type { PdfFile, Revision } from '../pdf/index.js';
import type { Span } from './added-bytes.js';

/** Numbers of the objects that were added and that nothing in the document leads to. Cross-references and what packs objects that are
 *  in use are reached by the file's own reading. */
export function looseObjects({ revisions }: PdfFile, { before: old, after: next }: Span): readonly number[] {
  const [before, after] = [revisions[old], revisions[next]];
  if (!before || !after) return [];
  const sections = new Set(revisions.map(({ section }) => section.start));
  const holders = new Set([...after.entries.values()].flatMap((one) => (one.kind === 'in' ? [one.stream] : [])));
  const isNew = (number: number): boolean => (before.entries.get(number)?.kind ?? 'free') === 'free';
  const added = [...after.entries].flatMap(([number, entry]) => {
    const isReading =
      entry.kind === 'free' || (entry.kind === 'at' && sections.has(entry.offset)) || holders.has(number);
    return !isReading && isNew(number) ? [number] : [];
  });
  if (added.length === 0) return [];
  const reached = reachedFrom(after);
  return added.filter((number) => !reached.has(number));
}

function reachedFrom(revision: Revision): ReadonlySet<number> {
  const reached = new Set<number>();
  const left: PDFObject[] = [revision.trailer];
  for (let one = left.pop(); one !== undefined; one = left.pop()) {
    if (one instanceof PDFRef) {
      if (reached.has(one.objectNumber)) continue;
      reached.add(one.objectNumber);
      const object = revision.read(one.objectNumber);
      if (object) left.push(object);
    } else if (one instanceof PDFRawStream) left.push(one.dict);
    else if (one instanceof PDFArray) left.push(...one.asArray());
    else if (one instanceof PDFDict) left.push(...one.values());
  }
  return reached;
}
