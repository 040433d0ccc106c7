import type { SeenFinish } from '../../core/book/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import type { Decal } from './facet.js';
import { keyOf, type Key } from './keys.js';
import { finishWords, hasOpen, openWords, type Looks } from './look.js';
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
  // A base whose height is not known runs along walls that are drawn.
  const based = new Set(decals.filter(({ role }) => role === 'base').map(({ place }) => place));
  const groups = new Map<string, Parameters<typeof keyOf>[0] & { readonly places: string[] }>();
  const add = (part: 'surface' | 'base', finish: string, isOpen: boolean, place: string): void => {
    const name = `${part} ${finish}`;
    const group = groups.get(name) ?? { part, finish, isOpen, places: [] };
    groups.set(name, group);
    if (!group.places.includes(place)) group.places.push(place);
  };
  for (const one of seen) {
    const isSurface = one.role === 'surface' || one.role === 'coat' || one.role === 'texture';
    if (one.places.some((place) => (one.role === 'base' ? based : drawn).has(place))) continue;
    for (const place of one.places) {
      // What lies on top is named, with its coat; what it hides is not seen in the room either.
      const look = isSurface ? looks.surface([place]) : undefined;
      if (look?.is === 'bare') continue;
      const isOpen = look ? hasOpen(look) : one.option === undefined;
      const finish = look ? finishWords(look) : one.name;
      add(one.role === 'base' ? 'base' : 'surface', look || !isOpen ? finish : openWords(finish), isOpen, place);
    }
  }
  return [...groups.values()]
    .map((group) => keyOf(group, measure))
    .filter(({ finish }) => !keys.some((key) => key.finish === finish));
}
