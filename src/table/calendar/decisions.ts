import { byText, printDay } from '../../base/units/index.js';
import type { BookSelection, LookUp } from '../../core/book/index.js';
import { describePush, describeSlack, type Decision } from '../../core/calendar/index.js';
import { col } from '../../sheet/index.js';
import { schedule } from '../schedule.js';
import { saidOnce } from '../places-of.js';

interface Open {
  readonly id: string;
  readonly room: string;
  readonly category: string;
  readonly trade: string;
  readonly placeText: string;
  readonly decision: Decision;
  readonly openSince?: BookSelection['openSince'];
}

/** `open since issue 1, 17 February 2026`. */
export function openSinceWords(since: BookSelection['openSince']): string | undefined {
  return since && `open since issue ${since.issue}, ${printDay(since.date)}`;
}

/** What is still open, by the last day to decide without moving the work. */
export const decisions = schedule<Open>({
  table: {
    id: 'decisions',
    caption: 'What is still open, by the last day to decide',
    named: 'place',
    rowId: ({ id }) => id,
    columns: [
      col.day('decideBy', 'Decide by', ({ decision }) => decision.by),
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short' }),
      col.words(
        'place',
        'Place',
        ({ id, placeText }) => ({ text: saidOnce(placeText), place: { to: 'selection', id } }),
        {
          width: 'short',
        },
      ),
      col.words('category', 'What', ({ category }, names) => names.category(category), { under: 'place' }),
      col.words('why', 'Why this day', ({ decision }) => decision.reason, { width: 'long', not: ['text'] }),
      col.words('moves', 'What it moves', ({ decision }) => describePush(decision), { under: 'why', width: 'words' }),
      col.day('orderBy', 'Order by', ({ decision }) => decision.orderBy),
      col.day('onSite', 'On site', ({ decision }) => decision.onSite, { not: ['html', 'pdf', 'text'] }),
      col.status('status', 'Status', ({ decision: { state } }) => (state === 'decided' ? 'chosen' : state), {
        width: 'short',
      }),
      col.words('left', 'Days', ({ decision }) => describeSlack(decision.slack), { under: 'status' }),
      col.words('openSince', 'Open since', ({ openSince }) => openSinceWords(openSince), { under: 'status' }),
    ],
  },
  rows: openByDay,
  trades: ({ trade }) => [trade],
});

/** The Book's order is kept within a day. */
function openByDay({ book }: LookUp): readonly Open[] {
  return book.selections
    .filter(({ state }) => state === 'open')
    .map(({ id, room, category, trade, placeText, decision, openSince }) => ({
      id,
      room,
      category,
      trade,
      placeText,
      decision,
      ...(openSince && { openSince }),
    }))
    .sort((a, b) => byText(a.decision.by, b.decision.by));
}
