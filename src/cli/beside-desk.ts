import { printProblems } from '../base/problem/index.js';
import { keepBy, recordNumber, type IsoDate } from '../base/units/index.js';
import type { Answered, BesideDesk } from '../desk/index.js';
import { makeHandout, type Handout } from '../handout/index.js';
import { bookPdf, changeOrderPdf, handoutPdf } from './beside-book.js';
import type { Console } from './console.js';
import { loadFor, withHandoutProblems } from './house-options.js';
import { keptPdfs } from './kept-pdfs.js';
import { stampsOf } from './stamp-handout.js';

/** Answers a file by its path. */
type Files = (path: string) => Promise<Answered>;

/** What lies beside the pages of a desk, made when somebody asks for it: the book in print, change orders to sign, and each trade's handout with its
 *  pages. The same files as a build writes. What was made of earlier records is let go. */
export function besideDesk(dir: string, today: () => IsoDate, console: Console): BesideDesk {
  let last: { readonly number: number; readonly files: Promise<Files> } | undefined;
  return async (path, number) => {
    if (!/^(?:handout\/[\w-]+\/.+|book\.pdf|change-orders\/\d+\.pdf)$/u.test(path)) return undefined;
    if (last?.number !== number) last = { number, files: filesOf(dir, today(), console) };
    return (await last.files)(path);
  };
}

async function filesOf(dir: string, on: IsoDate, console: Console): Promise<Files> {
  const house = withHandoutProblems(await loadFor({ house: dir, on }, console));
  const { book, problems } = house;
  if (!book) {
    const why = printProblems(problems, { outcome: 'Nothing is printed of it.' });
    return () => Promise.resolve({ why });
  }
  const keep = keptPdfs(dir);
  const stamps = stampsOf(house, book, console);
  const handoutOf = keepBy(
    (slug: string) => slug,
    (slug): Handout | undefined => {
      const trade = book.trades.find((one) => one.slug === slug);
      return trade && makeHandout(book, trade, stamps(trade));
    },
  );
  const pagesOf = keepBy(
    (handout: Handout) => handout,
    async (handout) => (await import('../site/index.js')).handoutFolders([handout]),
  );
  return async (path) => {
    if (path === 'book.pdf') return (await bookPdf(book, keep)).pdf;
    const [, slug] = /^handout\/([\w-]+)\//u.exec(path) ?? [];
    if (slug === undefined) {
      const order = book.changeOrders.find(({ number }) => path === `change-orders/${recordNumber(number)}.pdf`);
      return order && (await changeOrderPdf(book, order, keep)).pdf;
    }
    const handout = handoutOf(slug);
    if (!handout) return undefined;
    const file = path.slice('handout/'.length);
    return file === `${slug}/${slug}.pdf` ? (await handoutPdf(handout, keep)).pdf : (await pagesOf(handout)).get(file);
  };
}
