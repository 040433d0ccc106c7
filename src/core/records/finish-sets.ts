import type { Elsewhere, Origin, Path } from '../../base/problem/index.js';
import type { Checked } from './checked-record.js';
import type { FrontMatter } from './front-matter.js';
import type { RawFinishSet, RawHouse } from './raw/house.js';
import type { RawRoom, RawSelection } from './raw/room.js';
import type { RoomDraft } from './read-room.js';
import { placeWords } from './read-shape.js';

/** A finish set with its place among those of the house. */
export interface PlacedSet {
  readonly set: RawFinishSet;
  readonly index: number;
  readonly origin: Origin;
}

/** The house's finish sets; none where they are not sound. */
export function finishSets({ raw, origin, sound }: Checked<RawHouse>): readonly PlacedSet[] {
  if (!sound(['finish-sets'])) return [];
  return (raw['finish-sets'] ?? []).map((set, index) => ({ set, index, origin }));
}

/** Does a room have the set? */
export function hasSet({ set: { rooms, in: uses } }: PlacedSet, { slug, record: { raw } }: RoomDraft): boolean {
  if (!rooms && !uses) return true;
  return (rooms?.includes(slug) ?? false) || (uses?.includes(raw.use) ?? false);
}

interface Written {
  readonly raw: RawSelection;
  /** Where it is written; absent: in the room, at its place. */
  readonly from?: Elsewhere;
  /** Where who chose it, and when, is written for many: key by key. */
  readonly defaults: ReadonlyMap<string, Elsewhere>;
}

const given = ['chosen-on', 'chosen-by'] as const;

/** A room's record as if its finish sets were written in it, after what it selects itself, and as if each of its selections said who
 *  chose and when. `room` is the record as it was read without them. The same front matter where there is nothing to add. */
export function withSets(front: FrontMatter, room: RoomDraft, sets: readonly PlacedSet[]): FrontMatter {
  const { record } = room;
  if (!record.sound(['selections']) || !record.sound(['chosen-on']) || !record.sound(['chosen-by'])) return front;
  const own = (record.raw.selections ?? []).map((raw): Written =>
    withDefaults(raw, record.raw, { origin: front.origin, path: [] }),
  );
  const mine = sets.filter((one) => hasSet(one, room));
  const added = mine.flatMap((one) => selectionsOf(one, room));
  if (added.length === 0 && own.every(({ defaults }) => defaults.size === 0)) return front;
  const all = [...own, ...added];
  return {
    ...front,
    data: { ...front.data, selections: all.map(({ raw }) => raw) },
    origin: originOf(front.origin, all),
  };
}

function selectionsOf({ set, index, origin }: PlacedSet, room: RoomDraft): readonly Written[] {
  const path = ['finish-sets', index];
  return set.selections.flatMap((raw, place): readonly Written[] => {
    const at = [raw.at].flat().filter((name) => hasPlace(name, room) && !selects(room, name, raw.category));
    const [first] = at;
    if (first === undefined) return [];
    const written = withDefaults({ ...raw, at: at.length === 1 ? first : at }, set, { origin, path });
    return [{ ...written, from: { origin, path: [...path, 'selections', place], from: set.name } }];
  });
}

/** Does the room have a place of the name? One whose shape is wrong may have any. */
export function hasPlace(name: string, { sides, marks, featureIds, openings, record: { raw } }: RoomDraft): boolean {
  if (name === 'risers') return raw.floor !== undefined;
  if (name === 'openings') return marks.size > 0;
  if (name === 'doors' || name === 'windows')
    return openings.length < marks.size || openings.some((one) => one.by !== 'own' || `${one.kind}s` === name);
  if (placeWords.some((word) => word === name) || name.startsWith('step-')) return true;
  const [feature = ''] = name.split('/');
  return (
    !sides ||
    sides.some((side) => side.name === name && side.openTo === undefined) ||
    marks.has(name) ||
    featureIds.has(feature)
  );
}

/** Does the room itself select something of the category for the place, by the same word? */
function selects({ record: { raw } }: RoomDraft, place: string, category: string): boolean {
  return (raw.selections ?? []).some((own) => own.category === category && [own.at].flat().includes(place));
}

/** A choice that does not say who made it, or when, with what is said for many. */
function withDefaults(
  raw: RawSelection,
  said: Pick<RawRoom, 'chosen-on' | 'chosen-by'>,
  { origin, path }: { readonly origin: Origin; readonly path: Path },
): Written {
  const keys = raw.chosen === undefined ? [] : given.filter((key) => raw[key] === undefined && said[key] !== undefined);
  return {
    raw: { ...raw, ...Object.fromEntries(keys.map((key) => [key, said[key]])) },
    defaults: new Map(keys.map((key) => [key, { origin, path: [...path, key] }])),
  };
}

function originOf(origin: Origin, selections: readonly Written[]): Origin {
  const elsewhere = ([list, index, ...rest]: Path): Elsewhere | undefined => {
    const one = list === 'selections' ? selections[Number(index)] : undefined;
    const [key] = rest;
    const given = one?.defaults.get(String(key));
    if (given) return one?.from ? { ...given, from: one.from.from ?? '' } : given;
    // Of its places the room may have some.
    const inside = key === 'at' ? [key] : rest;
    return one?.from && { ...one.from, path: [...one.from.path, ...inside] };
  };
  const written = (path: Path): Elsewhere => elsewhere(path) ?? { origin, path };
  return {
    ...origin,
    at: (path) => written(path).origin.at(written(path).path),
    key: (path) => written(path).origin.key(written(path).path),
    elsewhere,
  };
}
