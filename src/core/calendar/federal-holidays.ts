import { allForYear } from '@18f/us-federal-holidays';
import type { Weekday } from '../model/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { yearOf } from './day.js';

/** Holidays fall on these days since the Uniform Monday Holiday Act took effect. */
const firstYear = 1971;

/** US federal holidays kept in a year: day → name, by 5 U.S.C. 6103(a).
 *
 *  Assumed: *observed* days. A holiday on a Saturday is kept the Friday before, one on a Sunday the Monday after, where
 *  the house's week rests on that day; a house that works Saturdays keeps a Saturday holiday on the Saturday. For
 *  federal offices this shift is a pay rule (6103(b)), not part of a building contract: where the contract says
 *  otherwise, the house record takes `holidays: none` and lists its own closed days.
 *
 *  New Year's Day of the next year is in the list when it is kept on 31 December. Years before 1971 have none. */
export function federalHolidays(year: number, weekend: readonly Weekday[]): ReadonlyMap<IsoDate, string> {
  if (year < firstYear) return new Map();
  const shift = {
    shiftSaturdayHolidays: weekend.includes('saturday'),
    shiftSundayHolidays: weekend.includes('sunday'),
  };
  const kept = [year, year + 1]
    .flatMap((each) => allForYear(each, shift))
    .filter((holiday) => yearOf(holiday.dateString) === year);
  return new Map(kept.map((holiday) => [holiday.dateString, holiday.name]));
}
