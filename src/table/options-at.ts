import { optionId, optionSlugs, type BookSelection } from '../core/book/index.js';

/** Ids of the options at a selection: what counts, and while it is open all that is considered. */
export function optionsAt(selection: BookSelection): readonly string[] {
  const { category, counted, state } = selection;
  const slugs = state === 'open' ? optionSlugs(selection) : counted === undefined ? [] : [counted];
  return slugs.map((slug) => optionId(category, slug));
}
