import { joinWords } from '../../base/units/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { knownAround, wallPath, type Shape, type WallAround } from '../model/index.js';
import type { Surroundings } from './faces.js';
import type { Placed } from './placed.js';

/** Walls whose record says that a room is beside them which stands elsewhere, as the group is laid out. Rooms that are not in the group may stand
 *  anywhere; what stands behind an arc is not laid out. */
export function besideProblems(
  group: readonly Placed[],
  surroundings: ReadonlyMap<string, Surroundings>,
): readonly Problem[] {
  const names = new Map(group.map(({ room }) => [room.slug, room.record.name]));
  return group.flatMap(({ room: { slug, record, measure } }) =>
    measure.walls.flatMap(({ id, arc, beside = [] }) => {
      const lies = surroundings.get(slug);
      const found = lies && knownAround(lies)?.walls.find(({ wall }) => wall === id);
      if (arc || !found) return [];
      const behind = roomsBehind(found);
      const elsewhere = beside.filter((other) => names.has(other) && !behind.includes(other));
      if (elsewhere.length === 0) return [];
      const nameOf = (other: string): string => names.get(other) ?? other;
      const stands =
        behind.length === 0
          ? 'no room stands behind it'
          : `${joinWords(behind.map(nameOf))} ${behind.length === 1 ? 'stands' : 'stand'} behind it`;
      const message = `'${id}' is beside ${joinWords(elsewhere.map(nameOf))}, and as the house is laid out ${stands}`;
      const fix =
        'quantities go by the layout: mend beside or leave it out, or mend the tape that puts the rooms there';
      const path = besidePath(record.shape, id);
      return [problemAt(record.origin, path, 'beside-elsewhere', message, { fix, severity: 'warning' })];
    }),
  );
}

function roomsBehind({ stretches, otherLevels = [] }: WallAround): readonly string[] {
  return [...new Set([...stretches, ...otherLevels].flatMap(({ behind }) => behind?.room ?? []))];
}

function besidePath(shape: Shape, wall: string): Path {
  return shape.by === 'size' ? ['beside', wall] : [...wallPath(shape, wall), 'beside'];
}
