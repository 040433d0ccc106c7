import { recordNumber } from '../base/units/index.js';
import type { Book, BookChangeOrder } from '../core/book/index.js';
import { recordsDigest } from '../disk/load/index.js';
import type { Handout } from '../handout/index.js';
import { pageScript } from '../disk/program/index.js';
import type { BookPdf } from '../print/index.js';
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

/** What is made while other work goes on. Where that fails first, nobody waits for it. */
export function meanwhile<Made>(made: Promise<Made>): Promise<Made> {
  made.catch(() => undefined);
  return made;
}

/** The book to print and sign. */
export async function bookPdf(book: Book, keep: KeepPdf = makeAnew): Promise<BookPdf> {
  const { makeBookPdf } = await import('../print/index.js');
  return keep('book', book, (set) => makeBookPdf(book, undefined, set));
}

/** A trade's handout to print. */
export async function handoutPdf(handout: Handout, keep: KeepPdf = makeAnew): Promise<BookPdf> {
  const { makeHandoutPdf } = await import('../print/index.js');
  return keep(`handout-${handout.cover.trade.slug}`, handout, (set) => makeHandoutPdf(handout, set));
}

/** A change order to print and sign. */
export async function changeOrderPdf(book: Book, order: BookChangeOrder, keep: KeepPdf = makeAnew): Promise<BookPdf> {
  const { makeChangeOrderPdf } = await import('../print/index.js');
  return keep(`change-${recordNumber(order.number)}`, book, (set) => makeChangeOrderPdf(book, order, set));
}

/** Each change order to print and sign, by its number. */
export async function changeOrderFiles(book: Book, keep: KeepPdf = makeAnew): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  for (const order of book.changeOrders) {
    const { pdf } = await changeOrderPdf(book, order, keep);
    files.set(`${recordNumber(order.number)}.pdf`, pdf);
  }
  return files;
}
