import {
  dateMilestones,
  decide,
  movedMilestones,
  workingDays,
  type DatedMilestone,
  type DayAfter,
  type Decided,
  type DecideInput,
  type Decision,
  type Earliest,
  type MovedMilestone,
  type Slips,
} from '../calendar/index.js';
import type { House } from '../model/index.js';
import { byText, numbering, remember, type IsoDate } from '../../base/units/index.js';

/** Works out when a choice must be made; the Book's day and calendar are already in it. */
export type Decider = (input: DecideInput) => Decision;

/** Decides in the house's working days, and tells of an open choice what the day after its last one comes to, and of a late
 *  one which milestones it moves if made on the Book's day. */
export function makeDecider(
  house: House,
  milestones: readonly DatedMilestone[],
  on: IsoDate,
  slips: Slips = new Map(),
): Decider {
  const calendar = workingDays(house.calendar);
  const today = calendar.onOrAfter(on);
  const end = lastMilestone(milestones);
  const known = new Map<string, readonly MovedMilestone[]>();
  const movesOf = (earliest: Earliest): readonly MovedMilestone[] => {
    const key = [...earliest].map((each) => each.join(' ')).join(',');
    const before = known.get(key);
    if (before) return before;
    const dated = dateMilestones(house, slips, earliest).value ?? [];
    const moved = movedMilestones(milestones, dated, calendar).toSorted((a, b) => byText(a.to, b.to));
    known.set(key, moved);
    return moved;
  };
  const dayAfter = (day: IsoDate, { decision: { pushed }, late }: Decided): DayAfter => {
    const moves = pushed ? movesOf(late) : [];
    const [first] = moves;
    const last = moves.find(({ id }) => id === end?.id);
    return { on: day, moved: moves.length, ...(first && { first }), ...(last && { last }) };
  };
  const one = (input: DecideInput): Decision => {
    const decided = decide(input, milestones, calendar, on);
    const { decision, late } = decided;
    if (decision.state === 'decided') return decision;
    const next = calendar.add(decision.by, 1);
    const day = next > today ? next : today;
    const then = day === today ? decided : decide(input, milestones, calendar, day);
    const { pushed } = decision;
    return {
      ...decision,
      ...(pushed && { moves: pushedFirst(movesOf(late), pushed.id) }),
      dayAfter: dayAfter(day, then),
    };
  };
  return decidedOnce(one);
}

/** Doors and walls have one option in many places: what bears on it alike is worked out once. */
function decidedOnce(decide: Decider): Decider {
  const numberOf = numbering();
  const kept = new WeakMap<DecideInput['category'], Map<string, Decision>>();
  return (input) => {
    const { category, options, chosen, keptOpen, needsDone } = input;
    if (keptOpen || needsDone) return decide(input);
    const known = remember(kept, category, () => new Map<string, Decision>());
    return remember(known, `${chosen} ${options.map(numberOf).join(' ')}`, () => decide(input));
  };
}

function pushedFirst(moves: readonly MovedMilestone[], pushed: string): readonly MovedMilestone[] {
  return [...moves.filter(({ id }) => id === pushed), ...moves.filter(({ id }) => id !== pushed)];
}

/** The last milestone of the job; of several on that day the last of the record. */
export function lastMilestone(milestones: readonly DatedMilestone[]): DatedMilestone | undefined {
  return milestones.reduce<DatedMilestone | undefined>(
    (last, next) => (last && last.date > next.date ? last : next),
    undefined,
  );
}
