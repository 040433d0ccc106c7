import { printDay } from '../../base/units/index.js';
import { printWorkingDays } from './day.js';
import type { Decision } from './decision.js';

/** How far off a decide-by day is: '12 working days left', 'last working day', '4 working days late'. */
export function describeSlack(slack: number): string {
  if (slack === 0) return 'last working day';
  return `${printWorkingDays(slack)} ${slack > 0 ? 'left' : 'late'}`;
}

/** What a late choice moves when it is made on the Book's day: 'Decided today, it moves Framing starts by 3 working days,
 *  to 7 May 2026; 12 milestones after it move too, the last, Hand-over, to 2 March 2027'. Nothing for one in time. */
export function describePush({ pushes, pushesTo, milestoneName, moves = [] }: Decision): string {
  if (pushes === 0) return '';
  const to = pushesTo === undefined ? '' : `, to ${printDay(pushesTo)}`;
  const pushed = `Decided today, it moves ${milestoneName} by ${printWorkingDays(pushes)}${to}`;
  const after = moves.slice(1);
  const last = after.at(-1);
  if (!last) return pushed;
  if (after.length === 1) return `${pushed}, and ${last.name} after it to ${printDay(last.to)}`;
  return `${pushed}; ${after.length} milestones after it move too, the last, ${last.name}, to ${printDay(last.to)}`;
}
