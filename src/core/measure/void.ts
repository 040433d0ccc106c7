import { areaOf, intersect, patchArea, patchFrom, ringInFeet } from '../../base/geometry/index.js';
import type { Cut } from '../feature/index.js';
import type { Room, VoidShape } from '../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import type { Plan } from './plan.js';
import { printArea, slackAround } from './tape.js';

/** Holes of the plan, for floor and ceiling alike: there the room is not. */
export function voidCuts(room: Room, plan: Plan): Outcome<readonly Cut[]> {
  const value = room.voids.map(({ name, corners }) => ({
    what: name,
    of: name,
    kind: 'void' as const,
    patch: patchFrom(ringInFeet(corners)),
  }));
  const problems = value.flatMap((cut, i) => voidProblems(cut, room.voids[i] as VoidShape, i, room, plan));
  return { value, problems };
}

function voidProblems({ patch }: Cut, { name }: VoidShape, index: number, room: Room, plan: Plan): readonly Problem[] {
  const area = patchArea(patch);
  const path = ['voids', index];
  const outside = area - areaOf(intersect([plan.patch], patch));
  if (outside <= slackAround(patch)) return [];
  const message = `${printArea(outside)} of the ${printArea(area)} of void '${name}' lie outside the room`;
  const fix = "x and y are from the south-west corner of the room's bounding box";
  return [problemAt(room.origin, path, 'void-outside-room', message, { fix })];
}
