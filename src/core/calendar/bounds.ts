import type { Category, Need, Option, Selection } from '../model/index.js';
import { capital, joinWords, notToldYet, printDay, type IsoDate } from '../../base/units/index.js';
import { printWorkingDays } from './day.js';
import type { Arrival } from './arrival.js';
import type { Bound, DatedMilestone, Lifted } from './decision.js';
import { milestoneOf } from './milestone-of.js';
import type { WorkingDays } from './working-days.js';

/** What bears on the day of a choice beside the lead time. */
export interface Bearing {
  readonly category: Category;
  readonly options: readonly Option[];
  readonly keptOpen?: Selection['keptOpen'];
  readonly needsDone?: Selection['needsDone'];
}

/** A bound with the day on which its milestone can be when the choice is made in time. */
export interface DatedBound extends Bound {
  readonly ready: IsoDate;
}

/** The last day for what is ordered first: its order less the review. */
export function leadBound(arrivals: readonly Arrival[], calendar: WorkingDays): DatedBound & { readonly of: Arrival } {
  const [head, ...rest] = arrivals;
  if (!head) throw new Error('a choice has at least the arrival of nothing');
  const first = rest.reduce((earliest, next) => (next.orderBy < earliest.orderBy ? next : earliest), head);
  const { needed, onSite, orderBy } = first;
  const by = calendar.add(orderBy, -calendar.rules.reviewDays);
  const reason = `${leadWords(first, arrivals)}: on site ${printDay(onSite)} for ${needed.name}`;
  return { ...boundAt(needed, 'lead-time', by, reason), ready: onSite, of: first };
}

/** Milestones that the choice fixes, and those before which its options need something. A need that some options have is
 *  told with their names. */
export function fixedBounds(
  bearing: Bearing,
  milestones: readonly DatedMilestone[],
  calendar: WorkingDays,
): readonly DatedBound[] {
  const { category, options } = bearing;
  const bound = (id: string, because: Bound['because'], why: string): DatedBound => {
    const milestone = milestoneOf(milestones, id);
    const ready = calendar.onOrBefore(milestone.date);
    const on = `${milestone.name} ${milestone.done ? 'was done on' : 'on'} ${printDay(milestone.date)}`;
    const by = calendar.add(ready, -calendar.rules.reviewDays);
    return { ...boundAt(milestone, because, by, `${why}: ${on}`), ready };
  };
  const fixings = category.fixesEarly
    .filter(({ milestone }) => keptOpenBy(bearing, milestone) === undefined)
    .map(({ milestone, why }) => bound(milestone, 'fixes-early', why));
  const needs = openNeeds(bearing).map(({ need, names }) => {
    const whose = names.length < options.length ? `, for ${joinWords(names)}` : '';
    return bound(need.before, 'need', `${need.what}${whose}`);
  });
  return [...fixings, ...needs];
}

/** What no longer bears on it, and why not. */
export function liftedBounds(bearing: Bearing, milestones: readonly DatedMilestone[]): readonly Lifted[] {
  const fixings = bearing.category.fixesEarly.flatMap(({ milestone, why }): readonly Lifted[] => {
    const by = keptOpenBy(bearing, milestone);
    return by === undefined ? [] : [{ what: why, milestone: milestoneOf(milestones, milestone).name, by }];
  });
  const needs = (bearing.needsDone ?? []).flatMap(({ need, on, by }): readonly Lifted[] => {
    const found = bearing.options.flatMap((option) => option.needs).find(({ id }) => id === need);
    if (!found) return [];
    const milestone = milestoneOf(milestones, found.before).name;
    return [{ what: found.what, milestone, by: `${by}, ${printDay(on)}` }];
  });
  return [...fixings, ...needs];
}

/** Options that can still have all that they need: a milestone that is done cannot wait for what is missing. All of them,
 *  where none can. */
export function possibleOptions(bearing: Bearing, milestones: readonly DatedMilestone[]): readonly Option[] {
  const possible = bearing.options.filter((option) =>
    openNeeds({ ...bearing, options: [option] }).every(({ need }) => !milestoneOf(milestones, need.before).done),
  );
  return possible.length > 0 ? possible : bearing.options;
}

function boundAt(milestone: DatedMilestone, because: Bound['because'], by: IsoDate, reason: string): Bound {
  return {
    by,
    because,
    milestone: milestone.id,
    milestoneName: milestone.name,
    reason,
    ...(milestone.done && { done: true as const }),
  };
}

function keptOpenBy({ keptOpen = [] }: Bearing, milestone: string): string | undefined {
  const kept = keptOpen.find((each) => each.milestone === milestone);
  return kept && `${kept.why}, ${printDay(kept.on)}`;
}

/** Needs that nobody has provided yet, each once, with the names of the options that have it. */
function openNeeds({ options, needsDone = [] }: Bearing): readonly { need: Need; names: readonly string[] }[] {
  const found = new Map<string, { need: Need; names: string[] }>();
  for (const { name, needs } of options) {
    for (const need of needs.filter(({ id }) => !needsDone.some((done) => done.need === id))) {
      const key = `${need.id ?? need.what} ${need.before}`;
      const known = found.get(key) ?? { need, names: [] };
      found.set(key, { need, names: [...known.names, name] });
    }
  }
  return [...found.values()];
}

function leadWords(first: Arrival, all: readonly Arrival[]): string {
  if (!first.option) return 'Nothing to order';
  const known = all.filter(({ option }) => option?.leadDays !== undefined);
  const names = all.flatMap(({ option }) => (option && option.leadDays === undefined ? [option.name] : []));
  const untold = `the lead time of ${joinWords(names)} is ${notToldYet}`;
  if (first.option.leadDays === undefined) return capital(untold);
  const words = knownLeadWords(first, first.option, known);
  return names.length === 0 ? words : `${words}; ${untold}`;
}

function knownLeadWords({ measured, orderBy }: Arrival, option: Option, all: readonly Arrival[]): string {
  if (option.leadDays === 0) {
    return all.length > 1 ? 'All considered come from stock' : `${option.name} comes from stock`;
  }
  const alike = all.every(({ needed, measured: other }) => needed === all[0]?.needed && !other);
  const among = all.length > 1 ? `, the ${alike ? 'longest' : 'first to order'} of ${all.length} considered` : '';
  const holds = measured && measured.date >= orderBy;
  const after = holds ? ` once it is measured after ${measured.name} on ${printDay(measured.date)}` : '';
  return `${option.name} takes ${printWorkingDays(option.leadDays ?? 0)} to come${after}${among}`;
}
