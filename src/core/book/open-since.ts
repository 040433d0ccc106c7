import type { Issue } from '../model/index.js';
import type { BookSelection } from './book.js';

/** Since which issue a choice is open, by the issues that were not taken back. One that was decided in between, and opened
 *  again, is open since then. */
export function openSince(id: string, issues: readonly Issue[]): Pick<BookSelection, 'openSince'> {
  const standing = issues.filter((issue) => issue.void === undefined);
  const decided = standing.findLastIndex(({ open }) => !open?.includes(id));
  const first = standing[decided + 1];
  return first ? { openSince: { issue: first.number, date: first.date } } : {};
}
