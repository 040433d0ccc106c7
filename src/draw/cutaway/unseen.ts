import type { SeenFinish } from '../../core/book/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import type { Decal } from './facet.js';
import { keyOf, type Key } from './keys.js';
import type { Looks } from './look.js';
import type { Laid } from './order.js';

interface Shown {
  readonly laid: readonly Laid[];
  readonly decals: readonly Decal[];
  readonly looks: Looks;
  readonly keys: readonly Key[];
  readonly measure: RoomMeasure;
}

/** Finishes that nothing of a picture shows: they are on what was taken away, or have no recorded place in the room. */
export function unseenOf(seen: readonly SeenFinish[], shown: Shown): readonly Key[] {
  const { laid, decals, looks, keys, measure } = shown;
  const drawn = new Set([...laid.flatMap(({ facet }) => facet.places), ...decals.map(({ place }) => place)]);
  const groups = new Map<string, { finish: string; isOpen: boolean; places: string[] }>();
  const add = (finish: string, isOpen: boolean, place: string): void => {
    const name = `${finish} ${isOpen}`;
    const group = groups.get(name) ?? { finish, isOpen, places: [] };
    groups.set(name, group);
    if (!group.places.includes(place)) group.places.push(place);
  };
  for (const one of seen) {
    const isSurface = one.role === 'surface' || one.role === 'coat' || one.role === 'texture';
    if (one.places.some((place) => drawn.has(place))) continue;
    for (const place of one.places) {
      // What lies on top is named, with its coat; what it hides is not seen in the room either.
      const look = isSurface ? looks.surface([place]) : undefined;
      if (look?.is === 'bare') continue;
      add(look ? look.names.join(', ') : one.name, look ? look.is === 'open' : one.option === undefined, place);
    }
  }
  return [...groups.values()]
    .map((group) => keyOf(group, measure))
    .filter(({ finish }) => !keys.some((key) => key.finish === finish));
}
