import type { Opening, Selection } from '../../model/index.js';
import { problemAt, type Path, type Problem } from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';
import { placeWords } from '../read-shape.js';
import type { RoomDraft } from '../read-room.js';
import { some, unknown } from './unknown.js';

/** Places of selections are in their room, and each has one selection of a category. Faces and runs of a feature and
 *  steps of the ceiling are known when they are measured; here only the feature itself is. */
export function placeReferences({ rooms }: Draft): readonly Problem[] {
  return rooms.flatMap((room) => {
    const taken = new Map<string, string>();
    return room.selections.flatMap((selection) =>
      selection.at.flatMap((place, index) => {
        const path = placePath(selection, room, index);
        return unknownPlace(place, path, room) ?? twiceProblems(place, selection, { path, room, rooms, taken });
      }),
    );
  });
}

/** A single place is written without a list. */
function placePath({ path }: Selection, { record }: RoomDraft, index: number): Path {
  const written = record.raw.selections?.[Number(path[1])]?.at;
  return Array.isArray(written) ? [...path, 'at', index] : [...path, 'at'];
}

/** Was a place said to be none of the room? */
export function isUnknownPlace(place: string, path: Path, room: RoomDraft): boolean {
  return unknownPlace(place, path, room)?.length !== undefined;
}

function unknownPlace(place: string, path: Path, room: RoomDraft): readonly Problem[] | undefined {
  const { sides, marks, featureIds, record } = room;
  if (placeWords.some((word) => word === place)) return undefined;
  const [feature = ''] = place.split('/');
  if (marks.has(place) || featureIds.has(feature) || place.startsWith('step-')) return undefined;
  // Without a shape the walls are not known, and the place may be one of them; so with openings and features.
  if (!sides || !room.knowsMarks || !room.knowsFeatures) return [];
  const side = sides.find(({ name }) => name === place);
  if (side?.openTo !== undefined) {
    const message = `no wall stands at '${place}': it is open to ${side.openTo}`;
    return [problemAt(record.origin, path, 'wall-open', message, { fix: 'leave it out' })];
  }
  if (side) return undefined;
  const own = [...sides.map(({ name }) => name), ...marks, ...featureIds];
  const message = `${room.name} has no place '${place}'`;
  const several = place.split(/\s*,\s*|\s+and\s+/u);
  const isList = several.length > 1 && several.every((one) => [...own, ...placeWords].includes(one));
  const lives = isList
    ? `write several as a list: [${several.join(', ')}]`
    : `Places here: ${some([...own, ...placeWords])}`;
  return [
    unknown(record.origin, path, {
      code: 'place-unknown',
      message,
      name: place,
      among: [...placeWords, ...own],
      lives,
    }),
  ];
}

function twiceProblems(
  place: string,
  { category, except = [] }: Selection,
  {
    path,
    room,
    rooms,
    taken,
  }: { path: Path; room: RoomDraft; rooms: readonly RoomDraft[]; taken: Map<string, string> },
): readonly Problem[] {
  const out = new Set(except.flatMap((one) => ('from' in one ? [] : spread(one.place, room, rooms))));
  const each = spread(place, room, rooms)
    .filter((one) => !out.has(one))
    .map((one) => ({ one, name: `${category} ${one}` }));
  const double = each.find(({ name }) => taken.has(name));
  const first = double && taken.get(double.name);
  for (const { name } of each) if (!taken.has(name)) taken.set(name, place);
  if (!double) return [];
  const through =
    double.one === place && first === place ? '' : `, as part of '${first === double.one ? place : (first ?? place)}'`;
  // In a finish set the line does not tell which room it is.
  const where = room.record.origin.elsewhere?.(path) ? ` in ${room.name}` : '';
  const message = `'${double.one}' has two selections of ${category}${where}${through}`;
  return [
    problemAt(room.record.origin, path, 'selection-duplicate', message, {
      fix: 'keep one selection of a category for a place',
    }),
  ];
}

/** The single places that a word for several means. */
function spread(place: string, { sides = [], openings }: RoomDraft, rooms: readonly RoomDraft[]): readonly string[] {
  switch (place) {
    case 'base':
    case 'walls':
      return sides.filter(({ openTo }) => openTo === undefined).map(({ name }) => name);
    // Which walls these are is known when the house is laid out, and so is what they have in common with others.
    case 'inside-walls':
    case 'outside-walls':
    case 'roof-ceiling':
      return [];
    case 'openings':
      return openings.map(({ mark }) => mark);
    case 'doors':
    case 'windows':
      return openings.filter((opening) => `${kindOf(opening, rooms) ?? ''}s` === place).map(({ mark }) => mark);
    default:
      return [place];
  }
}

/** What an opening is; of one seen from here, as the room says that records it. */
function kindOf(opening: Opening, rooms: readonly RoomDraft[]): string | undefined {
  if (opening.by === 'own') return opening.kind;
  const there = rooms.find(({ slug }) => slug === opening.recordedIn);
  const own = there?.openings.find(({ by, mark }) => by === 'own' && mark === opening.mark);
  return own?.by === 'own' ? own.kind : undefined;
}
