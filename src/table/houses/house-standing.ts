import { plusDays } from '../../core/calendar/index.js';
import { lastIssue, type Book } from '../../core/book/index.js';
import { isSigned } from '../../core/model/index.js';
import { byText, type Cents, type IsoDate } from '../../base/units/index.js';

/** How a house stands on the Book's day, in the figures by which many houses are looked over. Plain JSON; money in the smallest coins of its currency. */
export interface HouseStanding {
  readonly name: string;
  readonly number: string;
  /** Code of ISO 4217. */
  readonly currency: string;
  /** Contract sum with every choice made so far. */
  readonly today: Cents;
  /** Choices that are not made; those that are late are among them, and those due within `soonDays`, which are not late. */
  readonly open: number;
  readonly late: number;
  readonly dueSoon: number;
  /** The next day by which an open choice that is not late is due. */
  readonly next?: IsoDate;
  /** What is drawn over all allowances that are overrun, before mark-up; what others have left does not lessen it. */
  readonly overAllowance: Cents;
  /** Cautions that nobody accepted. */
  readonly cautions: number;
  /** Numbers of change orders that are proposed and not decided. */
  readonly changeOrders: readonly number[];
  /** The last issue that was not taken back, and whether owner and builder signed it; absent while nothing is issued. */
  readonly issue?: { readonly number: number; readonly isSigned: boolean };
}

/** What is due soon is due within so many days of the calendar. */
export const soonDays = 7;

/** What of a Book is looked over among many. */
export function houseStanding({
  house,
  money,
  on,
  selections,
  cautions,
  changeOrders,
  issues,
}: StandingBook): HouseStanding {
  const open = selections.filter(({ state }) => state === 'open').map(({ decision }) => decision);
  const ahead = open.filter(({ state }) => state !== 'late').map(({ by }) => by);
  const [next] = ahead.toSorted(byText);
  const soon = plusDays(on, soonDays);
  const issue = lastIssue({ issues });
  return {
    name: house.name,
    number: house.number,
    currency: house.currency,
    today: money.today,
    open: open.length,
    late: open.length - ahead.length,
    dueSoon: ahead.filter((by) => by <= soon).length,
    ...(next !== undefined && { next }),
    overAllowance: money.allowances.reduce((sum, { overage }) => sum + overage, 0) as Cents,
    cautions: cautions.filter(({ accepted }) => !accepted).length,
    changeOrders: changeOrders.filter(({ state }) => state === 'proposed').map(({ number }) => number),
    ...(issue && { issue: { number: issue.number, isSigned: isSigned(issue) } }),
  };
}

type StandingBook = Pick<Book, 'house' | 'money' | 'on' | 'selections' | 'cautions' | 'changeOrders' | 'issues'>;
