import type { House, Milestone } from '../model/index.js';
import type { Outcome, Path, Problem } from '../problem/index.js';
import type { IsoDate } from '../units/index.js';
import { isDay, printDay, printWorkingDays } from './day.js';
import type { DatedMilestone } from './decision.js';
import { workingDays } from './working-days.js';
import type { WorkingDays } from './working-days.js';

/** Milestone id → working days that it comes later (negative: earlier) than recorded. */
export type Slips = ReadonlyMap<string, number>;

/** Dates every milestone of the house, in the record's order. A slip moves its milestone and, through the chain, all
 *  that come after it. There is no value when a milestone cannot be dated: it follows itself (`milestone-cycle`) or an
 *  unknown one (`milestone-unknown`), its date is none (`milestone-date`), or its working days do not fit into
 *  100 years (`milestone-out-of-reach`). A fixed date on a day off is a warning (`milestone-day-off`); a slip of an unknown
 *  milestone is an error (`slip-unknown`). */
export function dateMilestones(house: House, slips: Slips = new Map()): Outcome<readonly DatedMilestone[]> {
  const chart: Chart = {
    house,
    slips,
    calendar: workingDays(house.calendar),
    byId: new Map([...house.milestones].reverse().map((milestone) => [milestone.id, milestone])),
    dates: new Map(),
    stuck: new Set(),
    problems: [],
  };
  for (const id of slips.keys()) if (!chart.byId.has(id)) chart.problems.push(unknownSlip(house, id));
  for (const milestone of house.milestones) dateChain(chart, milestone);
  if (chart.problems.some((problem) => problem.severity === 'error')) return { problems: chart.problems };
  return { value: house.milestones.map((milestone) => describe(chart, milestone)), problems: chart.problems };
}

interface Chart {
  readonly house: House;
  readonly slips: Slips;
  readonly calendar: WorkingDays;
  readonly byId: ReadonlyMap<string, Milestone>;
  readonly dates: Map<string, IsoDate>;
  /** Ids that cannot be dated; the cause is reported once. */
  readonly stuck: Set<string>;
  readonly problems: Problem[];
}

/** Follows `after` up to a milestone that has a date, then dates the chain on the way back. */
function dateChain(chart: Chart, milestone: Milestone): void {
  const chain = new Map<string, Milestone>();
  let current: Milestone | undefined = milestone;
  while (current && !chart.dates.has(current.id) && !chart.stuck.has(current.id)) {
    if (chain.has(current.id)) {
      reportCycle(chart, chain, current);
      break;
    }
    chain.set(current.id, current);
    if (current.when.by === 'date') break;
    const next: Milestone | undefined = chart.byId.get(current.when.after);
    if (!next) reportUnknown(chart, current, current.when.after);
    current = next;
  }
  for (const each of [...chain.values()].reverse()) dateOne(chart, each);
}

function dateOne(chart: Chart, milestone: Milestone): void {
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
  chart.dates.set(milestone.id, date);
}

/** The day that a milestone's own days are counted from. */
function startOf(chart: Chart, milestone: Milestone): IsoDate | undefined {
  if (milestone.when.by === 'after') return chart.dates.get(milestone.when.after);
  const { date } = milestone.when;
  if (!isDay(date)) {
    report(chart, milestone, 'date', 'milestone-date', `'${date}' is not a day`, 'Write a day as 2026-05-04.');
    return undefined;
  }
  const why = chart.calendar.whyOff(date);
  if (why !== undefined) {
    const message = `${milestone.name} is on ${printDay(date)}, a day off (${why})`;
    report(chart, milestone, 'date', 'milestone-day-off', message, 'Move it to a working day of the house.', 'warning');
  }
  return date;
}

function describe(chart: Chart, milestone: Milestone): DatedMilestone {
  const { id, name, note } = milestone;
  return {
    id,
    name,
    date: chart.dates.get(id)!,
    basis: basisOf(chart, milestone),
    ...(note !== undefined && { note }),
  };
}

function basisOf(chart: Chart, { id, when }: Milestone): string {
  const slip = chart.slips.get(id) ?? 0;
  const slipped = slip === 0 ? '' : `, moved ${printWorkingDays(slip)} ${slip > 0 ? 'later' : 'earlier'}`;
  if (when.by === 'date') return `fixed${slipped}`;
  const before = chart.byId.get(when.after)?.name ?? when.after;
  if (when.days === 0) return `same day as ${before}${slipped}`;
  return `${printWorkingDays(when.days)} ${when.days > 0 ? 'after' : 'before'} ${before}${slipped}`;
}

function reportCycle(chart: Chart, chain: ReadonlyMap<string, Milestone>, again: Milestone): void {
  const ids = [...chain.keys()];
  const ring = ids.slice(ids.indexOf(again.id));
  for (const id of ring) chart.stuck.add(id);
  const message = `milestones wait for each other: ${[...ring, again.id].join(' after ')}`;
  report(chart, again, 'after', 'milestone-cycle', message, 'Give one of them a date.');
}

function reportUnknown(chart: Chart, milestone: Milestone, after: string): void {
  const known = [...chart.byId.keys()].join(', ');
  const message = `${milestone.id} comes after '${after}', which is no milestone`;
  report(chart, milestone, 'after', 'milestone-unknown', message, `Milestones are ${known}.`);
}

function reportOutOfReach(chart: Chart, milestone: Milestone): void {
  chart.stuck.add(milestone.id);
  const message = `the working days up to ${milestone.name} do not fit into 100 years`;
  report(
    chart,
    milestone,
    'days',
    'milestone-out-of-reach',
    message,
    'Check its days, and the weekend and closed days of the calendar.',
  );
}

function report(
  chart: Chart,
  milestone: Milestone,
  key: string,
  code: string,
  message: string,
  fix: string,
  severity: Problem['severity'] = 'error',
): void {
  const path: Path = ['milestones', chart.house.milestones.indexOf(milestone), key];
  const { file } = chart.house.origin;
  chart.problems.push({ code, file, at: chart.house.origin.at(path), message, fix, severity });
}

function unknownSlip(house: House, id: string): Problem {
  return {
    code: 'slip-unknown',
    file: house.origin.file,
    at: house.origin.key(['milestones']),
    message: `a slip names '${id}', which is no milestone`,
    fix: `Milestones are ${house.milestones.map((milestone) => milestone.id).join(', ')}.`,
    severity: 'error',
  };
}
