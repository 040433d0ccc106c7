import type { Takeoff } from '../../takeoff/index.js';
import type { BookOption, BookSelection } from '../book.js';
import type { Scheduled, Standing } from './schedule.js';
import type { Unscheduled } from './unscheduled.js';

/** A selection as schedules show it: what is chosen, else the contract's standard for now, even where an allowance stands
 *  for the money. */
export function scheduled(selection: BookSelection, look: Unscheduled): Scheduled {
  const option = optionOf(selection, look);
  return {
    selection: selection.id,
    standing: standingOf(selection),
    supply: selection.supply,
    ...(option && { option: option.id, name: option.name }),
  };
}

export function optionOf(selection: BookSelection, look: Unscheduled): BookOption | undefined {
  return look.option(selection.category, slugOf(selection));
}

/** `<category>/<slug>` of the option that stands. */
export function standingId(selection: BookSelection): string | undefined {
  const slug = slugOf(selection);
  return slug === undefined ? undefined : `${selection.category}/${slug}`;
}

export function standingOf({ state, standard }: BookSelection): Standing {
  if (state === 'none') return 'none';
  if (state !== 'open') return 'chosen';
  return standard === undefined ? 'open' : 'standard';
}

/** Quantities and weight with the option that stands. */
export function takeoffOf(selection: BookSelection): {
  readonly takeoff: readonly Takeoff[];
  readonly pounds?: number;
} {
  const slug = slugOf(selection);
  if (slug === selection.counted) return selection;
  return selection.alternatives.find(({ option }) => option === slug) ?? { takeoff: [] };
}

function slugOf({ state, chosen, standard }: BookSelection): string | undefined {
  return state === 'none' ? undefined : (chosen ?? standard);
}
