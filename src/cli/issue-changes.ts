import type { Book } from '../core/book/index.js';
import type { Comparison } from '../core/compare/index.js';
import { compareBooks, type Composer, type SinceIssue } from '../disk/load/index.js';
import type { IsoDate } from '../base/units/index.js';
import type { Console } from './console.js';

/** An issue, its Book, and what lies between it and the records today. */
export interface IssueChanges {
  readonly issue: number;
  readonly date: IsoDate;
  readonly then: Book;
  readonly comparison: Comparison;
}

/** Compares the records today with an issue when it is first asked for; nothing when there is no such issue, or its records
 *  cannot be read any more, which is said. */
export function changesSince(
  book: Book,
  from: SinceIssue | undefined,
  composer: Composer,
  console: Console,
): () => IssueChanges | undefined {
  let made: IssueChanges | undefined;
  let pending = from;
  return () => {
    if (pending) made = compareWith(book, pending, composer, console);
    pending = undefined;
    return made;
  };
}

function compareWith(
  book: Book,
  { issue, date, read }: SinceIssue,
  composer: Composer,
  console: Console,
): IssueChanges | undefined {
  const { value: then, problems } = read();
  console.problems(problems);
  if (!then) return undefined;
  const comparison = compareBooks(then, book, { from: `issue-${issue}`, to: 'the records today' }, composer);
  return { issue, date, then, comparison };
}
