import type { Category, Option } from '../model/index.js';
import { printDay, type IsoDate } from '../../base/units/index.js';
import { printWorkingDays } from './day.js';
import type { DatedMilestone, Decision } from './decision.js';
import type { WorkingDays } from './working-days.js';

/** An open choice is due soon when so many working days, or fewer, are left. */
export const dueSoonDays = 10;

export interface DecideInput {
  readonly category: Category;
  /** The chosen option alone, or every one still considered: the longest lead time counts. Empty when nothing is to
   *  be ordered, or not known yet. */
  readonly options: readonly Option[];
  /** A deliberate none is chosen too. */
  readonly chosen: boolean;
}

/** When a choice must be made: the earlier of (on site − lead − review) and (the milestone it fixes early − review), in
 *  working days of the house; the lead time wins a tie. The product is on site on the day of the milestone at which it
 *  is needed, or the last working day before. A choice made on a day off counts as made on the next working day.
 *  `milestones` hold those of the category: the loader has checked them. */
export function decide(
  input: DecideInput,
  milestones: readonly DatedMilestone[],
  calendar: WorkingDays,
  on: IsoDate,
): Decision {
  const { category, options, chosen } = input;
  const review = calendar.rules.reviewDays;
  const longest = longestLead(options);
  const needed = milestoneOf(milestones, category.neededAt);
  const onSite = calendar.onOrBefore(needed.date);
  const orderBy = calendar.add(onSite, -(longest?.leadDays ?? 0));
  const bounds: Bound[] = [
    {
      because: 'lead-time',
      milestone: needed,
      by: calendar.add(orderBy, -review),
      reason: `${leadInWords(longest, options.length)}: on site ${printDay(onSite)} for ${needed.name}`,
    },
  ];
  if (category.fixesEarly) {
    const fixed = milestoneOf(milestones, category.fixesEarly.milestone);
    bounds.push({
      because: 'fixes-early',
      milestone: fixed,
      by: calendar.add(calendar.onOrBefore(fixed.date), -review),
      reason: `${category.fixesEarly.why}: ${fixed.name} on ${printDay(fixed.date)}`,
    });
  }
  const { because, milestone, by, reason } = bounds.reduce((first, next) => (next.by < first.by ? next : first));
  const slack = calendar.between(calendar.onOrAfter(on), by);
  const state = stateOf(chosen, slack);
  const pushes = state === 'late' ? -slack : 0;
  return {
    by,
    milestone: milestone.id,
    milestoneName: milestone.name,
    because,
    reason: review === 0 ? reason : `${reason}, ${printWorkingDays(review)} for review`,
    orderBy,
    onSite,
    slack,
    state,
    pushes,
    ...(pushes > 0 && { pushesTo: calendar.add(calendar.onOrBefore(milestone.date), pushes) }),
  };
}

interface Bound {
  readonly because: Decision['because'];
  readonly milestone: DatedMilestone;
  readonly by: IsoDate;
  readonly reason: string;
}

function stateOf(chosen: boolean, slack: number): Decision['state'] {
  if (chosen) return 'decided';
  if (slack < 0) return 'late';
  return slack <= dueSoonDays ? 'due-soon' : 'open';
}

/** The option that takes longest to come; the first of the record's order when several do. */
function longestLead(options: readonly Option[]): Option | undefined {
  const [first, ...rest] = options;
  return first && rest.reduce((longest, next) => (next.leadDays > longest.leadDays ? next : longest), first);
}

function leadInWords(longest: Option | undefined, considered: number): string {
  if (!longest) return 'Nothing to order';
  if (longest.leadDays === 0)
    return considered > 1 ? 'All considered come from stock' : `${longest.name} comes from stock`;
  const among = considered > 1 ? `, the longest of ${considered} considered` : '';
  return `${longest.name} takes ${printWorkingDays(longest.leadDays)} to come${among}`;
}

function milestoneOf(milestones: readonly DatedMilestone[], id: string): DatedMilestone {
  const found = milestones.find((milestone) => milestone.id === id);
  if (!found) throw new Error(`milestone '${id}' is not dated; the loader lets no category name an unknown one`);
  return found;
}
