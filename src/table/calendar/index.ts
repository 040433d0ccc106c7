export { calendarBlocks, criticalWords, dayCostWords, dayRules, decisionSheet } from './calendar-sheet.js';
export { decisions, openSinceWords } from './decisions.js';
export { boundsHere, lastDays, lastDaysHere } from './last-days.js';
export { milestones } from './milestones.js';
export { movedDecisions, movedMilestones } from './moved.js';
