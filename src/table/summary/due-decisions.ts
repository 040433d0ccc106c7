import { houseSchedule } from '../schedule.js';
import { decisionRows, decisionTable, type DecisionRow } from '../money/joint-decisions.js';
import { dueNext } from './due.js';

/** Of all decisions what is due next. */
export const dueDecisions = houseSchedule<DecisionRow>(
  { ...decisionTable, id: 'due-decisions', caption: 'To decide next, and what it may move of today’s total' },
  (look) => {
    const due = dueNext(look);
    return due ? decisionRows(look).filter(({ by }) => by <= due.by) : [];
  },
);
