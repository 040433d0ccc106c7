import type { House, Milestone } from '../model/index.js';
import { didYouMean, problemAt, type Outcome, type Problem, type ProblemCode } from '../../base/problem/index.js';
import { printDay, type IsoDate } from '../../base/units/index.js';
import { printWorkingDays } from './day.js';
import type { DatedMilestone } from './decision.js';
import { workingDays, type WorkingDays } from './working-days.js';
import { floatOf } from './float.js';

/** Milestone id → working days that it comes later (negative: earlier) than recorded. */
export type Slips = ReadonlyMap<string, number>;

/** Milestone id → first day on which it can be, whatever the record says. */
export type Earliest = ReadonlyMap<string, IsoDate>;

/** Dates every milestone of the house, in the record's order. A slip moves its milestone and, through the chain, all
 *  that come after it; nothing moves one that is done, and what follows it counts from that day. The records were checked: each milestone has a day or follows one that leads to a day. There is no
 *  value when its working days do not fit into 100 years (`milestone-out-of-reach`), or when a slip names an unknown
 *  milestone (`slip-unknown`). A fixed date on a day off is a warning (`milestone-day-off`), and so is a slip of a milestone
 *  that is done (`slip-done`). */
export function dateMilestones(
  house: House,
  slips: Slips = new Map(),
  earliest: Earliest = new Map(),
): Outcome<readonly DatedMilestone[]> {
  const chart: Chart = {
    house,
    slips,
    earliest,
    calendar: workingDays(house.calendar),
    byId: new Map([...house.milestones].reverse().map((milestone) => [milestone.id, milestone])),
    dates: new Map(),
    planned: new Map(),
    stuck: new Set(),
    problems: [],
  };
  for (const id of slips.keys()) {
    const milestone = chart.byId.get(id);
    if (!milestone) chart.problems.push(unknownSlip(house, id));
    else if (milestone.doneOn !== undefined) reportDone(chart, milestone, milestone.doneOn);
  }
  for (const milestone of house.milestones) dateChain(chart, milestone);
  if (chart.problems.some((problem) => problem.severity === 'error')) return { problems: chart.problems };
  const floats = floatOf(house.milestones, chart.dates, chart.calendar);
  return { value: house.milestones.map((milestone) => describe(chart, milestone, floats)), problems: chart.problems };
}

interface Chart {
  readonly house: House;
  readonly slips: Slips;
  readonly earliest: Earliest;
  readonly calendar: WorkingDays;
  readonly byId: ReadonlyMap<string, Milestone>;
  readonly dates: Map<string, IsoDate>;
  /** Where a milestone that is done would stand by the plan. */
  readonly planned: Map<string, IsoDate>;
  /** Ids that cannot be dated; the cause is reported once. */
  readonly stuck: Set<string>;
  readonly problems: Problem[];
}

/** Follows `after` up to a milestone that has a date, then dates the chain on the way back. */
function dateChain(chart: Chart, milestone: Milestone): void {
  const chain: Milestone[] = [];
  let current: Milestone | undefined = milestone;
  while (current && !chart.dates.has(current.id) && !chart.stuck.has(current.id)) {
    chain.push(current);
    current = current.when.by === 'after' ? chart.byId.get(current.when.after) : undefined;
  }
  for (const each of chain.reverse()) dateOne(chart, each);
}

function dateOne(chart: Chart, milestone: Milestone): void {
  if (milestone.doneOn !== undefined) {
    const planned = plannedDay(chart, milestone);
    if (planned !== undefined) chart.planned.set(milestone.id, planned);
    chart.dates.set(milestone.id, milestone.doneOn);
    return;
  }
  dateOpen(chart, milestone);
}

/** By the record alone; absent when it cannot be dated, which a milestone that is done need not be. */
function plannedDay(chart: Chart, { when }: Milestone): IsoDate | undefined {
  if (when.by === 'date') return when.date;
  const start = chart.dates.get(when.after);
  return start === undefined ? undefined : chart.calendar.add(start, when.days);
}

