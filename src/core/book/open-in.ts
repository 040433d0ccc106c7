import type { BookRoom } from './book.js';
import type { LookUp } from './look-up.js';

/** What is open in a room: a choice whose last day is past, or only such as have time; undefined where nothing is. */
export function openIn(room: BookRoom, look: Pick<LookUp, 'selectionsOf'>): 'late' | 'open' | undefined {
  const open = look.selectionsOf(room).filter(({ state }) => state === 'open');
  if (open.length === 0) return undefined;
  return open.some(({ decision }) => decision.state === 'late') ? 'late' : 'open';
}
