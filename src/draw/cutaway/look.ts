import type { SeenFinish } from '../../core/book/index.js';
import type { Facet } from './facet.js';

/** How a facet or what lies on it is to be drawn. */
export type Look =
  /** Nothing is recorded for it. */
  | { readonly is: 'bare' }
  /** Still to be decided: what of it is, and what is not. */
  | {
      readonly is: 'open';
      readonly place: string;
      readonly names: readonly string[];
      readonly known?: readonly string[];
    }
  | {
      readonly is: 'finish';
      readonly place: string;
      readonly main: SeenFinish;
      readonly under?: SeenFinish;
      readonly names: readonly string[];
      /** What lies under it and is to be decided: its color is known, its texture is not. */
      readonly toCome?: readonly string[];
    };

const bare: Look = { is: 'bare' };

/** A finish in words: each product by its name, which may have commas of its own, and whatever is to be decided called so. */
export function finishWords(look: Exclude<Look, { is: 'bare' }>): string {
  const { is, names } = look;
  const [known, open] = is === 'open' ? [look.known ?? [], names] : [names, look.toCome ?? []];
  return [...known, ...open.map(openWords)].join(' + ');
}

export function openWords(name: string): string {
  return `${name}: to be decided`;
}

/** Is any of what is seen to be decided? */
export function hasOpen(look: Look): boolean {
  return look.is === 'open' || (look.is === 'finish' && look.toCome !== undefined);
}

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

/** A surface hides what is under it, and a coat on it is named with it; a coat alone gives its color to the texture under it, or is plain while that is
 *  to be decided. */
function lookAt(here: readonly SeenFinish[], place: string): Look {
  const surface = here.findLast(({ role }) => role === 'surface');
  const coat = here.findLast(({ role }) => role === 'coat');
  const texture = here.findLast(({ role }) => role === 'texture');
  const shown = (surface ? [surface, coat] : [texture, coat]).filter((one) => one !== undefined);
  const main = surface ?? coat ?? texture;
  if (!main) return bare;
  const open = shown.filter(({ option }) => option === undefined);
  const seenOpen = surface ? open.filter((one) => one === surface) : open;
  if (!surface && coat?.option !== undefined && seenOpen.length > 0)
    return { is: 'finish', place, main: coat, names: [coat.name], toCome: seenOpen.map(({ name }) => name) };
  const named = shown.filter(({ option }) => option !== undefined);
  const known = surface ? [] : named.map(({ name }) => name);
  if (seenOpen.length > 0) return { is: 'open', place, names: seenOpen.map(({ name }) => name), known };
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
