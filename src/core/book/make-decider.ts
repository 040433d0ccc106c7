import { dateMilestones, decide, movedMilestones, workingDays } from '../calendar/index.js';
import type { DatedMilestone, DecideInput, Decision, MovedMilestone, Slips } from '../calendar/index.js';
import type { House } from '../model/index.js';
import type { IsoDate } from '../../base/units/index.js';

/** Works out when a choice must be made; the Book's day and calendar are already in it. */
export type Decider = (input: DecideInput) => Decision;

/** Decides in the house's working days, and tells of a late choice which milestones it moves if made on the Book's day. */
export function makeDecider(
  house: House,
  milestones: readonly DatedMilestone[],
  on: IsoDate,
  slips: Slips = new Map(),
): Decider {
  const calendar = workingDays(house.calendar);
  const known = new Map<string, readonly MovedMilestone[]>();
  const moves = (milestone: string, days: number): readonly MovedMilestone[] => {
    const key = `${milestone} ${days}`;
    const before = known.get(key);
    if (before) return before;
    const later = new Map([...slips, [milestone, (slips.get(milestone) ?? 0) + days]]);
    const dated = dateMilestones(house, later).value ?? [];
    const moved = movedMilestones(milestones, dated, calendar);
    const first = (a: MovedMilestone) => (a.id === milestone ? '' : a.to);
    const sorted = [...moved].sort((a, b) => (first(a) === first(b) ? 0 : first(a) < first(b) ? -1 : 1));
    known.set(key, sorted);
    return sorted;
  };
  return (input) => {
    const decision = decide(input, milestones, calendar, on);
    if (decision.pushes === 0) return decision;
    return { ...decision, moves: moves(decision.milestone, decision.pushes) };
  };
}
