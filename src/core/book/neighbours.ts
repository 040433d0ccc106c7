import type { Category, Room, RoomMeasure, Selection } from '../model/index.js';
import { countedBefore, railJoints, type RailJoints, type SelectingRoom, type SharedWalls } from '../takeoff/index.js';

/** What the quantities of a selection take from other selections of the house. */
export interface Neighbours {
  /** Ends that the house's runs of railing share. */
  readonly joints: RailJoints;
  /** What rooms before this one count of the walls they share with it, where the category counts a wall once. */
  readonly counted?: SharedWalls;
}

/** Of what does not count by them. */
export const notByNeighbours: Neighbours = { joints: new Map() };

/** For a room, by its slug, and a category. Who comes first in `rooms` counts what two of them share. */
export function neighboursOf(
  rooms: readonly Room[],
  measures: ReadonlyMap<string, RoomMeasure>,
  categories: readonly Category[],
): (room: string, category: Category) => Neighbours {
  const joints = railJoints(rooms, measures, categories);
  const selecting = rooms.flatMap((room): readonly SelectingRoom[] => {
    const measure = measures.get(room.slug);
    return measure ? [{ ...room, measure }] : [];
  });
  const indexOf = new Map(selecting.map(({ slug }, index) => [slug, index]));
  return (slug, category) => {
    const index = indexOf.get(slug);
    const room = index === undefined ? undefined : selecting[index];
    const before = (slugs: readonly string[]): readonly SelectingRoom[] =>
      [...new Set(slugs.flatMap((other) => indexOf.get(other) ?? []))]
        .filter((at) => index !== undefined && at < index)
        .toSorted((a, b) => a - b)
        .flatMap((at) => selecting[at] ?? []);
    const counted = room && countedBefore(room, category, before);
    return { joints, ...(counted && { counted }) };
  };
}

export function countsByNeighbours({ measure }: Category): boolean {
  return measure.by === 'railing' || measure.betweenRooms === 'once';
}

/** Whether neighbours count otherwise when one selection is made of the other: something stands where nothing did, nothing where
 *  something did, or where nobody knew. */
export function movesNeighbours(category: Category, before: Selection, after: Selection): boolean {
  return countsByNeighbours(category) && presenceOf(before) !== presenceOf(after);
}

function presenceOf({ chosen, standard }: Selection): 'none' | 'unknown' | 'something' {
  if (chosen === 'none') return 'none';
  return (chosen ?? standard) === undefined ? 'unknown' : 'something';
}
