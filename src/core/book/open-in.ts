import type { BookRoom } from './book.js';
import type { LookUp } from './look-up.js';

/** How urgent what is open in a room is: a choice whose last day is past, one that is due soon, or only such as have time; undefined where
 *  nothing is open. */
export function openIn(room: BookRoom, look: Pick<LookUp, 'selectionsOf'>): 'late' | 'due-soon' | 'open' | undefined {
  const open = look.selectionsOf(room).filter(({ state }) => state === 'open');
  const isAny = (state: string): boolean => open.some(({ decision }) => decision.state === state);
  if (open.length === 0) return undefined;
  return isAny('late') ? 'late' : isAny('due-soon') ? 'due-soon' : 'open';
}
