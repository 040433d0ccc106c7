import { distance } from 'fastest-levenshtein';

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
