import type { BookSelection } from '../core/book/index.js';
import { isOnSite, lastPromise, type SelectionFact } from '../core/model/index.js';
import { capital, printDay } from '../base/units/index.js';

/** 'ordered 13 April 2026 by Project manager, number L-118, promised 8 June 2026'. */
export function factWords({ step, on, by, number, promised, count, lot }: SelectionFact): string {
  const more = [
    number === undefined ? '' : `number ${number}`,
    count ?? '',
    lot === undefined ? '' : `lot ${lot}`,
    promised === undefined ? '' : `promised ${printDay(promised)}`,
  ].filter((part) => part !== '');
  return [`${step} ${printDay(on)}${by === undefined ? '' : ` by ${by}`}`, ...more].join(', ');
}

/** Where a choice stands: the last thing that happened to it, and what the supplier promised, if it is not there yet. */
export function standingWords(facts: readonly SelectionFact[]): string {
  const last = facts.at(-1);
  if (!last) return '';
  const promise = lastPromise(facts);
  if (!promise || promise === last || isOnSite(facts)) return capital(factWords(last));
  return capital(`${factWords(last)}, promised ${printDay(promise.promised)}`);
}

/** The same for several places that are bought together, each standing once: 'Ordered 13 April 2026 (2 of 3 places)'. */
export function standingOf(selections: readonly Pick<BookSelection, 'facts'>[]): string {
  const counts = new Map<string, number>();
  for (const { facts } of selections) {
    const standing = standingWords(facts);
    if (standing !== '') counts.set(standing, (counts.get(standing) ?? 0) + 1);
  }
  const all = selections.length;
  return [...counts]
    .map(([words, count]) => (count === all ? words : `${words} (${count} of ${all} places)`))
    .join('; ');
}
