import { PDFArray, PDFName, PDFRef, type PDFDict, type PDFObject } from 'pdf-lib';
import { Malformed } from './malformed.js';
import type { Revision } from './pdf-file.js';

interface Page {
  readonly number: number;
  readonly dict: PDFDict;
}

/** The pages in order; only those that are objects of their own, as the format demands. */
export function pagesOf(revision: Revision): readonly Page[] {
  const root = revision.dict(revision.trailer.get(PDFName.of('Root')));
  const pages: Page[] = [];
  const seen = new Set<number>();

  const walk = (value: PDFObject | undefined, depth: number): void => {
    if (!(value instanceof PDFRef) || seen.has(value.objectNumber)) return;
    if (depth > 64) throw new Malformed('the pages are nested too deep');
    seen.add(value.objectNumber);
    const dict = revision.dict(value);
    const kids = revision.resolve(dict?.get(PDFName.of('Kids')));
    if (kids instanceof PDFArray) for (const kid of kids.asArray()) walk(kid, depth + 1);
    else if (dict) pages.push({ number: value.objectNumber, dict });
  };

  walk(root?.get(PDFName.of('Pages')), 0);
  return pages;
}
