import { problemAt, type Problem } from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';
import type { RoomDraft } from '../read-room.js';
import { some, unknown } from './unknown.js';

/** What a room says of how it stands in the house: types of its walls, walls out of line, where it stands from another room. */
export function layingReferences(draft: Draft): readonly Problem[] {
  return draft.rooms.flatMap((room) => [
    ...typeProblems(room, draft),
    ...jogProblems(room),
    ...placeProblems(room, draft),
  ]);
}

function typeProblems(room: RoomDraft, { house }: Draft): readonly Problem[] {
  const { whole, record } = room;
  const types = (house?.whole?.wallTypes ?? []).map(({ id }) => id);
  return Object.entries(whole?.wallTypes ?? {}).flatMap(([wall, type]): readonly Problem[] => {
    const path = ['wall-types', wall];
    const walls = wallUnknown(room, wall, path);
    if (types.includes(type) || !house?.whole) return walls;
    const message = `the house has no wall type '${type}'`;
    const lives =
      types.length === 0 ? 'Wall types are recorded under wall-types in house.md' : `Wall types are ${some(types)}`;
    return [
      ...walls,
      unknown(record.origin, path, { code: 'wall-type-unknown', message, name: type, among: new Set(types), lives }),
    ];
  });
}

function jogProblems(room: RoomDraft): readonly Problem[] {
  return (room.whole?.jogs ?? []).flatMap((wall, index) => wallUnknown(room, wall, ['jogs', index]));
}

function wallUnknown(
  { sides, name, record }: RoomDraft,
  wall: string,
  path: readonly (string | number)[],
): readonly Problem[] {
  if (!sides || sides.some((side) => side.name === wall)) return [];
  const among = new Set(sides.map((side) => side.name));
  const message = `${name} has no wall '${wall}'`;
  return [
    unknown(record.origin, path, {
      code: 'wall-unknown',
      message,
      name: wall,
      among,
      lives: `Walls are ${some(among)}`,
    }),
  ];
}

function placeProblems({ slug, whole, record: { origin } }: RoomDraft, { slugs }: Draft): readonly Problem[] {
  const from = whole?.place?.from;
  if (from === undefined) return [];
  const path = ['place', 'from'];
  if (from === slug) {
    const fix = 'name another room, from whose south-west corner it is measured';
    return [problemAt(origin, path, 'room-unknown', 'the room is placed from itself', { fix })];
  }
  if (slugs.rooms.has(from)) return [];
  const message = `the room is placed from a room '${from}', which there is not`;
  const lives = 'Rooms live in content/rooms/';
  return [unknown(origin, path, { code: 'room-unknown', message, name: from, among: slugs.rooms, lives })];
}
