import type { Decision } from '../calendar/index.js';
import type { Caution } from '../caution/index.js';
import type { HouseAlternative } from '../model/index.js';
import type { OnNet } from '../price/index.js';
import type { Cents, IsoDate } from '../../base/units/index.js';

/** A named set of choices, with the whole house computed for it. Where it chooses on an allowance, the other open choices on
 *  that allowance stand as they do while one option is priced: a set of one choice comes to the `houseTotal` of that option. */
export interface BookHouseAlternative extends Pick<HouseAlternative, 'slug' | 'name' | 'by' | 'on' | 'body'> {
  /** The contract's total with it. */
  readonly total: Cents;
  /** That less today's total: the changes of its lines, of allowances, elsewhere and on the net add up to it. */
  readonly change: Cents;
  readonly lines: readonly AlternativeLine[];
  /** Allowances that stand otherwise with it. */
  readonly allowances: readonly AlternativeAllowance[];
  /** What it moves at other places: whole packs and freight that are shared. */
  readonly elsewhere: Cents;
  readonly onNet: OnNet;
  /** Places that are still open with it. */
  readonly open: number;
  /** The earliest of the last days of what it changes; absent where it changes nothing. */
  readonly decideBy?: IsoDate;
  /** Working days from the Book's day to that day; negative when past. */
  readonly slack?: number;
  /** How many of its choices are late on the Book's day; by how many working days the job ends later when they are made on
   *  that day, and what that costs by the contract. */
  readonly late: number;
  readonly endMoves: number;
  readonly delayCost?: Cents;
  /** Pounds in place at its lines, with it and today; where a place is open, at its standard. */
  readonly pounds: number;
  readonly poundsToday: number;
  /** Cautions that are seen with it and not today, and ids of those of today that are not seen with it. */
  readonly cautions: readonly Caution[];
  readonly cautionsGone: readonly string[];
  readonly source: string;
}

export interface AlternativeLine {
  readonly selection: string;
  /** `<category>/<slug>`; absent for a deliberate none. */
  readonly option?: string;
  /** What is counted there today, and whether the place is open; open on an allowance, nothing is counted. */
  readonly today?: string;
  readonly isOpen: boolean;
  /** It is not chosen by the set: it is where the rest of an allowance stands meanwhile. */
  readonly isRest: boolean;
  /** Its share of the house's cost with it, and today. */
  readonly cost: Cents;
  readonly costToday?: Cents;
  /** Change of the contract beside allowances, less today's. */
  readonly change: Cents;
  /** When it must be decided; absent where it is the choice that is made already, and for a deliberate none. */
  readonly decision?: Decision;
  /** What the supplier keeps of what is ordered there; not in the total. */
  readonly restocking?: Cents;
}

export interface AlternativeAllowance {
  readonly id: string;
  readonly committed: Cents;
  /** Below 0 what is over. */
  readonly left: Cents;
  /** Change of the contract by it, less today's. */
  readonly change: Cents;
}
