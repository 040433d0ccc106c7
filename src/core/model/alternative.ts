import type { Origin } from '../../base/problem/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { isCommitted, selectionId, type Room, type Selection } from './room.js';

/** A named set of choices over the whole house, to be held beside the house as it stands. It chooses nothing. */
export interface HouseAlternative {
  readonly slug: string;
  readonly name: string;
  /** Who drew it up, and on which day. */
  readonly by?: string;
  readonly on?: IsoDate;
  /** One option of a category, wherever it is the standard or considered, and not chosen already; what was
   *  released or ordered stays. */
  readonly throughout: readonly { readonly category: string; readonly option: string }[];
  /** By the id of a selection; `none` for a deliberate none. Where both speak of a place, this one holds. */
  readonly choices: readonly { readonly selection: string; readonly option: string }[];
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** Can `throughout` mean this place? */
export function mayTake(selection: Selection, category: string, option: string): boolean {
  const { standard, considering, chosen } = selection;
  const known = option === standard || considering.includes(option);
  return selection.category === category && known && chosen !== option && !isCommitted(selection);
}

/** What an alternative chooses: an option's slug, or `none`, by the id of the selection. */
export function choicesOf(
  { throughout, choices }: Pick<HouseAlternative, 'throughout' | 'choices'>,
  rooms: readonly Pick<Room, 'slug' | 'selections'>[],
): ReadonlyMap<string, string> {
  const everywhere = throughout.flatMap(({ category, option }) =>
    rooms.flatMap(({ slug, selections }) =>
      selections
        .filter((selection) => mayTake(selection, category, option))
        .map((selection) => [selectionId(slug, selection), option] as const),
    ),
  );
  return new Map([...everywhere, ...choices.map(({ selection, option }) => [selection, option] as const)]);
}
