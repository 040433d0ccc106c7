import { selectionId, type Records, type Room, type Selection } from '../model/index.js';

/** Do two readings of a house differ in nothing but who chose what for these selections, when and by which slip? Each record is held against
 *  itself with all that it says, its prose too. Where a selection is written may change: one of a finish set may now stand in its room's record. */
export function onlyChose(before: Records, after: Records, chosen: ReadonlySet<string>): boolean {
  return statement(before, chosen) === statement(after, chosen);
}

/** All that the records say, but for these choices, as text. Without the texts themselves, in which the choices stand. */
function statement({ sources: _, rooms, ...others }: Records, chosen: ReadonlySet<string>): string {
  return JSON.stringify({ ...others, rooms: rooms.map((room) => roomWithout(room, chosen)) }, withoutPlaces);
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
