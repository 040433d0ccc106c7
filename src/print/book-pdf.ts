import { inLocale } from '../base/units/index.js';
import type { Book, Stamp } from '../core/book/index.js';
import { canonicalJson } from '../signoff/index.js';
import type { Undrawn } from './drawable.js';
import { pdfJob, setPdf, type SetPdf } from './set-pdf.js';
import { makeSheets } from './sheets/index.js';

export interface BookPdf {
  readonly pdf: Uint8Array;
  /** What could not be printed as written. */
  readonly undrawn: readonly Undrawn[];
}

/** The Book as a printed book: Letter or, in a metric house, A4; tagged, with fields for initials and signatures, and the Book's canonical JSON (RFC 8785)
 *  attached as `book.json`. `stamp` is what an issued copy says of itself; its digest is that of the attached bytes. The
 *  same Book gives the same bytes. `set` makes the PDF, here or elsewhere. */
export async function makeBookPdf(book: Book, stamp?: Stamp, set: SetPdf = setPdf): Promise<BookPdf> {
  const { job, undrawn } = inLocale(book.house, () =>
    pdfJob('book', makeSheets(book, stamp), {
      name: 'book.json',
      description: 'The book as data: all that these sheets were printed from',
      on: book.on,
      bytes: new TextEncoder().encode(canonicalJson(book)),
    }),
  );
  return { pdf: await set(job), undrawn };
}
