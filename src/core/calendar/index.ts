/** The calendar. In: the house's milestones and working days, a category, the options considered, a day. Out: dated
 *  milestones, decide-by days with their reason. Absent: the clock; the day is always given. */
export { daysBetween, isDay, plusDays, printDay, printWeekday, printWorkingDays } from './day.js';
export { federalHolidays } from './federal-holidays.js';
export { workingDays } from './working-days.js';
export type { WorkingDays } from './working-days.js';
export { dateMilestones } from './date-milestones.js';
export type { Earliest, Slips } from './date-milestones.js';
export { decide, dueSoonDays } from './decide.js';
export type { DecideInput, Decided } from './decide.js';
export type { Bound, DatedMilestone, DayAfter, Decision, Lifted, MovedMilestone } from './decision.js';
export { arrivalOf } from './arrival.js';
export { describeDayAfter, describePush, describeSlack, describeState } from './describe-state.js';
export { movedMilestones, slipEffects } from './slip-effects.js';
export type { HouseDates, MovedDecision, SlipEffects } from './slip-effects.js';
