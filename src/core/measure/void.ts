import {
  bounds,
  distance,
  edges,
  findCrossing,
  lengthOf,
  patchFrom,
  pointOf,
  pointsOf,
  ringInFeet,
  sharedStretch,
  signedArea,
  type Patch,
  type Ring,
} from '../../base/geometry/index.js';
import { takeOff, type Cut } from '../feature/index.js';
import type { FloorVoid, Room, VoidShape } from '../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import { outsideWords } from './fit.js';
import { crossingWords } from './tape.js';
import type { Plan } from './plan.js';
import { slugOf } from './slug.js';

/** Holes in the floor, with what they cut, and those of them that the ceiling has too: there the room is not. */
export interface Voids {
  readonly measured: readonly FloorVoid[];
  readonly cuts: readonly Cut[];
  readonly through: readonly Cut[];
  /** What is left of the floor. */
  readonly floor: readonly Patch[];
}

export function voidsOf(room: Room, plan: Plan): Outcome<Voids> {
  const problems = room.voids.flatMap((hole, index) => voidProblems(hole, index, room, plan));
  const holes = room.voids.map((hole) => ({ hole, cut: cutOf(hole) }));
  const cuts = holes.map(({ cut }) => cut);
  const floor = takeOff([plan.patch], cuts).rest;
  const value = {
    measured: holes.map(({ hole }) => measureVoid(hole, floor)),
    cuts,
    through: holes.flatMap(({ hole, cut }) => (hole.isOpenAbove ? [cut] : [])),
    floor,
  };
  return { value, problems };
}

function cutOf({ name, corners }: VoidShape): Cut {
  return { what: name, of: name, kind: 'void', patch: patchFrom(ringInFeet(corners)) };
}

function measureVoid(hole: VoidShape, floor: readonly Patch[]): FloorVoid {
  const { corners, names } = counterClockwise(hole);
  const borders = floor.flatMap(({ outline, holes }) => [outline, ...holes].flatMap(edges));
  const sides = edges(corners).map(([from, to], index) => {
    const stretches = borders.flatMap((border) => {
      const shared = sharedStretch([from, to], border);
      return shared ? [shared] : [];
    });
    return {
      name: names[index] ?? String(index + 1),
      from: pointOf(from),
      to: pointOf(to),
      run: lengthOf(distance(from, to)),
      edges: stretches
        .map(([start, end]) => ({ from: lengthOf(start), to: lengthOf(end) }))
        .sort((a, b) => a.from - b.from),
    };
  });
  return {
    id: `void-${slugOf(hole.name)}`,
    name: hole.name,
    outline: pointsOf(corners),
    isOpenAbove: hole.isOpenAbove ?? false,
    sides,
  };
}

/** The same outline with the hole to the left of each side, so that floor is to the right of it as a room is of its walls. */
function counterClockwise({ corners, sides }: VoidShape): {
  readonly corners: Ring;
  readonly names: readonly string[];
} {
  const ring = ringInFeet(corners);
  const names = sides ?? corners.map((_, index) => String(index + 1));
  if (signedArea(ring) > 0) return { corners: ring, names };
  const [last, ...others] = [...names].reverse();
  return { corners: [...ring].reverse(), names: [...others, ...(last === undefined ? [] : [last])] };
}

function voidProblems(hole: VoidShape, index: number, room: Room, plan: Plan): readonly Problem[] {
  const path = ['voids', index];
  const ring = ringInFeet(hole.corners);
  const crossing = findCrossing(ring);
  if (crossing) {
    const message = `the outline of void '${hole.name}' crosses itself: ${crossingWords(ring, crossing, bounds(ring))}`;
    const fix = 'write its corners in order, all the way round';
    return [problemAt(room.origin, path, 'void-crosses', message, { fix })];
  }
  const message = outsideWords(patchFrom(ring), `of void '${hole.name}'`, plan);
  if (message === undefined) return [];
  const fix = "x and y are from the south-west corner of the room's bounding box";
  return [problemAt(room.origin, path, 'void-outside-room', message, { fix })];
}
