import { selectionId, type Records, type Room, type Selection } from '../model/index.js';

/** Do two readings of a house differ in nothing but who chose what for these selections, when and by which slip? Each record is held against
 *  itself with all that it says, its prose too. Where a selection is written may change: one of a finish set may now stand in its room's record. */
export function onlyChose(before: Records, after: Records, chosen: ReadonlySet<string>): boolean {
  const [was, is] = [others(before), others(after)];
  const keys = Object.keys({ ...was, ...is });
  return (
    keys.every((key) => saysSame(was[key], is[key])) &&
    before.rooms.length === after.rooms.length &&
    before.rooms.every((room, index) => isSameRoom(room, after.rooms[index], chosen))
  );
}

/** Without the texts themselves, in which the choices stand. */
function others({ sources: _, rooms: __, ...rest }: Records): Readonly<Record<string, unknown>> {
  return rest;
}

/** Records that both readings have are the same objects. */
function saysSame(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((each, index) => saysSame(each, other[index]));
  return statement(one) === statement(other);
}

function isSameRoom(one: Room, other: Room | undefined, chosen: ReadonlySet<string>): boolean {
  if (one === other) return true;
  return other !== undefined && statement(roomWithout(one, chosen)) === statement(roomWithout(other, chosen));
}

function statement(value: unknown): string {
  return JSON.stringify(value, withoutPlaces);
}

function roomWithout({ selections, ...room }: Room, chosen: ReadonlySet<string>): object {
  const said = selections.map((selection): readonly [string, object] => {
    const id = selectionId(room.slug, selection);
    return [id, chosen.has(id) ? withoutChoice(selection) : selection];
  });
  return { ...room, selections: Object.fromEntries(said.toSorted(([a], [b]) => (a < b ? -1 : 1))) };
}

const ofChoice: readonly string[] = [
  'chosen',
  'chosenOn',
  'chosenBy',
  'slip',
  'finishSet',
] satisfies (keyof Selection)[];

function withoutChoice(selection: Selection): object {
  return Object.fromEntries(Object.entries(selection).filter(([key]) => !ofChoice.includes(key)));
}

/** Where something is written is not what it says. */
function withoutPlaces(key: string, value: unknown): unknown {
  const isPlace = (key === 'origin' && typeof value === 'object') || (key === 'path' && Array.isArray(value));
  return isPlace ? undefined : value;
}
