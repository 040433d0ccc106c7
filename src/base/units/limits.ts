import { unread, type Reading } from './reading.js';

/** No house has more of anything that is counted or measured: square feet, pieces, pounds. */
export const mostCounted = 1_000_000;

/** No house costs more, in whole units of any currency that it may be priced in. */
export const mostMoney = 1_000_000_000_000;

/** No slope of a record is steeper: over 89 degrees, a rise of so many times the run. */
export const steepest = 100;

/** Why a text is not read whose figure is beyond that; undefined where it is not. `text`: as it was written. */
export function beyondHouse<T>(text: string, size: number, most: number): Reading<T> | undefined {
  const what = most === mostMoney ? 'more money than any house costs' : 'more than any house has';
  return Math.abs(size) > most
    ? unread(`'${text}' is ${what}`, 'see whether a digit or a point went astray')
    : undefined;
}
