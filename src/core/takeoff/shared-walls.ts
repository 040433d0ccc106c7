import type { Category, RoomMeasure, Selection } from '../model/index.js';
import { quantityOf } from './convention/area.js';
import type { SharedWalls } from './convention/convention.js';
import { besideWall, wallsTowards } from './places.js';
import { resolvePlaces } from './resolve.js';

/** A room with what it selects. */
export interface SelectingRoom {
  readonly slug: string;
  readonly name: string;
  readonly measure: RoomMeasure;
  readonly selections: readonly Selection[];
}

/** A wall of one room that another selects from its side. */
interface SelectedBeside {
  /** The wall's id in this room. */
  readonly wall: string;
  /** The room that selects it, its wall there, and the selection. */
  readonly from: SelectingRoom;
  readonly there: string;
  readonly selection: Selection;
}

/** The walls of a room that others select a category for, from their side, among `others`. What is open without a standard
 *  selects nothing yet. */
function selectedBeside(
  room: Pick<SelectingRoom, 'slug' | 'measure'>,
  category: string,
  others: readonly SelectingRoom[],
): readonly SelectedBeside[] {
  return room.measure.walls.flatMap(({ id, ...wall }) =>
    besideWall({ id, ...wall }, room.measure).flatMap((slug) => {
      const from = others.find((other) => other.slug === slug && other.slug !== room.slug);
      return from ? selectedTowards(room.slug, from, category).map((found) => ({ wall: id, from, ...found })) : [];
    }),
  );
}

function selectedTowards(
  slug: string,
  { measure, selections }: SelectingRoom,
  category: string,
): readonly Pick<SelectedBeside, 'there' | 'selection'>[] {
  const facing = new Set(wallsTowards(measure, slug).map(({ id }) => id));
  return selections
    .filter((selection) => selection.category === category && stands(selection))
    .flatMap((selection) =>
      resolvePlaces(selection, measure).places.flatMap((place) =>
        place.kind === 'wall' && facing.has(place.id) ? [{ there: place.id, selection }] : [],
      ),
    );
}

function stands({ chosen, standard }: Selection): boolean {
  return chosen === undefined ? standard !== undefined : chosen !== 'none';
}

/** What the rooms before this one count of the walls they share with it. Undefined where the category counts each side. */
export function countedBefore(
  room: Pick<SelectingRoom, 'slug' | 'measure'>,
  { slug: category, measure: rule }: Category,
  before: readonly SelectingRoom[],
): SharedWalls | undefined {
  if (rule.betweenRooms !== 'once') return undefined;
  const counted = new Map<string, { readonly room: string; readonly net: number }[]>();
  for (const { wall, from, there } of selectedBeside(room, category, before)) {
    const surface = from.measure.walls.find(({ id }) => id === there);
    if (!surface) continue;
    const { net } = quantityOf(there, surface.name, surface, rule);
    counted.set(wall, [...(counted.get(wall) ?? []), { room: from.name, net }]);
  }
  return counted;
}
