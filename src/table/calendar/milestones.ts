import type { DatedMilestone } from '../../core/calendar/index.js';
import { col } from '../../sheet/index.js';
import { capital } from '../../base/units/index.js';
import { schedule } from '../schedule.js';

/** The milestones of the job by their day, and how each day comes about. */
export const milestones = schedule<DatedMilestone>({
  table: {
    id: 'milestones',
    caption: 'Milestones',
    named: 'milestone',
    rowId: ({ id }) => id,
    columns: [
      col.words('milestone', 'Milestone', ({ name }) => name, { width: 'words' }),
      col.day('day', 'Day', ({ date }) => date),
      col.words('basis', 'How it comes about', ({ basis }) => capital(basis), { width: 'long' }),
      col.prose('note', 'Note', ({ note }) => note, { under: 'basis' }),
    ],
  },
  rows: ({ book }) => [...book.calendar.milestones].sort((a, b) => (a.date === b.date ? 0 : a.date < b.date ? -1 : 1)),
});
