/** 5 U.S.C. 6103(a) and (b) worked out with `Date` in UTC: independent of the program and of its package. */
export interface StatuteHoliday {
  readonly name: string;
  /** The day the law names. */
  readonly legal: string;
  /** Saturday → Friday before, Sunday → Monday after. */
  readonly observed: string;
}

const [sunday, monday, thursday, saturday] = [0, 1, 4, 6];

export function statuteHolidays(year: number): StatuteHoliday[] {
  const on = (month: number, day: number): Date => new Date(Date.UTC(year, month - 1, day));
  const days: [string, Date][] = [
    ["New Year's Day, January 1", on(1, 1)],
    ['Birthday of Martin Luther King, Jr., the third Monday in January', nth(year, 1, monday!, 3)],
    ["Washington's Birthday, the third Monday in February", nth(year, 2, monday!, 3)],
    ['Memorial Day, the last Monday in May', last(year, 5, monday!)],
    ['Juneteenth National Independence Day, June 19', on(6, 19)],
    ['Independence Day, July 4', on(7, 4)],
    ['Labor Day, the first Monday in September', nth(year, 9, monday!, 1)],
    ['Columbus Day, the second Monday in October', nth(year, 10, monday!, 2)],
    ['Veterans Day, November 11', on(11, 11)],
    ['Thanksgiving Day, the fourth Thursday in November', nth(year, 11, thursday!, 4)],
    ['Christmas Day, December 25', on(12, 25)],
  ];
  return days.map(([name, date]) => ({ name, legal: iso(date), observed: iso(observe(date)) }));
}

export function iso(date: Date): string {
  return date.toISOString().slice(0, 10);
}

export function shift(date: Date, days: number): Date {
  return new Date(date.getTime() + days * 86_400_000);
}

function observe(date: Date): Date {
  if (date.getUTCDay() === saturday) return shift(date, -1);
  return date.getUTCDay() === sunday ? shift(date, 1) : date;
}

/** Walks the month day by day and counts. */
function nth(year: number, month: number, weekday: number, count: number): Date {
  const found = daysOfMonth(year, month).filter((date) => date.getUTCDay() === weekday);
  return found[count - 1]!;
}

function last(year: number, month: number, weekday: number): Date {
  return daysOfMonth(year, month)
    .filter((date) => date.getUTCDay() === weekday)
    .at(-1)!;
}

function daysOfMonth(year: number, month: number): Date[] {
  return [...Array(31).keys()]
    .map((index) => new Date(Date.UTC(year, month - 1, index + 1)))
    .filter((date) => date.getUTCMonth() === month - 1);
}
