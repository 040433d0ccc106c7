import { inLocale } from '../base/units/index.js';
import type { Book, BookChangeOrder } from '../core/book/index.js';
import { changeOrderFile } from '../signoff/index.js';
import type { BookPdf } from './book-pdf.js';
import { pdfJob, setPdf, type SetPdf } from './set-pdf.js';
import { makeChangeOrderSheet } from './sheets/index.js';

/** One change order to print and sign: what, why, its lines, money and days, the new contract sum, and fields for both
 *  parties; what it agrees to is attached as `change-order.json`, and the digest of that is at the foot of each page. The same Book gives the
 *  same bytes. */
export async function makeChangeOrderPdf(book: Book, order: BookChangeOrder, set: SetPdf = setPdf): Promise<BookPdf> {
  const { job, undrawn } = inLocale(book.house, () =>
    pdfJob('change-order', makeChangeOrderSheet(book, order), {
      name: 'change-order.json',
      description: 'What this change order agrees to, as data',
      on: order.proposedOn,
      bytes: changeOrderFile(book.house.number, order),
    }),
  );
  return { pdf: await set(job), undrawn };
}
