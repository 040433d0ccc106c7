import type { IsoDate } from '../../base/units/index.js';

export interface DatedMilestone {
  readonly id: string;
  readonly name: string;
  readonly date: IsoDate;
  /** How the date came about: 'fixed', '15 working days after Framing', with ', moved 3 working days later' if it slips. */
  readonly basis: string;
  readonly note?: string;
}

/** When a selection must be decided, and why that day. */
export interface Decision {
  /** Last day to decide without moving a milestone. */
  readonly by: IsoDate;
  /** Id and name of the milestone that sets it. */
  readonly milestone: string;
  readonly milestoneName: string;
  readonly because: 'fixes-early' | 'lead-time';
  /** In words: 'Door height fixes the rough openings: Framing starts on 4 May 2026, 5 working days for review'. */
  readonly reason: string;
  /** Last day to place the order. */
  readonly orderBy: IsoDate;
  readonly onSite: IsoDate;
  /** Working days from the Book's day (the next working day, if it is a day off) to `by`; negative when past. */
  readonly slack: number;
  /** Of the selection on the Book's day. */
  readonly state: 'decided' | 'open' | 'due-soon' | 'late';
  /** Working days a late decision pushes its milestone by, if decided on the Book's day; 0 unless late. */
  readonly pushes: number;
  /** The milestone's day then; present when late. */
  readonly pushesTo?: IsoDate;
  /** Every milestone that moves then, in order of their days, the pushed one first; present when late. */
  readonly moves?: readonly MovedMilestone[];
}

/** `days`: working days later, negative when earlier; 0 when only days off lie between. */
export interface MovedMilestone {
  readonly id: string;
  readonly name: string;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly days: number;
}
