import type { Path, Problem } from '../../../base/problem/index.js';
import { soundItems } from '../checked-record.js';
import type { Draft } from '../draft.js';
import type { RawMatch } from '../raw/house.js';
import { readMatchPlace } from '../read-house.js';
import { some, unknown, unknownCategory } from './unknown.js';

/** What must match is of a category that there is, in rooms that there are, at places where they select it. */
export function matchReferences(draft: Draft): readonly Problem[] {
  const { house, slugs } = draft;
  if (!house) return [];
  return soundItems<RawMatch>(house.record, 'match').flatMap(({ raw: { category, places }, path }) => {
    if (!slugs.categories.has(category))
      return [unknownCategory(house.record.origin, [...path, 'category'], category, slugs.categories)];
    return places.flatMap((text, index) => placeProblems(text, category, [...path, 'places', index], draft));
  });
}

function placeProblems(text: string, category: string, path: Path, { house, rooms, slugs }: Draft): readonly Problem[] {
  if (!house) return [];
  const { origin } = house.record;
  const { room: slug, place } = readMatchPlace(text);
  if (!slugs.rooms.has(slug)) {
    const message = `there is no room '${slug}'`;
    const lives = 'Rooms live in content/rooms/';
    return [unknown(origin, path, { code: 'room-unknown', message, name: slug, among: slugs.rooms, lives })];
  }
  const room = rooms.find((each) => each.slug === slug);
  // A selection that cannot be read may be the one.
  if (!room?.record.sound(['selections']) || room.record.meant('selections')) return [];
  const own = room.selections.filter((selection) => selection.category === category).flatMap(({ at }) => at);
  if (place === undefined ? own.length > 0 : own.includes(place)) return [];
  const message =
    place === undefined || own.length === 0
      ? `${room.name} selects no ${category}`
      : `${room.name} selects no ${category} at '${place}'`;
  const having = rooms.filter(({ selections }) => selections.some((selection) => selection.category === category));
  const lives =
    own.length > 0
      ? `It selects ${category} at ${some(own)}`
      : `Rooms that select ${category}: ${some(having.map((each) => each.slug))}`;
  return [unknown(origin, path, { code: 'place-unknown', message, name: place ?? '', among: own, lives })];
}
