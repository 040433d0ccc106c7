import { agreedTwice, inOrderOfDecision } from '../../core/compare/index.js';
import { problemAt, type Problem } from '../../base/problem/index.js';
import { draftAnewWords, twiceWords } from '../../signoff/index.js';
import type { OpenHouse } from './open-house.js';

/** Change orders with lines that an approved one has: an error when both are approved, since the contract then counts them twice; a warning while
 *  one waits. */
export async function checkAgreedTwice(open: OpenHouse): Promise<readonly Problem[]> {
  const { house } = await open.current();
  if (!house) return [];
  const { changes, issues } = house.records;
  const approved = inOrderOfDecision(changes);
  return changes.flatMap((order) => {
    const { number, state, origin } = order;
    if (state !== 'approved' && state !== 'proposed') return [];
    const before = state === 'approved' ? approved.slice(0, approved.indexOf(order)) : approved;
    const twice = agreedTwice(order, before, issues);
    const [first] = twice;
    if (!first) return [];
    const counts = state === 'approved' ? ', so that the contract counts them twice' : '';
    const message = `change order ${number} ${twiceWords(twice)}${counts}`;
    const fix =
      state === 'approved'
        ? `take the approval back with git revert, then ${draftAnewWords(order)}`
        : draftAnewWords(order);
    const severity = state === 'approved' ? 'error' : 'warning';
    return [problemAt(origin, ['lines', first.index], 'change-agreed-twice', message, { fix, severity })];
  });
}
