import type { RoomMeasure, Selection } from '../model/index.js';
import { placesLeftOut } from './except.js';
import { findPlaces, type Place } from './places.js';

/** The places a selection covers, without repeats and without those it leaves out, or the words that name nothing in the room. */
export function resolvePlaces(
  selection: Selection,
  measure: RoomMeasure,
): { places: readonly Place[]; unknown: readonly string[] } {
  const found = selection.at.map((word) => ({ word, places: findPlaces(word, measure) }));
  const unknown = found.filter(({ places }) => places === undefined).map(({ word }) => word);
  const byId = new Map(found.flatMap(({ places }) => places ?? []).map((place) => [place.id, place]));
  for (const id of placesLeftOut(selection, measure)) byId.delete(id);
  return { places: [...byId.values()], unknown };
}
