import type { Selection } from '../model/index.js';

/** Slugs of every option that could stand for a selection, each once: the standard first, then as considered, then a
 *  chosen one that was not on the list. */
export function consideredOptions(selection: Selection): readonly string[] {
  const chosen = selection.chosen === 'none' ? undefined : selection.chosen;
  const all = [selection.standard, ...selection.considering, chosen];
  return [...new Set(all.filter((slug) => slug !== undefined))];
}
