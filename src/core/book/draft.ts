import type { Category, Option, Records, Room, RoomMeasure, Selection } from '../model/index.js';
import { takeOff, type Place, type Takeoff } from '../takeoff/index.js';
import { groupBy } from './group-by.js';
import { countsByNeighbours, neighboursOf, type Neighbours } from './neighbours.js';

/** A selection with its places found and every option taken off, before it is priced. */
export interface Draft extends Neighbours {
  readonly id: string;
  readonly room: Room;
  readonly selection: Selection;
  readonly category: Category;
  readonly measure: RoomMeasure;
  readonly places: readonly Place[];
  /** By option slug, in the order to show. */
  readonly options: ReadonlyMap<string, { readonly option: Option; readonly takeoffs: readonly Takeoff[] }>;
}

/** Id of an option across categories. */
export function optionId(category: string, slug: string): string {
  return `${category}/${slug}`;
}

/** The slug of an option of a category. */
export function slugOf(id: string, category: string): string {
  return id.slice(category.length + 1);
}

/** A draft as it would be with an option chosen, or `none`, and nothing ordered. An option that was not at hand is taken off. */
export function withChoice(draft: Draft, chosen: string, options: readonly Option[]): Draft {
  const selection: Selection = { ...draft.selection, chosen, facts: [] };
  if (draft.options.has(chosen)) return { ...draft, selection };
  const option = options.find(({ category, slug }) => category === draft.category.slug && slug === chosen);
  if (!option) return { ...draft, selection };
  const { takeoffs } = takeOff({ ...draft, selection }, draft.places, option);
  return { ...draft, selection, options: new Map([...draft.options, [chosen, { option, takeoffs }]]) };
}

/** Drafts of a house in which places were chosen or left out: what counts by its neighbours is taken off anew. */
export function withNeighbours(
  drafts: readonly Draft[],
  { categories, rooms }: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
): readonly Draft[] {
  const byRoom = groupBy(drafts, ({ room }) => room.slug);
  const selecting = rooms.map((room) => ({
    ...room,
    selections: (byRoom.get(room.slug) ?? []).map(({ selection }) => selection),
  }));
  const neighbours = neighboursOf(selecting, measures, categories);
  return drafts.map((draft) => {
    if (!countsByNeighbours(draft.category)) return draft;
    const anew = { ...draft, ...neighbours(draft.room.slug, draft.category) };
    const options = [...draft.options].map(([slug, { option }]) => {
      const { takeoffs } = takeOff(anew, draft.places, option);
      return [slug, { option, takeoffs }] as const;
    });
    return { ...anew, options: new Map(options) };
  });
}
