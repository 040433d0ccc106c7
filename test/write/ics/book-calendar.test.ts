import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import type { Book } from '../../../src/core/book/index.js';
import { bookCalendar } from '../../../src/write/ics/index.js';

const selection = (id: string, room: string, by: string) => ({
  id,
  room,
  category: 'ceiling-board',
  placeText: 'Ceiling',
  decision: { by, reason: 'Hung boards need backing', state: 'open' },
});

/** As much of a Book as the calendar looks at. */
const book = {
  house: { name: 'Larch Hollow', number: '2614' },
  on: '2026-03-02',
  categories: [{ slug: 'ceiling-board', name: 'Ceiling board' }],
  rooms: [
    { slug: 'great-room', name: 'Great room' },
    { slug: 'study', name: 'Study' },
  ],
  selections: [
    selection('study/ceiling-board/ceiling', 'study', '2026-08-13'),
    selection('great-room/ceiling-board/ceiling', 'great-room', '2026-07-30'),
  ],
  calendar: { milestones: [{ id: 'framing', name: 'Framing starts', date: '2026-05-04', basis: 'fixed' }] },
} as unknown as Book;

test('a Book becomes entries named by category, room and place, decisions first and by day', () => {
  const calendar = new ICAL.Component(ICAL.parse(bookCalendar(book, 2)) as unknown[]);
  const events = calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
  expect(events.map((event) => `${event.startDate.toString()} ${event.summary}`)).toEqual([
    '2026-07-30 Decide by: Ceiling board, Great room: Ceiling',
    '2026-08-13 Decide by: Ceiling board, Study: Ceiling',
    '2026-05-04 Framing starts',
  ]);
  expect(events.map((event) => event.sequence)).toEqual([2, 2, 2]);
});

test('without a sequence the day gives it: a later day updates, the same day gives the same file', () => {
  const sequence = (on: string) => Number(/SEQUENCE:(\d+)/.exec(bookCalendar({ ...book, on }))?.[1]);
  // 2000-01-01 and 26 years with 7 leap days later
  expect(sequence('2026-01-01')).toBe(26 * 365 + 7);
  expect(sequence('2026-03-03')).toBe(sequence('2026-03-02') + 1);
  expect(sequence('1999-12-31')).toBe(0);
  expect(bookCalendar(book)).toBe(bookCalendar(book));
});

test('the Book is left as it was', () => {
  const ids = book.selections.map(({ id }) => id);
  bookCalendar(book, 2);
  expect(book.selections.map(({ id }) => id)).toEqual(ids);
});
