import { didYouMean } from '../base/problem/index.js';
import { UsageError } from './usage-error.js';

/** The alternative that a word names: by its file's name or as it is printed. */
export function alternativeNamed<One extends { readonly slug: string; readonly name: string }>(
  word: string,
  all: readonly One[],
): One {
  const printed = all.filter(({ name }) => name.toLowerCase() === word.toLowerCase());
  const one = all.find(({ slug }) => slug === word) ?? (printed.length === 1 ? printed[0] : undefined);
  if (one) return one;
  if (printed.length > 1)
    throw new UsageError(
      `${printed.length} alternatives are named '${word}': ${printed.map(({ slug }) => slug).join(', ')}`,
    );
  const slugs = all.map(({ slug }) => slug);
  const meant = didYouMean(word.toLowerCase(), slugs);
  const there = slugs.length === 0 ? 'There are none in content/alternatives/.' : `There are ${slugs.join(', ')}.`;
  throw new UsageError(`there is no alternative '${word}'${meant === undefined ? '' : `: ${meant}`}\n${there}`);
}
