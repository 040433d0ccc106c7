import type { IsoDate } from '../../base/units/index.js';
import type { DatedMilestone, Decision, MovedMilestone } from './decision.js';
import type { WorkingDays } from './working-days.js';

/** A house's dates: a Book gives `{ milestones: book.calendar.milestones, decisions: book.selections }`. */
export interface HouseDates {
  readonly milestones: readonly DatedMilestone[];
  readonly decisions: readonly { readonly id: string; readonly decision: Decision }[];
}

export interface MovedDecision {
  readonly id: string;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly days: number;
  readonly stateFrom: Decision['state'];
  readonly stateTo: Decision['state'];
}

export interface SlipEffects {
  readonly milestones: readonly MovedMilestone[];
  readonly decisions: readonly MovedDecision[];
}

/** Which milestones and decide-by days move, and by how many working days. What did not move, or is on one side only,
 *  is left out; the order is that of `after`. */
export function slipEffects(before: HouseDates, after: HouseDates, calendar: WorkingDays): SlipEffects {
  const decisions = new Map(before.decisions.map(({ id, decision }) => [id, decision]));
  return {
    milestones: movedMilestones(before.milestones, after.milestones, calendar),
    decisions: after.decisions.flatMap(({ id, decision }) => {
      const was = decisions.get(id);
      if (!was || was.by === decision.by) return [];
      const days = calendar.between(was.by, decision.by);
      return [{ id, from: was.by, to: decision.by, days, stateFrom: was.state, stateTo: decision.state }];
    }),
  };
}

export function movedMilestones(
  before: readonly DatedMilestone[],
  after: readonly DatedMilestone[],
  calendar: WorkingDays,
): readonly MovedMilestone[] {
  const dates = new Map(before.map((milestone) => [milestone.id, milestone.date]));
  return after.flatMap(({ id, name, date: to }) => {
    const from = dates.get(id);
    return from === undefined || from === to ? [] : [{ id, name, from, to, days: calendar.between(from, to) }];
  });
}
