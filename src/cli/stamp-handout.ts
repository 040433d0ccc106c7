import { lastIssue, type Book, type BookTrade } from '../core/book/index.js';
import type { HandoutOptions } from '../handout/index.js';
import { tradeDigests } from '../signoff/index.js';
import type { Console } from './console.js';
import type { LoadedFor } from './house-options.js';
import { changesSince, type IssueChanges } from './issue-changes.js';

/** The stamps of a house as it is loaded: what lies between it and its issues is compared when the first handout asks. */
export function stampsOf(
  { since, before, open }: Pick<LoadedFor, 'since' | 'before' | 'open'>,
  book: Book,
  console: Console,
): ReturnType<typeof handoutStamps> {
  return handoutStamps(book, changesSince(book, since, open, console), changesSince(book, before, open, console));
}

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
