import type { SeenFinish } from '../../core/book/index.js';
import type { Facet } from './facet.js';

/** How a facet or what lies on it is to be drawn. */
export type Look =
  /** Nothing is recorded for it. */
  | { readonly is: 'bare' }
  /** Still to be decided. */
  | { readonly is: 'open'; readonly place: string; readonly names: readonly string[] }
  | {
      readonly is: 'finish';
      readonly place: string;
      readonly main: SeenFinish;
      readonly under?: SeenFinish;
      readonly names: readonly string[];
    };

const bare: Look = { is: 'bare' };

/** Finds what is seen of a place. */
export interface Looks {
  /** Of the first of the places that something covers. */
  surface(places: readonly string[]): Look;
  as(role: SeenFinish['role'], place: string): SeenFinish | undefined;
}

export function looksOf(seen: readonly SeenFinish[]): Looks {
  const surfaces = seen.filter(({ role }) => role === 'surface' || role === 'coat' || role === 'texture');
  return {
    surface: (places) => {
      for (const place of places) {
        const found = lookAt(
          surfaces.filter((one) => one.places.includes(place)),
          place,
        );
        if (found.is !== 'bare') return found;
      }
      return bare;
    },
    as: (role, place) => seen.findLast((one) => one.role === role && one.places.includes(place)),
  };
}

/** A surface hides what is under it, and a coat on it is named with it; a coat alone gives its color to the texture under it. */
function lookAt(here: readonly SeenFinish[], place: string): Look {
  const surface = here.findLast(({ role }) => role === 'surface');
  const coat = here.findLast(({ role }) => role === 'coat');
  const texture = here.findLast(({ role }) => role === 'texture');
  const shown = (surface ? [surface, coat] : [texture, coat]).filter((one) => one !== undefined);
  const main = surface ?? coat ?? texture;
  if (!main) return bare;
  const open = shown.filter(({ option }) => option === undefined);
  const seenOpen = surface ? open.filter((one) => one === surface) : open;
  if (seenOpen.length > 0) return { is: 'open', place, names: seenOpen.map(({ name }) => name) };
  const named = shown.filter(({ option }) => option !== undefined);
  return {
    is: 'finish',
    place,
    main,
    ...(!surface && coat && texture && { under: texture }),
    names: named.map(({ name }) => name),
  };
}

/** What a facet shows. */
export function lookOf({ role, places }: Facet, looks: Looks): Look {
  if (role === 'finish') return looks.surface(places);
  if (role === 'frame') return partLook('trim', places, looks) ?? looks.surface(places.slice(1));
  if (role === 'door') return partLook('door', places, looks) ?? bare;
  return role === 'rail' ? (partLook('railing', places, looks) ?? bare) : bare;
}

export function partLook(role: SeenFinish['role'], places: readonly string[], looks: Looks): Look | undefined {
  for (const place of places) {
    const found = looks.as(role, place);
    if (!found) continue;
    const { name, option } = found;
    return option === undefined
      ? { is: 'open', place, names: [name] }
      : { is: 'finish', place, main: found, names: [name] };
  }
  return undefined;
}
