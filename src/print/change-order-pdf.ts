import { inLocale } from '../base/units/index.js';
import type { Book, BookChangeOrder } from '../core/book/index.js';
import type { BookPdf } from './book-pdf.js';
import { attach } from './attach.js';
import { changeOrderFile } from '../signoff/index.js';
import { makeDrawable } from './drawable.js';
import { addFields } from './fill-in.js';
import { openTypeset } from './open-typeset.js';
import { makeChangeOrderSheet } from './sheets/index.js';
import { typeset } from './typeset.js';

/** One change order to print and sign: what, why, its lines, money and days, the new contract sum, and fields for both
 *  parties; what it agrees to is attached as `change-order.json`, and the digest of that is at the foot of each page. The same Book gives the
 *  same bytes. */
export async function makeChangeOrderPdf(book: Book, order: BookChangeOrder): Promise<BookPdf> {
  const { undrawn, pdf, fields } = inLocale(book.house, () => {
    const drawable = makeDrawable(makeChangeOrderSheet(book, order));
    return { ...drawable, ...typeset(drawable.model, 'change-order') };
  });
  const document = await openTypeset(pdf);
  addFields(document, fields);
  await attach(
    document,
    { name: 'change-order.json', description: 'What this change order agrees to, as data', on: order.proposedOn },
    changeOrderFile(book.house.number, order),
  );
  return { pdf: await document.save({ updateFieldAppearances: false, objectsPerTick: Infinity }), undrawn };
}
