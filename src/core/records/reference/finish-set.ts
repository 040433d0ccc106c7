import { problemAt, type Problem } from '../../../base/problem/index.js';
import { joinWords } from '../../../base/units/index.js';
import type { Draft } from '../draft.js';
import { finishSets, hasPlace, hasSet } from '../finish-sets.js';
import { unknown } from './unknown.js';

/** Finish sets name rooms that there are, and places that one of their rooms has. A place that some of them lack is passed over there. */
export function finishSetReferences({ house, rooms, slugs }: Draft): readonly Problem[] {
  if (!house) return [];
  // A room that cannot be read may be the one that has the place.
  const isWhole = rooms.length === slugs.rooms.size && rooms.every(({ record }) => record.sound(['use']));
  return finishSets(house.record).flatMap((one) => {
    const { set, index, origin } = one;
    const path = ['finish-sets', index];
    const strangers = (set.rooms ?? []).flatMap((name, place) => {
      if (slugs.rooms.has(name)) return [];
      const message = `${set.name} names a room '${name}', which there is not`;
      const lives = 'Rooms live in content/rooms/';
      return [
        unknown(origin, [...path, 'rooms', place], { code: 'room-unknown', message, name, among: slugs.rooms, lives }),
      ];
    });
    if (strangers.length > 0 || !isWhole) return strangers;
    const mine = rooms.filter((room) => hasSet(one, room));
    if (mine.length === 0) {
      const fix = 'write rooms: or in: so that they name one, or take the set out';
      return [
        problemAt(origin, path, 'set-nowhere', `no room has the finish set '${set.name}'`, {
          fix,
          severity: 'warning',
        }),
      ];
    }
    return set.selections.flatMap(({ at, category }, place) => {
      const missing = [at].flat().filter((name) => !mine.some((room) => hasPlace(name, room)));
      if (missing.length === 0) return [];
      const message = `no room of '${set.name}' has the place ${joinWords(
        missing.map((name) => `'${name}'`),
        'or',
      )} for its ${category}`;
      const fix = `leave it out; its rooms are ${joinWords(mine.map(({ slug }) => slug))}`;
      return [
        problemAt(origin, [...path, 'selections', place, 'at'], 'set-nowhere', message, { fix, severity: 'warning' }),
      ];
    });
  });
}
