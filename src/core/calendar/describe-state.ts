import { counted, printDay } from '../../base/units/index.js';
import { printWorkingDays } from './day.js';
import type { DayAfter, Decision } from './decision.js';

/** How far off a decide-by day is: '12 working days left', 'last working day', '4 working days late'. */
export function describeSlack(slack: number): string {
  if (slack === 0) return 'last working day';
  return `${printWorkingDays(slack)} ${slack > 0 ? 'left' : 'late'}`;
}

/** What a late choice moves when it is made on the Book's day: 'Decided today, it moves Framing starts by 3 working days,
 *  to 7 May 2026; 12 more milestones move too, the last, Hand-over, to 2 March 2027'. Nothing for one in time. */
export function describePush({ pushes, pushesTo, pushed, moves = [] }: Decision): string {
  if (!pushed) return '';
  const to = pushesTo === undefined ? '' : `, to ${printDay(pushesTo)}`;
  const first = `Decided today, it moves ${pushed.name} by ${printWorkingDays(pushes)}${to}`;
  const after = moves.slice(1);
  const last = after.at(-1);
  if (!last) return first;
  if (after.length === 1) return `${first}, and ${last.name} to ${printDay(last.to)}`;
  return `${first}; ${after.length} more milestones move too, the last, ${last.name}, to ${printDay(last.to)}`;
}

/** What the day after the last one comes to: 'On 29 May 2026 it moves Drywall hung and 9 more milestones; Hand-over comes 1
 *  working day later, on 2 March 2027'. */
export function describeDayAfter({ on, moved, first, last }: DayAfter): string {
  const day = `On ${printDay(on)}`;
  if (!first) return `${day} nothing moves: what it was needed for is done`;
  const others = moved - 1;
  const more = others === 0 ? '' : ` and ${counted(others, 'more milestone')}`;
  const moves = `${day} it moves ${first.name}${more}`;
  if (!last) return `${moves}; the job ends when it did`;
  return `${moves}; ${last.name} comes ${printWorkingDays(last.days)} later, on ${printDay(last.to)}`;
}
