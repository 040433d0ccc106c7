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
  if (year === '') return unread(`'${text}' is not a day`, otherwise(written));
  if (month.length < 2 || day.length < 2) {
    return unread(
      `'${text}' is not a day in full`,
      `did you mean ${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}?`,
    );
  }
  const name = months[Number(month) - 1];
  if (name === undefined) return unread(`'${text}' has no month ${Number(month)}`, asRecordsDo);
  const days = Temporal.PlainYearMonth.from({ year: Number(year), month: Number(month) }).daysInMonth;
  if (Number(day) < 1 || Number(day) > days)
    return unread(`'${text}' is no day: ${name} ${Number(year)} has ${days} days`, 'check the month and the day');
  if (Number(year) < firstYear || Number(year) > lastYear)
    return unread(`'${text}' is no day of a job`, `years run from ${firstYear} to ${lastYear}`);
  return read(written);
}

/** What is counted on from a day must be a day still: no house is built outside of these. */
const [firstYear, lastYear] = [1900, 2199];

const asRecordsDo = 'write year-month-day, such as 2026-05-04';

/** What a day in another form was meant to be, where it can be told: both days where it cannot. */
function otherwise(written: string): string {
  const meant = [...new Set(daysMeant(written))].filter((day) => parseDay(day).ok);
  if (meant.length === 0) return asRecordsDo;
  return `did you mean ${meant.join(' or ')}? Days are written year-month-day`;
}

function daysMeant(written: string): readonly string[] {
  const day = (year = '', month = '', date = ''): string =>
    `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
  const ahead = /^(\d{4})[./](\d{1,2})[./](\d{1,2})\.?$|^(\d{4})(\d\d)(\d\d)$|^(\d{4})-(\d\d)-(\d\d)[T ]/u.exec(
    written,
  );
  if (ahead) return [day(...ahead.slice(1).filter((part) => part !== undefined))];
  const [, first, sign, second, last] = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/u.exec(written) ?? [];
  // With points the day comes first everywhere; otherwise the month does in some countries.
  if (sign === '.') return [day(last, second, first)];
  if (sign !== undefined) return [day(last, first, second), day(last, second, first)];
  const [, date, dateName = '', dateYear] = /^(\d{1,2})\.? ([A-Za-z]{3,9})\.?,? (\d{4})$/u.exec(written) ?? [];
  const [, name = dateName, nameDate = date, nameYear = dateYear] =
    /^([A-Za-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/u.exec(written) ?? [];
  const month = months.findIndex((one) => name !== '' && one.toLowerCase().startsWith(name.toLowerCase()));
  return month < 0 ? [] : [day(nameYear, String(month + 1), nameDate)];
}

/** `4 May 2026`: no order of numbers to mistake; or in the form of the house's language, such as `May 4, 2026`. */
export function printDay(day: IsoDate): string {
  const [, , date = ''] = day.split('-');
  return inLanguage(day, { dateStyle: 'long' }) ?? `${Number(date)} ${printMonth(day)}`;
}

/** `May 2026`, the month of a day, or as the house's language has it. */
export function printMonth(day: IsoDate): string {
  const [year = ''] = day.split('-');
  return inLanguage(day, { month: 'long', year: 'numeric' }) ?? `${monthOf(day)} ${year}`;
}

/** `May`, where there is little room; in `Jan 2027` the year stands with its January. */
export function printShortMonth(day: IsoDate): string {
  const [year = '', month] = day.split('-');
  const short = monthOf(day).slice(0, 3);
  if (month !== '01') return inLanguage(day, { month: 'short' }) ?? short;
  return inLanguage(day, { month: 'short', year: 'numeric' }) ?? `${short} ${year}`;
}

function inLanguage(day: IsoDate, form: Intl.DateTimeFormatOptions): string | undefined {
  const { language } = locale();
  if (language === undefined || !/^\d{4}-\d\d-\d\d$/u.test(day)) return undefined;
  return Temporal.PlainDate.from(day).toLocaleString(language, form);
}

function monthOf(day: IsoDate): string {
  const [, month = ''] = day.split('-');
  return months[Number(month) - 1] ?? month;
}
