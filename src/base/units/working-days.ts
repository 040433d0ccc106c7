import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { counted } from './words.js';

const perWeek = 5;

/** Reads `30 days` or `6 weeks` into working days; a week is five. */
export function parseDays(text: string): Reading<number> {
  const [, digits = '', unit = ''] = /^(\d+) ?([a-z]*(?: [a-z]+)*)$/iu.exec(plainText(text)) ?? [];
  if (digits === '')
    return unread(`'${text}' is not a number of days`, 'write working days or weeks, such as 30 days or 6 weeks');
  const count = Number(digits);
  if (count > 5000) return unread(`'${text}' is longer than any job`, 'see whether a digit went astray');
  if (/^(working )?days?$/iu.test(unit)) return read(count);
  if (/^weeks?$/iu.test(unit)) return read(count * perWeek);
  if (unit === '') return unread(`'${text}' has no unit`, `write ${digits} days or ${digits} weeks`);
  if (/^months?$/iu.test(unit))
    return unread(`'${text}' has no fixed number of working days`, `write weeks, such as ${count * 4} weeks`);
  return unread(`'${unit}' is neither days nor weeks`, `write ${digits} days or ${digits} weeks`);
}

/** Reads `180 days` or `26 weeks` into calendar days; a week is seven. */
export function parseCalendarDays(text: string): Reading<number> {
  const days = parseDays(text.replace(/\bcalendar days\b/u, 'days'));
  if (!days.ok || !/weeks?\b/iu.test(text)) return days;
  return read((days.value / perWeek) * 7);
}

/** `1 day`, `30 days`. */
export function printDays(days: number): string {
  return counted(days, 'day');
}
