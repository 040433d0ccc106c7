import type { HouseCalendar } from '../model/index.js';
import { capital, type IsoDate } from '../../base/units/index.js';
import { daysOfYear, weekdayOf, yearOf } from './day.js';
import { federalHolidays } from './federal-holidays.js';

/** Counting in the working days of one house. Days are `YYYY-MM-DD` and must exist. */
export interface WorkingDays {
  readonly rules: HouseCalendar;
  isWorking(date: IsoDate): boolean;
  /** Why nobody works that day: a closed period's reason, a holiday's name, or the weekday. Absent on a working day. */
  whyOff(date: IsoDate): string | undefined;
  /** The n-th working day after `date`, or before it when `days` is negative; `date` itself for 0, working or not.
   *  Looks no further than 100 years: then it gives the last day looked at, fewer working days away (see `between`). */
  add(date: IsoDate, days: number): IsoDate;
  /** Signed count, so that `add(from, between(from, to))` is `to` for every working day `to`: the working days after
   *  `from` up to and with `to`, or, when `to` comes first, those from `to` up to but not with `from`. */
  between(from: IsoDate, to: IsoDate): number;
  /** The day itself when it is a working day, else the nearest one before or after. */
  onOrBefore(date: IsoDate): IsoDate;
  onOrAfter(date: IsoDate): IsoDate;
}

const farthest = 100;

const known = new WeakMap<HouseCalendar, WorkingDays>();

/** The working days of a house: every day but its weekend, its holidays and its closed periods (both ends closed).
 *  Years are worked out once each for the same rules, when first asked for. */
export function workingDays(rules: HouseCalendar): WorkingDays {
  const before = known.get(rules);
  if (before) return before;
  const made = makeWorkingDays(rules);
  known.set(rules, made);
  return made;
}

function makeWorkingDays(rules: HouseCalendar): WorkingDays {
  const years = new Map<number, readonly IsoDate[]>();
  const holidays = new Map<number, ReadonlyMap<IsoDate, string>>();

  const holidaysOf = (year: number): ReadonlyMap<IsoDate, string> =>
    remember(holidays, year, () =>
      rules.holidays === 'none' ? new Map<IsoDate, string>() : federalHolidays(year, rules.weekend),
    );

  /** Working days of a year, in order. */
  const daysOf = (year: number): readonly IsoDate[] =>
    remember(years, year, () => {
      const kept = holidaysOf(year);
      return daysOfYear(year)
        .filter(({ date, weekday }) => !rules.weekend.includes(weekday) && !kept.has(date) && !closedOn(rules, date))
        .map(({ date }) => date);
    });

  const isWorking = (date: IsoDate): boolean => {
    const days = daysOf(yearOf(date));
    return days[indexFrom(days, date)] === date;
  };

  const add = (date: IsoDate, days: number): IsoDate => {
    if (days === 0) return date;
    const start = yearOf(date);
    const own = daysOf(start);
    const first = indexFrom(own, date);
    const after = own[first] === date ? first + 1 : first;
    let index = days > 0 ? after + days - 1 : first + days;
    let year = start;
    while (index >= daysOf(year).length) {
      index -= daysOf(year).length;
      year += 1;
      if (year > start + farthest || year > 9999) return `${String(year - 1).padStart(4, '0')}-12-31`;
    }
    while (index < 0) {
      year -= 1;
      if (year < start - farthest || year < 1) return `${String(year + 1).padStart(4, '0')}-01-01`;
      index += daysOf(year).length;
    }
    return daysOf(year)[index] ?? date;
  };

  /** Working days from `from` up to but not with `to`, for `from` ≤ `to`. */
  const countFrom = (from: IsoDate, to: IsoDate): number => {
    let count = indexFrom(daysOf(yearOf(to)), to) - indexFrom(daysOf(yearOf(from)), from);
    for (let year = yearOf(from); year < yearOf(to); year++) count += daysOf(year).length;
    return count;
  };

  const between = (from: IsoDate, to: IsoDate): number => {
    if (from === to) return 0;
    if (from > to) return -countFrom(to, from);
    return countFrom(from, to) - (isWorking(from) ? 1 : 0) + (isWorking(to) ? 1 : 0);
  };

  return {
    rules,
    isWorking,
    whyOff: (date) =>
      closedOn(rules, date)?.why ??
      holidaysOf(yearOf(date)).get(date) ??
      (rules.weekend.includes(weekdayOf(date)) ? capital(weekdayOf(date)) : undefined),
    add,
    between,
    onOrBefore: (date) => (isWorking(date) ? date : add(date, -1)),
    onOrAfter: (date) => (isWorking(date) ? date : add(date, 1)),
  };
}

function closedOn(rules: HouseCalendar, date: IsoDate): HouseCalendar['closed'][number] | undefined {
  return rules.closed.find((period) => period.from <= date && date <= period.to);
}

/** Index of the first day that is `date` or later; the length when all are earlier. ISO text sorts as days do. */
function indexFrom(days: readonly IsoDate[], date: IsoDate): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (days[middle]! < date) low = middle + 1;
    else high = middle;
  }
  return low;
}

function remember<Key, Value>(known: Map<Key, Value>, key: Key, make: () => Value): Value {
  const before = known.get(key);
  if (before !== undefined) return before;
  const made = make();
  known.set(key, made);
  return made;
}
