import type { Book } from '../../core/book/index.js';
import { daysBetween } from '../../core/calendar/index.js';
import { calendarFile, type CalendarDecision } from './calendar-file.js';
import { byText, type IsoDate } from '../../base/units/index.js';

/** The Book's decide-by days and milestones as an iCalendar file; decisions by day, then as in the Book. Without a
 *  `sequence`, it is the Book's day as a number: the file of a later day updates the entries of an earlier one, in any
 *  calendar program and with no memory of what was handed out. */
export function bookCalendar(book: Book, sequence = daySequence(book.on)): string {
  const categories = new Map(book.categories.map((category) => [category.slug, category.name]));
  const rooms = new Map(book.rooms.map((room) => [room.slug, room.name]));
  const decisions = book.selections.map(({ id, category, room, placeText, decision }): CalendarDecision => {
    const title = `${categories.get(category) ?? category}, ${rooms.get(room) ?? room}: ${placeText}`;
    return { id, title, by: decision.by, reason: decision.reason, state: decision.state };
  });
  return calendarFile({
    house: book.house,
    decisions: decisions.sort((a, b) => byText(a.by, b.by)),
    milestones: book.calendar.milestones,
    on: book.on,
    sequence,
  });
}

/** Days since 1 January 2000; 0 before. */
function daySequence(on: IsoDate): number {
  return Math.max(0, daysBetween('2000-01-01', on));
}
