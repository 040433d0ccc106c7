import type { Book, BookTrade } from '../book/index.js';
import type { Comparison } from '../compare/index.js';
import type { HandoutOptions } from '../handout/index.js';
import { compareBooks } from '../load/index.js';
import type { LoadedBook, SinceIssue } from '../load/index.js';
import { digestsOf } from '../signoff/index.js';

/** What each trade's handout is issued as. While nothing of a trade's part changed, its handout is that of the last issue, and
 *  says what changed since the issue before; otherwise it is not issued, and says what changed since the last. */
export function handoutStamps({ since, before }: LoadedBook, book: Book): (trade: BookTrade) => HandoutOptions {
  const last = book.issues.at(-1);
  if (!last) return () => ({});
  const { trades } = digestsOf(book);
  const compared = new Map<SinceIssue, Comparison>();
  const changes = (from: SinceIssue | undefined): HandoutOptions => {
    if (!from) return {};
    const known = compared.get(from);
    const comparison = known ?? compareBooks(from.book, book, { from: `issue-${from.issue}`, to: 'the records today' });
    compared.set(from, comparison);
    return { since: { number: from.issue, date: from.date, comparison } };
  };
  const { number, purpose, date, digest } = last;
  return ({ slug }) =>
    trades[slug] === last.trades[slug]
      ? { stamp: { number, purpose, date, digest }, ...changes(before) }
      : changes(since);
}
