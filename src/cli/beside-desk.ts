import type { Book } from '../core/book/index.js';
import { makeHandout, type Handout } from '../handout/index.js';
import { printProblems } from '../base/problem/index.js';
import { keepBy, recordNumber, type IsoDate } from '../base/units/index.js';
import type { Answered, BesideDesk } from '../desk/index.js';
import type { Console } from './console.js';
import { loadFor, withHandoutProblems, type LoadedFor } from './house-options.js';
import { changesSince } from './issue-changes.js';
import { keptPdfs } from './kept-pdfs.js';
import { handoutStamps } from './stamp-handout.js';

/** What lies beside the pages of a desk, made when somebody asks for it: the book in print, change orders to sign, and each trade's handout with its
 *  pages. The same files as a build writes. */
export function besideDesk(dir: string, today: () => IsoDate, console: Console): BesideDesk {
  const keep = keptPdfs(dir);
  let [last, house]: [number, Promise<LoadedFor> | undefined] = [-1, undefined];
  const loaded = (number: number): Promise<LoadedFor> => {
    if (house === undefined || last !== number) {
      [last, house] = [number, loadFor({ house: dir, on: today() }, console).then(withHandoutProblems)];
      pages = pagesOf();
    }
    return house;
  };
  const pagesOf = () =>
    keepBy(
      ({ cover }: Handout) => cover.trade.slug,
      async (handout) => (await import('../site/index.js')).handoutFolders([handout]),
    );
  let pages = pagesOf();
  const handoutFile = async (house: LoadedFor, book: Book, slug: string, path: string): Promise<Answered> => {
    const handout = handoutOf(house, book, slug, console);
    if (!handout) return undefined;
    if (path !== `${slug}/${slug}.pdf`) return (await pages(handout)).get(path);
    const { makeHandoutPdf } = await import('../print/index.js');
    return (await keep(`handout-${slug}`, handout, () => makeHandoutPdf(handout))).pdf;
  };
  return async (path, number) => {
    const [, slug = ''] = /^handout\/([\w-]+)\//u.exec(path) ?? [];
    const isPaper = path === 'book.pdf' || /^change-orders\/\d+\.pdf$/u.test(path);
    if (slug === '' && !isPaper) return undefined;
    const house = await loaded(number);
    const { book } = house;
    if (!book) return { why: printProblems(house.problems, { outcome: 'Nothing is printed of it.' }) };
    if (slug !== '') return handoutFile(house, book, slug, path.slice('handout/'.length));
    const { makeBookPdf, makeChangeOrderPdf } = await import('../print/index.js');
    if (path === 'book.pdf') return (await keep('book', book, () => makeBookPdf(book))).pdf;
    const order = book.changeOrders.find((one) => path === `change-orders/${recordNumber(one.number)}.pdf`);
    const name = `change-${recordNumber(order?.number ?? 0)}`;
    return order && (await keep(name, book, () => makeChangeOrderPdf(book, order))).pdf;
  };
}

/** Stamped as a build stamps it: with the last issue while nothing of the trade's part changed. */
function handoutOf(
  { since, before, open }: LoadedFor,
  book: Book,
  slug: string,
  console: Console,
): Handout | undefined {
  const trade = book.trades.find((one) => one.slug === slug);
  if (!trade) return undefined;
  const stamps = handoutStamps(
    book,
    changesSince(book, since, open, console),
    changesSince(book, before, open, console),
  );
  return makeHandout(book, trade, stamps(trade));
}
