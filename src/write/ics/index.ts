/** In: a Book, or its decide-by days and milestones. Out: one iCalendar file as text with CRLF. Absent: the clock. */
export { bookCalendar } from './book-calendar.js';
export { calendarFile, type CalendarDecision, type CalendarInput } from './calendar-file.js';
