import type { Book, BookSelection } from '../../book/index.js';
import type { Decision } from '../../calendar/index.js';
import { leaveOut } from './leave-out.js';

/** A Book without what the day of reading changes: the day itself, and the slack and state of each decision. The same
 *  records give the same value on every day. */
export function withoutDay(book: Book): object {
  return { ...leaveOut(book, 'on'), selections: book.selections.map(undated) };
}

function undated(selection: BookSelection): object {
  return {
    ...selection,
    decision: fixedPart(selection.decision),
    alternatives: selection.alternatives.map((one) => ({ ...one, decision: fixedPart(one.decision) })),
  };
}

function fixedPart(decision: Decision): object {
  return leaveOut(decision, 'slack', 'state', 'pushes', 'pushesTo', 'moves');
}
