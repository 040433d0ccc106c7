import { recordNumber } from '../base/units/index.js';
import type { Book } from '../core/book/index.js';
import { recordsDigest } from '../disk/load/index.js';
import { pageScript } from '../disk/program/index.js';
import type { Beside } from '../site/index.js';
import { packHouse } from '../try/index.js';
import type { LoadedFor } from './house-options.js';
import { makeAnew, type KeepPdf } from './kept-pdfs.js';

/** The house with which choices are tried in the book's pages. */
export async function tryingOf({ book, open }: Pick<LoadedFor, 'book' | 'open'>): Promise<Pick<Beside, 'trying'>> {
  const { house } = await open.current();
  if (!house || !book) return {};
  const snapshot = recordsDigest(book.sources);
  return { trying: { house: packHouse({ ...house, snapshot }, book), script: await pageScript() } };
}

/** Each change order to print and sign, by its number. */
export async function changeOrderFiles(book: Book, keep: KeepPdf = makeAnew): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  if (book.changeOrders.length === 0) return files;
  const { makeChangeOrderPdf } = await import('../print/index.js');
  for (const order of book.changeOrders) {
    const number = recordNumber(order.number);
    const { pdf } = await keep(`change-${number}`, book, () => makeChangeOrderPdf(book, order));
    files.set(`${number}.pdf`, pdf);
  }
  return files;
}
