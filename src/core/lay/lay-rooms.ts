import type { Joint } from './joint.js';
import type { LayRoom } from './laid-room.js';
import { facingPairs, isUsual, type Pair } from './pair.js';
import { groupsOf, placeRooms, type Placing } from './place-rooms.js';

/** Rooms placed by what joints and walls that face each other say. */
export interface Laying extends Placing {
  readonly rooms: readonly LayRoom[];
  readonly joints: readonly Joint[];
  /** Rooms that hold together, by index. */
  readonly groups: readonly (readonly number[])[];
  /** Whether two of them do. */
  readonly together: (a: number, b: number) => boolean;
  /** Pairs of walls that stand as they should, which hold the rooms too. */
  readonly pairs: readonly Pair[];
}

/** Each step lets pairs in that are no further from their thickness than this, in feet, once those of the step before have told where
 *  the rooms stand. */
const tolerances = [24, 6, 2, 1].map((inches) => inches / 12);

/** The last of them: a wall is as thick as it should be. */
export const thicknessPlay = 1 / 12;

export function layRooms(rooms: readonly LayRoom[], joints: readonly Joint[]): Laying {
  const groups = groupsOf(rooms, joints);
  const groupOf = groupLookUp(rooms, groups);
  const together = (a: number, b: number): boolean => groupOf[a] === groupOf[b];
  let placing = placeRooms(rooms, groups, joints, []);
  let pairs: readonly Pair[] = [];
  for (const tolerance of tolerances) {
    pairs = facingPairs(rooms, placing.at, { tolerance, together }).filter(isUsual);
    if (pairs.length === 0) continue;
    placing = placeRooms(rooms, groups, joints, pairs);
  }
  return { ...placing, rooms, joints, groups, together, pairs };
}

function groupLookUp(rooms: readonly LayRoom[], groups: readonly (readonly number[])[]): readonly number[] {
  const found = rooms.map(() => 0);
  groups.forEach((group, index) => group.forEach((room) => (found[room] = index)));
  return found;
}
