import { codeDigits, lastIssue, type Book, type BookChangeOrder, type BookIssue } from '../../core/book/index.js';
import { shortDigest } from '../../base/units/index.js';
import { changeOrderDigest, tradeDigests } from '../digest/index.js';

/** A sheet of paper held against the issues of a house, by the digest that is printed on it. */
export interface SheetStanding {
  /** The issue that it is of; absent where the house has none with that digest. */
  readonly issue?: BookIssue;
  /** The issue that counts today; absent where none does. */
  readonly current?: BookIssue;
  /** Slugs of trades that build otherwise by the current issue than by the sheet's. */
  readonly changed: readonly string[];
  /** Slugs of trades whose part the records of today have otherwise than the current issue: the next one will tell. */
  readonly toCome: readonly string[];
}

/** `4F2A-91C0-77BE` as it is printed, or the beginning of it, in hexadecimal digits: at least as many as the code on a sheet has. Undefined for any
 *  other text. */
export function printedDigest(text: string): string | undefined {
  const digits = text.trim().replaceAll(/[-\s]/gu, '').toLowerCase();
  return /^[0-9a-f]+$/u.test(digits) && digits.length >= codeDigits && digits.length <= 64 ? digits : undefined;
}

/** `digest`: hexadecimal digits that the digest of an issue begins with. The same records can be issued twice: without a `number`, the newest is meant. */
export function sheetStanding(book: Book, digest: string, number?: number): SheetStanding {
  const issue = book.issues.findLast(
    (one) => one.digest.startsWith(digest) && (number === undefined || one.number === number),
  );
  const current = lastIssue(book);
  const among = (one: BookIssue, other: Readonly<Record<string, string>>): readonly string[] =>
    book.trades.flatMap(({ slug }) => (one.trades[slug] === other[slug] ? [] : [slug]));
  return {
    ...(issue && { issue }),
    ...(current && { current }),
    changed: issue && current ? among(issue, current.trades) : [],
    toCome: current ? among(current, tradeDigests(book)) : [],
  };
}

/** The issue whose digest is printed on every page of a PDF, by its text without white space. */
export function issueOnPages(book: Book, pages: readonly string[]): BookIssue | undefined {
  return book.issues.findLast(({ digest }) => pages.every((text) => text.includes(shortDigest(digest))));
}

/** The change order whose digest begins with these hexadecimal digits, as it is recorded now: one that was drafted anew has another. */
export function changeOrderOf(
  { house, changeOrders }: Book,
  { number, digest }: { readonly number?: number; readonly digest: string },
): BookChangeOrder | undefined {
  return changeOrders.findLast(
    (order) =>
      (number === undefined || order.number === number) && changeOrderDigest(house.number, order).startsWith(digest),
  );
}
