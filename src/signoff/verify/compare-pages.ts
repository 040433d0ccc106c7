import { Allowance, lastStart, openPdf } from '../pdf/index.js';
import { changesAfter } from './changes-after.js';
import { endsFile } from './signed-range.js';

export type PagesCompared =
  /** It is the other file, byte for byte, and after it came nothing but signatures and fields filled in. */
  | { readonly kind: 'same' }
  /** It is another file, or the same one written anew. */
  | { readonly kind: 'other-file' }
  /** It begins as the other file does, and was changed after. */
  | { readonly kind: 'altered'; readonly why: string };

/** Is a PDF an issued one with signatures added? The strongest proof that its pages are those that were issued. Never throws. */
export function comparePages(pdf: Uint8Array, issued: Uint8Array): PagesCompared {
  const { length } = issued;
  if (length === 0 || Buffer.compare(pdf.subarray(0, length), issued) !== 0) return { kind: 'other-file' };
  if (pdf.length === length) return { kind: 'same' };
  try {
    const file = openPdf(pdf, new Allowance(20_000));
    const before = file.revisions.findIndex(({ section }) => section.start === lastStart(pdf, length));
    if (before < 1 || !endsFile(pdf, length)) return { kind: 'altered', why: 'its revisions cannot be told apart' };
    const changes = changesAfter(file, { before, after: 0, from: length, to: pdf.length });
    for (const change of changes) if (change.kind === 'altered') return { kind: 'altered', why: change.why };
    return { kind: 'same' };
  } catch {
    return { kind: 'altered', why: 'what came after cannot be read' };
  }
}
