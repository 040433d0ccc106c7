import { didYouMean } from '../base/problem/index.js';
import type { Category, Records } from '../core/model/index.js';
import { UsageError } from './usage-error.js';

/** The category that a word names by its file's name; wrong usage when there is none. */
export function categoryNamed(word: string, { categories }: Pick<Records, 'categories'>): Category {
  const found = categories.find(({ slug }) => slug === word);
  if (found) return found;
  const slugs = categories.map(({ slug }) => slug);
  const meant = didYouMean(word, slugs) ?? `categories are ${slugs.join(', ')}`;
  throw new UsageError(
    `there is no category '${word}': ${meant}\nbookmatch new category writes another. Nothing was written.`,
  );
}
