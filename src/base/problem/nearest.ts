import { distance } from 'fastest-levenshtein';
import { slugFor } from '../units/index.js';

/** The candidate that was probably meant, or undefined when none is near: a slip in every third letter, three at most.
 *  Of equally near ones the first counts. */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const written = word.toLowerCase();
  const limit = Math.min(3, Math.max(1, Math.floor(written.length / 3)));
  let best: string | undefined;
  let least = limit + 1;
  for (const candidate of candidates) {
    if (candidate === word || Math.abs(candidate.length - written.length) > limit) continue;
    const slips = slipsBetween(written, candidate.toLowerCase());
    if (slips < least) [best, least] = [candidate, slips];
  }
  // A word of one or two letters is near to everything.
  return written.length < 3 && least > 0 ? undefined : best;
}

/** Letters to change; two neighbours in the wrong order are one slip. */
function slipsBetween(a: string, b: string): number {
  const slips = distance(a, b);
  return slips === 2 && [...a].sort().join('') === [...b].sort().join('') ? 1 : slips;
}

/** `did you mean 'north'?`, or undefined. */
export function didYouMean(word: string, candidates: Iterable<string>): string | undefined {
  const meant = nearest(word, candidates);
  return meant === undefined ? undefined : `did you mean '${meant}'?`;
}

/** A record, by its file's name or its id, and by the name that is printed. */
export interface Named {
  readonly slug: string;
  readonly name: string;
}

/** The record that was probably meant by a text: its printed name, its file's name in capitals, with spaces or with its ending, or what
 *  is near to either. Undefined when none is. */
export function namedAs<T extends Named>(text: string, records: readonly T[]): T | undefined {
  const word = slugFor(text.replace(/^.*\//u, '').replace(/\.md$/u, ''));
  if (word === '') return undefined;
  const found = records.find(({ slug }) => slug === word) ?? records.find(({ name }) => slugFor(name) === word);
  if (found) return found;
  const slug = nearest(
    word,
    records.map((one) => one.slug),
  );
  if (slug !== undefined) return records.find((one) => one.slug === slug);
  const name = nearest(
    word,
    records.map((one) => slugFor(one.name)),
  );
  return name === undefined ? undefined : records.find((one) => slugFor(one.name) === name);
}
