import type { IsoDate } from '../units/index.js';
import type { DatedMilestone, Decision } from './decision.js';
import type { WorkingDays } from './working-days.js';

/** A house's dates: a Book gives `{ milestones: book.calendar.milestones, decisions: book.selections }`. */
export interface HouseDates {
  readonly milestones: readonly DatedMilestone[];
  readonly decisions: readonly { readonly id: string; readonly decision: Decision }[];
}

/** `days`: working days later, negative when earlier; 0 when only days off lie between. */
export interface MovedMilestone {
  readonly id: string;
  readonly name: string;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly days: number;
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
  const dates = new Map(before.milestones.map((milestone) => [milestone.id, milestone.date]));
  const decisions = new Map(before.decisions.map(({ id, decision }) => [id, decision]));
  return {
    milestones: after.milestones.flatMap(({ id, name, date: to }) => {
      const from = dates.get(id);
      return from === undefined || from === to ? [] : [{ id, name, from, to, days: calendar.between(from, to) }];
    }),
    decisions: after.decisions.flatMap(({ id, decision }) => {
      const was = decisions.get(id);
      if (!was || was.by === decision.by) return [];
      const days = calendar.between(was.by, decision.by);
      return [{ id, from: was.by, to: decision.by, days, stateFrom: was.state, stateTo: decision.state }];
    }),
  };
}
