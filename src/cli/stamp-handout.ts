import { lastIssue, type Book, type BookTrade } from '../core/book/index.js';
import type { HandoutOptions } from '../handout/index.js';
import { tradeDigests } from '../signoff/index.js';
import type { IssueChanges } from './issue-changes.js';

/** What each trade's handout is issued as. While nothing of a trade's part changed, its handout is that of the last issue, and
 *  says what changed since the issue before; otherwise it is not issued, and says what changed since the last. */
export function handoutStamps(
  book: Book,
  sinceLast: () => IssueChanges | undefined,
  sinceBefore: () => IssueChanges | undefined,
): (trade: BookTrade) => HandoutOptions {
  const last = lastIssue(book);
  if (!last) return () => ({});
  const trades = tradeDigests(book);
  const { number, purpose, date, digest } = last;
  return ({ slug }) => {
    if (trades[slug] !== last.trades[slug]) return optionsOf(sinceLast());
    return { stamp: { number, purpose, date, digest }, ...optionsOf(sinceBefore()) };
  };
}

function optionsOf(changes: IssueChanges | undefined): HandoutOptions {
  if (!changes) return {};
  return { since: { number: changes.issue, date: changes.date, comparison: changes.comparison } };
}
