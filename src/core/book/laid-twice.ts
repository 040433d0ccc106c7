import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import type { Room, RoomMeasure } from '../model/index.js';
import { findPlaces, isLaidWord, meet, resolvePlaces, type Place } from '../takeoff/index.js';

/** One word of a selection's `at`, with the places that it means here. */
interface Named {
  readonly word: string;
  readonly category: string;
  readonly path: Path;
  readonly places: readonly Place[];
}

/** Places with two selections of a category, where one of them is named by a word that means what the layout of the house says; what the other
 *  words have in common is told by the records alone. */
export function laidTwiceProblems(room: Room, measure: RoomMeasure): readonly Problem[] {
  const named = room.selections.flatMap((selection): readonly Named[] => {
    const { category, path, at } = selection;
    const left = new Set(resolvePlaces(selection, measure).places.map(({ id }) => id));
    return at.map((word) => {
      const places = (findPlaces(word, measure) ?? []).filter(({ id }) => left.has(id));
      return { word, category, path: [...path, 'at'], places };
    });
  });
  return named.flatMap((one, index) => {
    const before = named.slice(0, index).filter(({ category }) => category === one.category);
    const double = before.flatMap((other) => commonTo(other, one)).at(0);
    if (!double) return [];
    const { place, other } = double;
    const message = `'${place.id}' has two selections of ${one.category}, as '${other.word}' and as '${one.word}'`;
    const fix = 'keep one selection of a category for a place, or leave the place out of one with except';
    return [problemAt(room.origin, one.path, 'selection-duplicate', message, { fix })];
  });
}

/** What two words have in common, where the layout of the house has a say in it. The words of one selection are one choice. */
function commonTo(other: Named, one: Named): readonly { readonly place: Place; readonly other: Named }[] {
  if (other.path[1] === one.path[1] || !(isLaidWord(one.word) || isLaidWord(other.word))) return [];
  const place = one.places.find((here) => other.places.some((there) => meet(here, there)));
  return place ? [{ place, other }] : [];
}
