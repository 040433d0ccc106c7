import { printWorkingDays, type DatedMilestone } from '../../core/calendar/index.js';
import { col } from '../../sheet/index.js';
import { byText, capital } from '../../base/units/index.js';
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
      col.words('float', 'To spare', spareWords, { width: 'short' }),
      col.words('basis', 'How it comes about', ({ basis }) => capital(basis), { width: 'long' }),
      col.prose('note', 'Note', ({ note }) => note, { under: 'basis' }),
    ],
  },
  rows: ({ book }) => [...book.calendar.milestones].sort((a, b) => byText(a.date, b.date)),
});

/** How much later it can come without moving the last day of the job. */
function spareWords({ done, float }: DatedMilestone): string {
  if (done) return 'done';
  if (float === undefined) return '';
  return float === 0 ? 'none' : printWorkingDays(float);
}
