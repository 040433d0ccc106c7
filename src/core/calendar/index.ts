/** The calendar. In: the house's milestones and working days, a category, the options considered, a day. Out: dated
 *  milestones, decide-by days with their reason. Absent: the clock; the day is always given. */
export { daysBetween, plusDays, printLeadTime, printWorkingDays } from './day.js';
export { federalHolidays } from './federal-holidays.js';
export { workingDays } from './working-days.js';
export { dateMilestones, type Earliest, type Slips } from './date-milestones.js';
export { decide, dueSoonDays, type Decided, type DecideInput } from './decide.js';
export type { Bound, DatedMilestone, DayAfter, Decision, Lifted, MovedMilestone } from './decision.js';
export { describeDayAfter, describePush, describeSlack } from './describe-state.js';
export { movedMilestones, slipEffects, type HouseDates, type MovedDecision, type SlipEffects } from './slip-effects.js';
