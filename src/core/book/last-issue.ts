import type { Book, BookIssue } from './book.js';

/** The newest issue that was not taken back; undefined while nothing is issued. */
export function lastIssue({ issues }: Pick<Book, 'issues'>): BookIssue | undefined {
  return issues.findLast((issue) => issue.void === undefined);
}
