import type { BookSelection, LookUp } from '../../core/book/index.js';

/** What stands at a place: `Cast ledge`, `none`, `open, the standard Cast ledge counted`. */
export function standsWords({ state, category, chosen, counted }: BookSelection, look: LookUp): string {
  const named = (slug: string | undefined): string | undefined => look.option(category, slug)?.name ?? slug;
  if (state === 'none') return 'none';
  if (state !== 'open') return named(chosen) ?? 'none';
  return counted === undefined ? 'open' : `open, the standard ${named(counted) ?? counted} counted`;
}
