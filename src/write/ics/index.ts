/** In: a Book, or its decide-by days and milestones. Out: one iCalendar file as text with CRLF. Absent: the clock. */
export { bookCalendar } from './book-calendar.js';
export { calendarFile } from './calendar-file.js';
export type { CalendarDecision, CalendarInput } from './calendar-file.js';
