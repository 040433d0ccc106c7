import { Temporal } from 'temporal-polyfill';
import type { Weekday } from '../model/index.js';
import { counted, notToldYet, type IsoDate } from '../../base/units/index.js';

const weekdays: readonly Weekday[] = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];

/** The day `days` calendar days later (earlier when negative), within the years 1 to 9999. */
export function plusDays(date: IsoDate, days: number): IsoDate {
  return Temporal.PlainDate.from(date).add({ days }).toString();
}

/** Calendar days from one day to another; negative when the other comes first. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'day' }).days;
}

export function yearOf(date: IsoDate): number {
  return Number(date.slice(0, 4));
}

export function weekdayOf(date: IsoDate): Weekday {
  return weekdays[Temporal.PlainDate.from(date).dayOfWeek - 1]!;
}

/** Every day of a year in order, with its weekday. */
export function daysOfYear(year: number): { readonly date: IsoDate; readonly weekday: Weekday }[] {
  const first = Temporal.PlainDate.from({ year, month: 1, day: 1 });
  const days: { date: IsoDate; weekday: Weekday }[] = [];
  for (let month = 1; month <= 12; month++) {
    const { daysInMonth } = first.with({ month });
    for (let day = 1; day <= daysInMonth; day++) {
      const weekday = weekdays[(first.dayOfWeek - 1 + days.length) % 7]!;
      days.push({ date: `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`, weekday });
    }
  }
  return days;
}

/** '1 working day', '5 working days'; the sign is left to the words around it. */
export function printWorkingDays(days: number): string {
  return counted(Math.abs(days), 'working day');
}

/** How long a product takes to come: 'from stock', '15 working days', 'not told yet'. */
export function printLeadTime(days: number | undefined): string {
  if (days === undefined) return notToldYet;
  return days === 0 ? 'from stock' : printWorkingDays(days);
}

function pad(value: number, width: number): string {
  return String(value).padStart(width, '0');
}
