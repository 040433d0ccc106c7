import type { IsoDate } from '../../base/units/index.js';

export interface DatedMilestone {
  readonly id: string;
  readonly name: string;
  readonly date: IsoDate;
  /** It was reached on that day. */
  readonly done?: true;
  /** Its day by the plan, where it was reached on another. */
  readonly planned?: IsoDate;
  /** Working days by which it may come later without moving the last day of the job: 0 drives it. Absent once done. */
  readonly float?: number;
  /** How the date came about: 'fixed', '15 working days after Framing', with ', moved 3 working days later' if it slips. */
  readonly basis: string;
  readonly note?: string;
}

/** One thing that sets a last day to decide. */
export interface Bound {
  /** Last day by it. */
  readonly by: IsoDate;
  readonly because: 'lead-time' | 'fixes-early' | 'need';
  /** Id and name of the milestone that sets it. */
  readonly milestone: string;
  readonly milestoneName: string;
  /** In words, without the review. */
  readonly reason: string;
  /** The milestone is done: it waits for nothing any more. */
  readonly done?: true;
}

/** Something that no longer bears on a choice: what it was, its milestone's name, and what was done. */
export interface Lifted {
  readonly what: string;
  readonly milestone: string;
  readonly by: string;
}

/** What it comes to when an open choice is made one working day too late. */
export interface DayAfter {
  /** The working day after the last one; the Book's day where that is past. */
  readonly on: IsoDate;
  /** How many milestones move, and the first of them by day. */
  readonly moved: number;
  readonly first?: MovedMilestone;
  /** The last milestone of the job, where it moves. */
  readonly last?: MovedMilestone;
}

/** When a selection must be decided, and why that day. */
export interface Decision {
  /** Last day to decide without moving a milestone. */
  readonly by: IsoDate;
  /** Id and name of the milestone that sets it. */
  readonly milestone: string;
  readonly milestoneName: string;
  readonly because: Bound['because'];
  /** In words: 'Door height fixes the rough openings: Framing starts on 4 May 2026, 5 working days for review'. */
  readonly reason: string;
  /** All that bears on it, the earliest first: that one sets `by`. */
  readonly bounds: readonly Bound[];
  /** What would bear on it, had nobody kept it open or seen to it. */
  readonly lifted?: readonly Lifted[];
  /** Last day to place the order. */
  readonly orderBy: IsoDate;
  /** The day it leaves the supplier then, where the time on the road is known. */
  readonly ships?: IsoDate;
  readonly onSite: IsoDate;
  /** Working days that it comes too late for its milestone even so, because it cannot be measured earlier. */
  readonly waits?: number;
  /** Working days from the Book's day (the next working day, if it is a day off) to `by`; negative when past. */
  readonly slack: number;
  /** Of the selection on the Book's day. */
  readonly state: 'decided' | 'open' | 'due-soon' | 'late';
  /** Working days a late decision pushes a milestone by, if decided on the Book's day; 0 unless late, and where all it is
   *  late for is done. */
  readonly pushes: number;
  /** The milestone that is pushed, and its day then; present when one is. */
  readonly pushed?: { readonly id: string; readonly name: string };
  readonly pushesTo?: IsoDate;
  /** Every milestone that moves then, in order of their days, the pushed one first; present when one is pushed. */
  readonly moves?: readonly MovedMilestone[];
  /** Present while it is open. */
  readonly dayAfter?: DayAfter;
}

/** `days`: working days later, negative when earlier; 0 when only days off lie between. */
export interface MovedMilestone {
  readonly id: string;
  readonly name: string;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly days: number;
}
