import { byText, type Cents } from '../../base/units/index.js';
import type { HouseStanding } from './house-standing.js';

/** A house among many. */
export interface ListedHouse {
  /** Its folder, below the one that was looked through, with `/`. */
  readonly folder: string;
  /** Errors in its records: a house that has any stands nowhere. */
  readonly errors: number;
  readonly standing?: HouseStanding;
}

/** The houses of one currency, added up. */
export interface HousesTotal extends Pick<
  HouseStanding,
  'currency' | 'today' | 'open' | 'late' | 'dueSoon' | 'overAllowance' | 'cautions'
> {
  readonly houses: number;
}

/** What asks for somebody first stands first: errors, then late choices, then those due soon, then the next day. Amounts are not compared, since
 *  they may be of different currencies. */
export function mostUrgentFirst(houses: readonly ListedHouse[]): readonly ListedHouse[] {
  return houses.toSorted(
    (a, b) =>
      b.errors - a.errors ||
      more(a, b, ({ late }) => late) ||
      more(a, b, ({ dueSoon }) => dueSoon) ||
      byText(a.standing?.next ?? never, b.standing?.next ?? never) ||
      more(a, b, ({ changeOrders }) => changeOrders.length) ||
      byText(a.folder, b.folder),
  );
}

/** After every day. */
const never = '~';

function more(a: ListedHouse, b: ListedHouse, of: (standing: HouseStanding) => number): number {
  return (b.standing ? of(b.standing) : 0) - (a.standing ? of(a.standing) : 0);
}

/** Sums of the houses without errors, by currency in order of its code: amounts of two are never added up. */
export function housesTotals(houses: readonly ListedHouse[]): readonly HousesTotal[] {
  const totals = new Map<string, HousesTotal>();
  for (const { standing } of houses) {
    if (!standing) continue;
    const { currency } = standing;
    const before = totals.get(currency) ?? nothingOf(currency);
    totals.set(currency, {
      currency,
      houses: before.houses + 1,
      today: (before.today + standing.today) as Cents,
      open: before.open + standing.open,
      late: before.late + standing.late,
      dueSoon: before.dueSoon + standing.dueSoon,
      overAllowance: (before.overAllowance + standing.overAllowance) as Cents,
      cautions: before.cautions + standing.cautions,
    });
  }
  return [...totals.values()].sort((a, b) => byText(a.currency, b.currency));
}

function nothingOf(currency: string): HousesTotal {
  const none = 0 as Cents;
  return { currency, houses: 0, today: none, open: 0, late: 0, dueSoon: 0, overAllowance: none, cautions: 0 };
}
