import type { LookUp } from '../book/index.js';
import type { DatedMilestone } from '../calendar/index.js';
import { plural, printAmount } from '../units/index.js';

/** `6 weeks`, `3 days`, `none`. */
export function leadText(days: number): string {
  if (days === 0) return 'none';
  return days % 5 === 0 ? count(days / 5, 'week') : count(days, 'day');
}

export function count(number: number, noun: string): string {
  return `${printAmount(number, 0)} ${number === 1 ? noun : plural(noun)}`;
}

/** `18 bundles of 24 sq ft`. */
export function packText(packs: number, pack: { readonly name: string; readonly holds: number }, unit: string): string {
  return `${count(packs, pack.name)} of ${printAmount(pack.holds, 2)} ${unit}`;
}

/** Name and day of a milestone. */
export function milestoneOf(
  id: string,
  { book }: LookUp,
): { readonly name: string; readonly date?: DatedMilestone['date'] } {
  const found = book.calendar.milestones.find((milestone) => milestone.id === id);
  return found ? { name: found.name, date: found.date } : { name: id };
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
