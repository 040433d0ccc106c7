import { printDay, printWeekday, printWorkingDays } from './day.js';
import type { Decision } from './decision.js';

/** Where a choice stands, in one line for a card: 'Decide by Fri 1 May 2026 · 9 working days left',
 *  'Late by 3 working days: pushes Framing to 12 May 2026', 'Decided'. */
export function describeState(decision: Decision): string {
  const { state, by, slack, pushesTo, milestoneName } = decision;
  if (state === 'decided') return 'Decided';
  if (state === 'late') {
    const effect = pushesTo === undefined ? '' : `: pushes ${milestoneName} to ${printDay(pushesTo)}`;
    return `Late by ${printWorkingDays(slack)}${effect}`;
  }
  const left = slack === 0 ? 'last working day' : `${printWorkingDays(slack)} left`;
  return `Decide by ${printWeekday(by)} · ${left}`;
}
