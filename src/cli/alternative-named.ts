import { didYouMean } from '../base/problem/index.js';
import { UsageError } from './usage-error.js';

/** The alternative that a word names: by its file's name or as it is printed. */
export function alternativeNamed<One extends { readonly slug: string; readonly name: string }>(
  word: string,
  all: readonly One[],
): One {
  const found = all.find(({ slug, name }) => slug === word || name.toLowerCase() === word.toLowerCase());
  if (found) return found;
  const slugs = all.map(({ slug }) => slug);
  const meant = didYouMean(word.toLowerCase(), slugs);
  const there = slugs.length === 0 ? 'There are none in content/alternatives/.' : `There are ${slugs.join(', ')}.`;
  throw new UsageError(`there is no alternative '${word}'${meant === undefined ? '' : `: ${meant}`}\n${there}`);
}
