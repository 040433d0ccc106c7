import { problemAt, type Problem } from '../../../base/problem/index.js';
import type { Opening } from '../../model/index.js';
import type { Draft } from '../draft.js';
import type { RoomDraft } from '../read-room.js';
import type { Side } from '../read-shape.js';
import { some, unknown } from './unknown.js';

/** What a wall says is on its other side is a room of the house that says the same of one of its walls, and the openings in
 *  the wall lead there. */
export function besideReferences(draft: Draft): readonly Problem[] {
  return draft.rooms.flatMap((room) =>
    (room.sides ?? []).flatMap((side) => [
      ...(side.beside ?? []).flatMap((other) => besideProblems(other, side, room, draft)),
      ...leadsElsewhere(side, room),
    ]),
  );
}

function besideProblems(other: string, side: Side, room: RoomDraft, { rooms, slugs }: Draft): readonly Problem[] {
  const { origin } = room.record;
  const { name, openTo, besidePath: path } = side;
  if (!slugs.rooms.has(other)) {
    const message = `'${name}' is beside a room '${other}', which there is not`;
    const lives = 'Rooms live in content/rooms/';
    return [unknown(origin, path, { code: 'room-unknown', message, name: other, among: slugs.rooms, lives })];
  }
  if (other === room.slug) {
    const message = `'${name}' is beside its own room`;
    return [problemAt(origin, path, 'beside-unsuited', message, { fix: 'write the room on the other side' })];
  }
  if (openTo !== undefined) {
    const message = `'${name}' is beside ${other}, but no wall stands there: it is open to ${openTo}`;
    return [problemAt(origin, path, 'beside-unsuited', message, { fix: 'leave out beside, or the open side' })];
  }
  const there = rooms.find(({ slug }) => slug === other);
  if (!there?.sides || there.sides.some((one) => roomsBeside(one, there.openings).includes(room.slug))) return [];
  const message = `'${name}' is beside ${there.name}, and no wall of ${there.name} says that it is beside ${room.name}`;
  const fix = `in ${there.record.origin.file}, write beside: ${room.slug} at its wall, or leave it out here`;
  return [problemAt(origin, path, 'beside-one-sided', message, { fix, severity: 'warning' })];
}

/** A door of the wall leads to a room that it is not beside, or to the outside. */
function leadsElsewhere({ name, beside, besidePath }: Side, { openings, record }: RoomDraft): readonly Problem[] {
  if (!beside) return [];
  return openings.flatMap((opening) => {
    const to = leadsTo(opening);
    if (opening.wall !== name || beside.includes(to)) return [];
    const message = `'${name}' is beside ${some(beside)}, and ${opening.mark} in it leads to ${to}`;
    const fix =
      to === 'outside'
        ? 'part the wall where the room on its other side ends, or leave out beside'
        : `add ${to} to beside, or mend where ${opening.mark} leads`;
    return [problemAt(record.origin, besidePath, 'beside-disagrees', message, { fix })];
  });
}

/** The rooms on the other side of a wall: those its record names, and those that its openings lead to. */
export function roomsBeside({ name, beside = [] }: Side, openings: readonly Opening[]): readonly string[] {
  const led = openings.filter(({ wall }) => wall === name).map(leadsTo);
  return [...new Set([...beside, ...led])];
}

function leadsTo(opening: Opening): string {
  return opening.by === 'own' ? opening.to : opening.recordedIn;
}
