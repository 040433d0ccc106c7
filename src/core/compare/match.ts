import type { Book, BookOption, BookRoom, BookSelection } from '../book/index.js';

/** Pairs of what is the same on both sides; either may be missing. */
export type Pair<T> =
  | { readonly from: T; readonly to: T }
  | { readonly from: T; readonly to?: undefined }
  | { readonly from?: undefined; readonly to: T };

/** Rooms are the same by slug; one that was renamed is found by its number, and then by being the same place on the same
 *  level with the same outline. */
export function matchRooms(from: Book, to: Book): Pair<BookRoom>[] {
  return matchBy(from.rooms, to.rooms, [
    (room) => room.slug,
    (room) => room.number,
    (room) => `${room.level} ${JSON.stringify(room.measure.plan)}`,
  ]);
}

/** Options are the same by id; one that was renamed is found by maker and model within its category. */
export function matchOptions(from: Book, to: Book): Pair<BookOption>[] {
  return matchBy(from.options, to.options, [
    (option) => option.id,
    (option) => `${option.category} ${option.maker ?? ''} ${option.model ?? option.name}`,
  ]);
}

/** Selections of two matched rooms: by category and the same places, then by category and a place in common. */
export function matchSelections(from: readonly BookSelection[], to: readonly BookSelection[]): Pair<BookSelection>[] {
  const places = (selection: BookSelection) => selection.places.map((place) => place.id).sort();
  return matchBy(from, to, [
    (selection) => `${selection.category} ${places(selection).join(' ')}`,
    (selection) => `${selection.category} ${places(selection)[0] ?? ''}`,
    (selection) => selection.category,
  ]);
}

/** Pairs by the first key, then pairs what is left by the next; a key that two on one side share pairs neither. Kept in the
 *  order of the newer side, with what is gone at the end. */
function matchBy<T>(from: readonly T[], to: readonly T[], keys: readonly ((item: T) => string)[]): Pair<T>[] {
  const partner = new Map<T, T>();
  const taken = new Set<T>();
  for (const key of keys) {
    const left = uniqueBy(
      from.filter((item) => !taken.has(item)),
      key,
    );
    const right = uniqueBy(
      to.filter((item) => !partner.has(item)),
      key,
    );
    for (const [name, item] of right) {
      const match = left.get(name);
      if (match === undefined) continue;
      partner.set(item, match);
      taken.add(match);
    }
  }
  const kept = to.map((item): Pair<T> => {
    const match = partner.get(item);
    return match === undefined ? { to: item } : { from: match, to: item };
  });
  return [...kept, ...from.filter((item) => !taken.has(item)).map((item): Pair<T> => ({ from: item }))];
}

function uniqueBy<T>(items: readonly T[], key: (item: T) => string): Map<string, T> {
  const found = new Map<string, T>();
  const twice = new Set<string>();
  for (const item of items) {
    const name = key(item);
    if (found.has(name)) twice.add(name);
    found.set(name, item);
  }
  for (const name of twice) found.delete(name);
  return found;
}
