import { inLocale } from '../base/units/index.js';
import type { Book, Stamp } from '../core/book/index.js';
import { canonicalJson } from '../signoff/index.js';
import { makeDrawable, type Undrawn } from './drawable.js';
import { attach } from './attach.js';
import { addFields } from './fill-in.js';
import { openTypeset } from './open-typeset.js';
import { makeSheets } from './sheets/index.js';
import { typeset } from './typeset.js';

export interface BookPdf {
  readonly pdf: Uint8Array;
  /** What could not be printed as written. */
  readonly undrawn: readonly Undrawn[];
}

/** The Book as a printed book: Letter or, in a metric house, A4; tagged, with fields for initials and signatures, and the Book's canonical JSON (RFC 8785)
 *  attached as `book.json`. `stamp` is what an issued copy says of itself; its digest is that of the attached bytes. The
 *  same Book gives the same bytes. */
export async function makeBookPdf(book: Book, stamp?: Stamp): Promise<BookPdf> {
  const { undrawn, pdf, fields } = inLocale(book.house, () => {
    const drawable = makeDrawable(makeSheets(book, stamp));
    return { ...drawable, ...typeset(drawable.model) };
  });
  const document = await openTypeset(pdf);
  addFields(document, fields);
  const description = 'The book as data: all that these sheets were printed from';
  await attach(
    document,
    { name: 'book.json', description, on: book.on },
    new TextEncoder().encode(canonicalJson(book)),
  );
  return { pdf: await document.save({ updateFieldAppearances: false, objectsPerTick: Infinity }), undrawn };
}
