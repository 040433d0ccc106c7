import type { Category, Option } from '../model/index.js';
import type { IsoDate } from '../../base/units/index.js';
import type { DatedMilestone } from './decision.js';
import { milestoneOf } from './milestone-of.js';
import type { WorkingDays } from './working-days.js';

/** When a product is ordered and comes, if it is decided in time. */
export interface Arrival {
  /** Absent when nothing is to be ordered. */
  readonly option?: Option;
  /** The milestone at which it must be on site. */
  readonly needed: DatedMilestone;
  /** The milestone after which it is measured, where there is one. */
  readonly measured?: DatedMilestone;
  readonly orderBy: IsoDate;
  readonly ships?: IsoDate;
  readonly onSite: IsoDate;
  /** Working days that it comes after the milestone that needs it, because it cannot be measured earlier. */
  readonly waits: number;
}

/** On site on the day of the milestone that needs it, or the last working day before; ordered its lead time before, and not
 *  before it can be measured. */
export function arrivalOf(
  category: Category,
  option: Option | undefined,
  milestones: readonly DatedMilestone[],
  calendar: WorkingDays,
): Arrival {
  const needed = milestoneOf(milestones, option?.neededAt ?? category.neededAt);
  const neededOn = calendar.onOrBefore(needed.date);
  if (!option) return { needed, orderBy: neededOn, onSite: neededOn, waits: 0 };
  // Unknown is not from stock: whoever prints the day says that it leaves the lead time out.
  const lead = option.leadDays ?? 0;
  const free = calendar.add(neededOn, -lead);
  const after = option.measuredAfter ?? category.measuredAfter;
  const measured = after === undefined ? undefined : milestoneOf(milestones, after);
  const earliest = measured && calendar.onOrAfter(measured.date);
  const isFree = earliest === undefined || earliest <= free;
  const orderBy = isFree ? free : earliest;
  const onSite = isFree ? neededOn : calendar.add(orderBy, lead);
  return {
    option,
    needed,
    ...(measured && { measured }),
    orderBy,
    ...(option.transitDays !== undefined && { ships: calendar.add(onSite, -option.transitDays) }),
    onSite,
    waits: isFree ? 0 : calendar.between(neededOn, onSite),
  };
}
