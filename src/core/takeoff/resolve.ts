import type { RoomMeasure, Selection } from '../model/index.js';
import { placesLeftOut } from './except.js';
import { findPlaces, partOf, type Place } from './places.js';

/** The places a selection covers, without repeats and without those it leaves out: of two words that name parts of one
 *  wall, all that they name; or the words that name nothing in the room. */
export function resolvePlaces(
  selection: Selection,
  measure: RoomMeasure,
): { places: readonly Place[]; unknown: readonly string[] } {
  const found = selection.at.map((word) => ({ word, places: findPlaces(word, measure) }));
  const unknown = found.filter(({ places }) => places === undefined).map(({ word }) => word);
  const byId = new Map<string, Place>();
  for (const place of found.flatMap(({ places }) => places ?? [])) {
    const before = byId.get(place.id);
    byId.set(place.id, before ? together(before, place) : place);
  }
  for (const id of placesLeftOut(selection, measure)) byId.delete(id);
  return { places: [...byId.values()], unknown };
}

/** Two places by one id: the parts of a wall are all of it. */
function together(one: Place, other: Place): Place {
  if (partOf(one) === undefined || partOf(one) === partOf(other)) return one;
  if (partOf(other) === undefined || other.kind !== 'wall') return other;
  const { kind, id, name, wall } = other;
  return { kind, id, name, wall };
}
