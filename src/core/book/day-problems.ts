import { describePush, describeSlack, printWorkingDays, type Bound } from '../calendar/index.js';
import { isOnSite, lastPromise, type House, type Milestone, type Option, type Records } from '../model/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { printDay, type IsoDate } from '../../base/units/index.js';
import type { BookSelection } from './book.js';
import type { Draft } from './draft.js';
import { decideAlone } from './make-alternatives.js';
import type { Decider } from './make-decider.js';

/** What days have against a choice: it is late, what it fixes is done, it comes too late even when ordered in time, or its
 *  supplier promised it for too late a day. Each is a warning at the selection. */
export function choiceDayProblems(
  drafts: readonly { readonly draft: Draft }[],
  selections: readonly BookSelection[],
  decide: Decider,
): readonly Problem[] {
  return drafts.flatMap(({ draft }, index) => {
    const selection = selections[index];
    return selection ? [...lateProblems(draft, selection), ...arrivalProblems(draft, selection, decide)] : [];
  });
}

/** Days of facts that lie in the future: each says that something has happened. */
export function futureProblems({ house, rooms, alternatives }: Records, on: IsoDate): readonly Problem[] {
  const milestones = house.milestones.flatMap(({ name, doneOn }, index) =>
    doneOn === undefined || doneOn <= on
      ? []
      : [{ origin: house.origin, path: ['milestones', index, 'done-on'], what: `${name} was done`, day: doneOn }],
  );
  const facts = rooms.flatMap(({ origin, selections }) =>
    selections.flatMap(({ chosenOn, facts: after, needsDone = [], keptOpen = [], insteadOf, path }) =>
      [
        { key: ['chosen-on'], what: 'chosen', day: chosenOn },
        ...needsDone.map(({ need, on: day }, index) => ({
          key: ['needs-done', index, 'on'],
          what: `${need} done`,
          day,
        })),
        ...keptOpen.map(({ milestone, on: day }) => ({
          key: ['kept-open-by', milestone, 'on'],
          what: `${milestone} kept open`,
          day,
        })),
        ...after.map(({ step, on: day }) => ({ key: [step, 'on'], what: step, day })),
        { key: ['instead-of', 'on'], what: 'changed', day: insteadOf?.on },
      ].flatMap(({ key, what, day }) =>
        day === undefined || day <= on ? [] : [{ origin, path: [...path, ...key], what, day }],
      ),
    ),
  );
  const drawnUp = alternatives.flatMap(({ origin, on: day }) =>
    day === undefined || day <= on ? [] : [{ origin, path: ['on'], what: 'drawn up', day }],
  );
  return [...milestones, ...facts, ...drawnUp].map(({ origin, path, what, day }) => {
    const message = `${what} on ${printDay(day)}, which is after ${printDay(on)}, the day of this book`;
    const fix = 'a fact lies in the past; check the year';
    return problemAt(origin, path, 'day-in-future', message, { fix, severity: 'warning' });
  });
}

/** A product that is measured on site after the milestone that needs it can never be there in time: an error at the house's
 *  milestone, once for each two. */
export function measureProblems(house: House, { categories, options }: Records, dates: Dates): readonly Problem[] {
  const byCategory = new Map(categories.map((category) => [category.slug, category]));
  const pairs = new Map<string, { needed: Milestone; measured: Milestone; product: Option }>();
  for (const option of options) {
    const category = byCategory.get(option.category);
    const find = (id: string | undefined) => house.milestones.find((each) => each.id === id);
    const needed = find(option.neededAt ?? category?.neededAt);
    const measured = find(option.measuredAfter ?? category?.measuredAfter);
    if (!needed || !measured || needed.doneOn !== undefined) continue;
    if ((dates.get(measured.id) ?? '') <= (dates.get(needed.id) ?? '')) continue;
    const key = `${measured.id} ${needed.id}`;
    if (!pairs.has(key)) pairs.set(key, { needed, measured, product: option });
  }
  return [...pairs.values()].map(({ needed, measured, product }) => {
    const day = (milestone: Milestone): string => `${milestone.name} (${printDay(dates.get(milestone.id) ?? '')})`;
    const message = `${product.name} is measured after ${day(measured)}, and is needed before that, at ${day(needed)}`;
    const fix = `let ${needed.id} follow ${measured.id}, or measure after an earlier milestone: measured-after`;
    const path: Path = ['milestones', house.milestones.indexOf(needed), 'id'];
    return problemAt(house.origin, path, 'milestone-measured-late', message, { fix });
  });
}

type Dates = ReadonlyMap<string, IsoDate>;

function lateProblems({ room, category, selection }: Draft, { decision }: BookSelection): readonly Problem[] {
  if (decision.state !== 'late') return [];
  const what = `${category.name}, ${room.name}`;
  const [first] = decision.bounds;
  if (first?.done) return [fixedProblem(what, first, { room, selection })];
  const late = `${what}: to be decided by ${printDay(decision.by)}, ${describeSlack(decision.slack)}`;
  const fix = `${describePush(decision)}. Write chosen, or date the milestone anew in content/house.md`;
  return [problemAt(room.origin, selection.path, 'decide-late', late, { fix, severity: 'warning' })];
}

/** What is done cannot be pushed: either something keeps the choice open, or the choice was made by the work. */
function fixedProblem(what: string, { reason, milestone, because }: Bound, { room, selection }: Where): Problem {
  const fix =
    because === 'need'
      ? 'say who provided it, with needs-done, or take the option out of considering'
      : `write chosen; or, if something was built so that it stays open, kept-open-by: { ${milestone}: … }`;
  const message = `${what} is open, and is fixed: ${reason}`;
  return problemAt(room.origin, selection.path, 'decide-fixed', message, { fix, severity: 'warning' });
}

type Where = Pick<Draft, 'room' | 'selection'>;

function arrivalProblems(
  draft: Draft,
  { decision: { onSite, bounds }, chosen, facts }: BookSelection,
  decide: Decider,
): readonly Problem[] {
  const { room, category, selection, options } = draft;
  const what = `${category.name}, ${room.name}`;
  const milestone = neededFor(bounds);
  if (isOnSite(facts)) return [];
  const promise = lastPromise(facts);
  if (promise) {
    if (promise.promised <= onSite) return [];
    const message = `${what}: promised for ${printDay(promise.promised)}, needed on ${printDay(onSite)} for ${milestone}`;
    const fix = `press the supplier, or date ${milestone} later in content/house.md`;
    const path = [...selection.path, promise.step, 'promised'];
    return [problemAt(room.origin, path, 'arrives-late', message, { fix, severity: 'warning' })];
  }
  const standing = [...options].filter(([slug]) => chosen === undefined || slug === chosen);
  return standing.flatMap(([, { option }]) => {
    const decision = decideAlone(draft, option, decide);
    if (decision.waits === undefined) return [];
    const { name } = option;
    const late = `${printDay(decision.onSite)} at the earliest, ${printWorkingDays(decision.waits)} after ${neededFor(decision.bounds)}`;
    const message = `${what}: ${name} is on site ${late}, because it is measured first`;
    const fix = `date ${neededFor(decision.bounds)} later in content/house.md, or measure after an earlier milestone: measured-after`;
    return [problemAt(room.origin, selection.path, 'arrives-late', message, { fix, severity: 'warning' })];
  });
}

/** Name of the milestone for which it is on site. */
function neededFor(bounds: readonly Bound[]): string {
  return bounds.find(({ because }) => because === 'lead-time')?.milestoneName ?? '';
}
