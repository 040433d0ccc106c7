import type { Selection } from '../model/index.js';

/** Slugs of every option that could stand in a place, each once: the standard first, then as considered, then a chosen one that was not on the
 *  list. */
export function optionSlugs({
  standard,
  considering,
  chosen,
}: Pick<Selection, 'standard' | 'considering' | 'chosen'>): readonly string[] {
  const all = [standard, ...considering, chosen === 'none' ? undefined : chosen];
  return [...new Set(all.filter((slug) => slug !== undefined))];
}
