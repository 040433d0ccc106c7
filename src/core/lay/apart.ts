import { problemAt, type Problem } from '../../base/problem/index.js';
import { joinWords } from '../../base/units/index.js';
import type { LayRoom } from './laid-room.js';
import type { Laying } from './lay-rooms.js';

/** Rooms that nothing joins to the greatest group. */
export function apartProblems({ rooms, groups }: Laying): readonly Problem[] {
  const [, ...apart] = groups;
  const spoken = spokenFor(groups, rooms);
  if (apart.length > 1 && groups.every(({ length }) => length === 1)) return spoken.size > 0 ? [] : allApart(rooms);
  return apart.flatMap((group): readonly Problem[] => {
    const [first, ...others] = group.map((index) => (rooms[index] as LayRoom).record);
    // A door or an open side that one of two rooms records, or a wall beside another, is told where it is written.
    if (!first || spoken.has(group)) return [];
    const names = joinWords([first, ...others].map(({ name }) => name));
    const message = `no door, open side or well joins ${names} to the rest of the house: drawn apart`;
    const fix = 'record the door between them, or where it stands with place: { from: ROOM, x: …, y: … }';
    return [problemAt(first.origin, ['name'], 'room-apart', message, { fix, severity: 'notice' })];
  });
}

/** Rooms of which none is joined to another, as a house begins, are told once. */
function allApart(rooms: readonly LayRoom[]): readonly Problem[] {
  const [first] = rooms;
  if (!first) return [];
  const message = `no door, open side or well joins any of the ${rooms.length} rooms: each is drawn apart`;
  const fix = 'record the doors between them under openings, each with the room that it leads to';
  return [problemAt(first.record.origin, ['name'], 'room-apart', message, { fix, severity: 'notice' })];
}

/** Groups with a room that the record of a room in another group speaks of, and those with that room. */
function spokenFor(groups: readonly (readonly number[])[], rooms: readonly LayRoom[]): ReadonlySet<readonly number[]> {
  const groupOf = new Map(groups.flatMap((group) => group.map((index) => [(rooms[index] as LayRoom).slug, group])));
  const pairs = rooms.flatMap((room) => namedIn(room).map((slug) => [groupOf.get(room.slug), groupOf.get(slug)]));
  return new Set(pairs.flatMap(([own, other]) => (own && other && own !== other ? [own, other] : [])));
}

function namedIn({ measure, record }: LayRoom): readonly string[] {
  return [
    ...measure.openings.map(({ to }) => to),
    ...measure.walls.flatMap(({ beside = [], openTo = [] }) => beside.concat(openTo)),
    ...record.ceiling.flatMap(({ openAbove }) => openAbove?.to ?? []),
  ];
}
