import { describePush, describeSlack } from '../../calendar/index.js';
import { printDay } from '../../units/index.js';
import type { LookUp } from '../../book/index.js';

export interface DecisionSheet {
  readonly open: readonly DecisionRow[];
  readonly milestones: readonly {
    readonly name: string;
    readonly date: string;
    readonly basis: string;
    readonly note: string;
  }[];
  readonly review: string;
}

export interface DecisionRow {
  readonly by: string;
  readonly room: string;
  readonly place: string;
  readonly category: string;
  readonly reason: string;
  readonly orderBy: string;
  readonly onSite: string;
  /** '12 working days left', '3 working days late'. */
  readonly left: string;
  readonly state: 'open' | 'due-soon' | 'late' | 'decided';
}

/** Open decisions by the day they are due, then the milestones. */
export function makeDecisions(look: LookUp): DecisionSheet {
  const { selections, calendar } = look.book;
  const milestones = [...calendar.milestones].sort((a, b) => (a.date === b.date ? 0 : a.date < b.date ? -1 : 1));
  const open = selections.filter(({ state }) => state === 'open');
  // The Book's order is kept within a day.
  const sorted = [...open].sort((a, b) =>
    a.decision.by === b.decision.by ? 0 : a.decision.by < b.decision.by ? -1 : 1,
  );
  return {
    open: sorted.map(({ decision, room, placeText, category }) => ({
      by: printDay(decision.by),
      room: look.roomTitle(room),
      place: placeText,
      category: look.categoryName(category),
      reason: decision.pushes === 0 ? decision.reason : `${decision.reason}. ${describePush(decision)}`,
      orderBy: printDay(decision.orderBy),
      onSite: printDay(decision.onSite),
      left: describeSlack(decision.slack),
      state: decision.state,
    })),
    milestones: milestones.map(({ name, date, basis, note }) => ({
      name,
      date: printDay(date),
      basis,
      note: note ?? '',
    })),
    review: `${calendar.rules.reviewDays} working days`,
  };
}
