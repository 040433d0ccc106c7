import type { BookSelection } from '../core/book/index.js';

/** Why nothing else can be tried at a place, as a sentence: what was released, ordered or signed is changed by a change order. Undefined where it
 *  can. */
export function lockOf({ state, facts, signed }: BookSelection): string | undefined {
  const changing = 'changing it takes a change order';
  if (state === 'installed') return `It is installed: ${changing}.`;
  if (state === 'ordered') return `It is ordered: ${changing}.`;
  if (facts.length > 0) return `It is released for ordering: ${changing}.`;
  if (state !== 'open' && signed?.state === 'signed') return `It is signed in issue ${signed.issue}: ${changing}.`;
  return undefined;
}
