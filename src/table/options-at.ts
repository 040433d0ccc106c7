import { optionId, type BookSelection } from '../core/book/index.js';

/** Ids of the options at a selection: what counts, and while it is open all that is considered. */
export function optionsAt({ category, counted, state, alternatives }: BookSelection): readonly string[] {
  const slugs = state === 'open' ? alternatives.map(({ option }) => option) : counted === undefined ? [] : [counted];
  return slugs.map((slug) => optionId(category, slug));
}
