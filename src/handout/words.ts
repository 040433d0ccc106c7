import type { BookOption, BookSelection, LookUp } from '../core/book/index.js';
import type { DatedMilestone } from '../core/calendar/index.js';
import { ref, type Ref, type Sieved, type Status } from '../sheet/index.js';
import { placesOf } from '../table/index.js';
import { notToldYet, plural, type Unit } from '../base/units/index.js';
import type { Day, HandoutFinish } from './handout.js';
import { amount, day, joined, own, quantity, told, type Own, type Said } from './own.js';
import { sieve, sieveName } from './sieve.js';

/** `6 weeks`, `3 days`, `none`, `not told yet`. */
export function leadText(days: number | undefined): Own {
  if (days === undefined) return own(notToldYet);
  if (days === 0) return own('none');
  if (days % 5 !== 0) return days === 1 ? own('1 day') : told`${days} days`;
  return days === 5 ? own('1 week') : told`${days / 5} weeks`;
}

/** `bundle of 24 sq ft`. */
export function packText({ name, holds }: { readonly name: string; readonly holds: number }, unit: Unit): Own {
  return told`${sieveName(name)} of ${quantity(holds, unit, 2)}`;
}

/** Name and day of a milestone. */
export function milestoneOf(id: string, { book }: LookUp): { readonly name: Sieved; readonly date?: Day } {
  const found: DatedMilestone | undefined = book.calendar.milestones.find((milestone) => milestone.id === id);
  return found ? { name: sieveName(found.name), date: sieve(found.date) } : { name: sieveName(id) };
}

/** Numbers of the rooms in the Book's order, each once; three or more in a row are folded: `101 to 115`, `201`. */
export function roomNumbers(slugs: Iterable<string>, { book }: LookUp): readonly string[] {
  const wanted = new Set(slugs);
  const runs: string[][] = [];
  let isRun = false;
  for (const { slug, number } of book.rooms) {
    if (!wanted.has(slug)) {
      isRun = false;
      continue;
    }
    if (isRun) runs.at(-1)?.push(number);
    else runs.push([number]);
    isRun = true;
  }
  return runs.flatMap((run) => (run.length < 3 ? run : [`${run[0] ?? ''} to ${run.at(-1) ?? ''}`]));
}

/** A kind of work and its place, a word that is both said once: 'Ceiling board, ceiling', 'Floor'. */
export function workAt(category: string, place: string): Said {
  const [kind, at] = [sieveName(category), sieve(place)];
  return kind.toLowerCase() === at.toLowerCase() ? kind : joined([kind, at], ', ');
}

/** Where a selection is, in words. */
export const placeWords = (selection: BookSelection): Sieved => sieve(placesOf(selection));

/** A selection's state, in the words and signs that the house uses. */
export function statusOf({ state, decision }: BookSelection): Status {
  if (state !== 'open') return state;
  return decision.state === 'late' || decision.state === 'due-soon' ? decision.state : 'open';
}

/** When an open selection is decided, seen from the Book's day: `by 4 May 2026`, `was due 4 May 2026`. */
export function whenDecided({ state, decision }: BookSelection, { book }: LookUp): Own {
  if (state !== 'open') return own('');
  return decision.by < book.on ? told`was due ${day(decision.by)}` : told`by ${day(decision.by)}`;
}

/** A product by its key in the room finish schedule and its name. `isDecided` is false for what stands only for now, and for
 *  what is one of several. */
export function productFinish(
  { id, name }: BookOption,
  isDecided: boolean,
  keys: ReadonlyMap<string, string>,
  by: BookSelection['supply'] = 'contractor',
): HandoutFinish {
  const key = keys.get(id);
  return {
    is: 'finish',
    name: sieveName(name),
    standing: isDecided ? 'chosen' : 'considered',
    by,
    ...(key !== undefined && { key: sieveName(key) }),
    place: { to: 'option', id: sieveName(id) },
  };
}

/** An id, which may have the name of a wall in it. */
export const refTo = (id: string): Ref => ref(sieveName(id));

/** `12 bundles`. */
export function count(number: number, noun: string): Own {
  return told`${amount(number, 0)} ${sieve(number === 1 ? noun : plural(noun))}`;
}
