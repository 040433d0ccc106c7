import { Temporal } from 'temporal-polyfill';
import { locale } from './locale.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import type { IsoDate } from './quantity.js';

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** Reads a day of the calendar as `2026-05-04`. Other orders are refused: 5/4 is May in one country and April in the next. */
export function parseDay(text: string): Reading<IsoDate> {
  const written = plainText(text);
  const [, year = '', month = '', day = ''] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/u.exec(written) ?? [];
  if (year === '') return unread(`'${text}' is not a day`, 'write year-month-day, such as 2026-05-04');
  if (month.length < 2 || day.length < 2) {
    return unread(
      `'${text}' is not a day in full`,
      `did you mean ${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}?`,
    );
  }
  const name = months[Number(month) - 1];
  if (name === undefined)
    return unread(`'${text}' has no month ${Number(month)}`, 'write year-month-day, such as 2026-05-04');
  const days = Temporal.PlainYearMonth.from({ year: Number(year), month: Number(month) }).daysInMonth;
  if (Number(day) < 1 || Number(day) > days)
    return unread(`'${text}' is no day: ${name} ${Number(year)} has ${days} days`, 'check the month and the day');
  return read(written);
}

/** `4 May 2026`: no order of numbers to mistake; or in the form of the house's language, such as `May 4, 2026`. */
export function printDay(day: IsoDate): string {
  const { language } = locale();
  if (language !== undefined && /^\d{4}-\d\d-\d\d$/u.test(day))
    return Temporal.PlainDate.from(day).toLocaleString(language, { dateStyle: 'long' });
  const [year = '', month = '', date = ''] = day.split('-');
  return `${Number(date)} ${months[Number(month) - 1] ?? month} ${year}`;
}
