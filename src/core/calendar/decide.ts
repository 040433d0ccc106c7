import { byText, type IsoDate } from '../../base/units/index.js';
import { arrivalOf } from './arrival.js';
import { fixedBounds, leadBound, liftedBounds, possibleOptions, type Bearing, type DatedBound } from './bounds.js';
import { printWorkingDays } from './day.js';
import type { DatedMilestone, Decision } from './decision.js';
import type { WorkingDays } from './working-days.js';

/** An open choice is due soon when so many working days, or fewer, are left. */
export const dueSoonDays = 10;

/** `options`: the chosen one alone, or every one still considered, of which the first to be ordered counts and the needs of
 *  all; empty when nothing is to be ordered, or not known yet. */
export interface DecideInput extends Bearing {
  /** A deliberate none is chosen too. */
  readonly chosen: boolean;
}

/** A choice, with the days that milestones it is too late for can be at the earliest. */
export interface Decided {
  readonly decision: Decision;
  /** Milestone id → its first day, if the choice is made on the Book's day. */
  readonly late: ReadonlyMap<string, IsoDate>;
}

/** When a choice must be made: the earliest of all that bears on it, in working days of the house, each less the review: the
 *  order (on site less the lead time), every milestone that the category fixes early, every milestone before which an option
 *  needs something. What is kept open and what is done does not bear on it. The lead time wins a tie. A choice made on a day
 *  off counts as made on the next working day. A milestone that is done is not pushed, however late the choice.
 *  `milestones` hold those of the category and options: the loader has checked them. */
export function decide(
  input: DecideInput,
  milestones: readonly DatedMilestone[],
  calendar: WorkingDays,
  on: IsoDate,
): Decided {
  const { category, chosen } = input;
  const options = chosen ? input.options : possibleOptions(input, milestones);
  const bearing = { ...input, options };
  const arrivals = (options.length > 0 ? options : [undefined]).map((option) =>
    arrivalOf(category, option, milestones, calendar),
  );
  const lead = leadBound(arrivals, calendar);
  const bounds = [lead, ...fixedBounds(bearing, milestones, calendar)].sort((a, b) => byText(a.by, b.by));
  const first = bounds[0] ?? lead;
  const today = calendar.onOrAfter(on);
  const slack = calendar.between(today, first.by);
  const state = stateOf(chosen, slack);
  const pushed = state === 'late' ? bounds.filter(({ by, done }) => !done && by < today) : [];
  const late = new Map<string, IsoDate>();
  for (const { milestone, by, ready } of pushed) {
    const to = calendar.add(ready, calendar.between(by, today));
    if (to > (late.get(milestone) ?? '')) late.set(milestone, to);
  }
  const [push] = pushed;
  const review = calendar.rules.reviewDays;
  const lifted = liftedBounds(input, milestones);
  const { orderBy, ships, onSite, waits } = lead.of;
  return {
    decision: {
      by: first.by,
      milestone: first.milestone,
      milestoneName: first.milestoneName,
      because: first.because,
      reason: review === 0 ? first.reason : `${first.reason}, ${printWorkingDays(review)} for review`,
      bounds: bounds.map(plain),
      ...(lifted.length > 0 && { lifted }),
      orderBy,
      ...(ships !== undefined && { ships }),
      onSite,
      ...(waits > 0 && { waits }),
      slack,
      state,
      pushes: push ? calendar.between(push.by, today) : 0,
      ...(push && {
        pushed: { id: push.milestone, name: push.milestoneName },
        pushesTo: calendar.add(push.ready, calendar.between(push.by, today)),
      }),
    },
    late,
  };
}

function plain({ by, because, milestone, milestoneName, reason, done }: DatedBound): Decision['bounds'][number] {
  return { by, because, milestone, milestoneName, reason, ...(done && { done }) };
}

function stateOf(chosen: boolean, slack: number): Decision['state'] {
  if (chosen) return 'decided';
  if (slack < 0) return 'late';
  return slack <= dueSoonDays ? 'due-soon' : 'open';
}