function dateOpen(chart: Chart, milestone: Milestone): void {
  if (chart.stuck.has(milestone.id)) return;
  const start = startOf(chart, milestone);
  if (start === undefined) {
    chart.stuck.add(milestone.id);
    return;
  }
  const steps = [milestone.when.by === 'after' ? milestone.when.days : 0, chart.slips.get(milestone.id) ?? 0];
  let date = start;
  for (const days of steps.filter((step) => step !== 0)) {
    const moved = chart.calendar.add(date, days);
    if (chart.calendar.between(date, moved) !== days) return reportOutOfReach(chart, milestone);
    date = moved;
  }
  const earliest = chart.earliest.get(milestone.id) ?? date;
  chart.dates.set(milestone.id, earliest > date ? earliest : date);
}

/** The day that a milestone's own days are counted from. */
function startOf(chart: Chart, milestone: Milestone): IsoDate | undefined {
  if (milestone.when.by === 'after') return chart.dates.get(milestone.when.after);
  const { date } = milestone.when;
  const why = chart.calendar.whyOff(date);
  if (why !== undefined) {
    const message = `${milestone.name} is on ${printDay(date)}, a day off (${why})`;
    const fix = 'move it to a working day of the house';
    report(chart, milestone, { key: 'date', code: 'milestone-day-off', message, fix, severity: 'warning' });
  }
  return date;
}

function describe(chart: Chart, milestone: Milestone, floats: ReadonlyMap<string, number>): DatedMilestone {
  const { id, name, doneOn, note } = milestone;
  const [planned, float] = [chart.planned.get(id), floats.get(id)];
  return {
    id,
    name,
    date: chart.dates.get(id)!,
    basis: basisOf(chart, milestone),
    ...(doneOn !== undefined && { done: true as const }),
    ...(planned !== undefined && planned !== doneOn && { planned }),
    ...(float !== undefined && { float }),
    ...(note !== undefined && { note }),
  };
}

function basisOf(chart: Chart, milestone: Milestone): string {
  const { doneOn, ...open } = milestone;
  if (doneOn !== undefined) {
    const planned = chart.planned.get(milestone.id);
    const off = planned === undefined ? 0 : chart.calendar.between(planned, doneOn);
    if (off === 0) return 'done, as planned';
    return `done, ${printWorkingDays(off)} ${off > 0 ? 'later' : 'earlier'} than planned`;
  }
  return openBasis(chart, open);
}

function openBasis(chart: Chart, { id, when }: Milestone): string {
  const slip = chart.slips.get(id) ?? 0;
  const slipped = slip === 0 ? '' : `, moved ${printWorkingDays(slip)} ${slip > 0 ? 'later' : 'earlier'}`;
  if (when.by === 'date') return `fixed${slipped}`;
  const before = chart.byId.get(when.after)?.name ?? when.after;
  if (when.days === 0) return `same day as ${before}${slipped}`;
  return `${printWorkingDays(when.days)} ${when.days > 0 ? 'after' : 'before'} ${before}${slipped}`;
}

function reportOutOfReach(chart: Chart, milestone: Milestone): void {
  chart.stuck.add(milestone.id);
  const message = `the working days up to ${milestone.name} do not fit into 100 years`;
  const fix = 'check its days, and the weekend and closed days of the calendar';
  report(chart, milestone, { key: 'days', code: 'milestone-out-of-reach', message, fix });
}

interface Report {
  readonly key: 'date' | 'days' | 'done-on';
  readonly code: ProblemCode;
  readonly message: string;
  readonly fix: string;
  readonly severity?: Problem['severity'];
}

function report({ house, problems }: Chart, milestone: Milestone, { key, code, message, ...detail }: Report): void {
  const path = ['milestones', house.milestones.indexOf(milestone), key];
  problems.push(problemAt(house.origin, path, code, message, detail));
}

function reportDone(chart: Chart, milestone: Milestone, doneOn: IsoDate): void {
  const message = `${milestone.name} was done on ${printDay(doneOn)}: a slip does not move it`;
  const fix = 'let a milestone slip that is still to come';
  report(chart, milestone, { key: 'done-on', code: 'slip-done', message, fix, severity: 'warning' });
}

function unknownSlip({ origin, milestones }: House, id: string): Problem {
  const ids = milestones.map((milestone) => milestone.id);
  const fix = didYouMean(id, ids) ?? `milestones are ${ids.join(', ')}`;
  const message = `a slip names '${id}', which is no milestone`;
  return problemAt(origin, ['milestones'], 'slip-unknown', message, { fix, onKey: true });
}
