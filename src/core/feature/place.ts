import {
  bounds,
  cross,
  direction,
  distance,
  headings,
  heightRange,
  lengthOf,
  minus,
  nearFeet,
  pointInFeet,
  pointOf,
  type Ring,
  type Xy,
} from '../../base/geometry/index.js';
import { wallLine, type Bearing, type FeatureRecord } from '../model/index.js';
import { didYouMean, problemAt, type Problem } from '../../base/problem/index.js';
import { feet, printLength, type Length } from '../../base/units/index.js';
import type { RoomSpace } from './kind.js';

/** A wall as a feature stands against it: `place` goes along it from the left, facing it, and out into the room, in feet. */
export interface WallFrame {
  readonly run: Length;
  /** It is an arc, along which nothing straight stands. */
  readonly isCurved: boolean;
  readonly isLeaning: boolean;
  place(along: number, out: number): Xy;
}

export function wallFrame(space: RoomSpace, name: string): WallFrame | undefined {
  const wall = space.walls.find((candidate) => candidate.name === name);
  if (!wall) return undefined;
  const from = pointInFeet(wall.from);
  const ahead = direction(from, pointInFeet(wall.to));
  // Walls go clockwise, so the room is to the right.
  const place = (along: number, out: number): Xy => ({
    x: from.x + ahead.x * along + ahead.y * out,
    y: from.y + ahead.y * along - ahead.x * out,
  });
  return { run: wall.run, isCurved: wall.arc !== undefined, isLeaning: wall.lean !== undefined, place };
}

/** A feature's stretch of a wall: the wall is there, and the stretch lies on it. */
export function wallProblems(
  feature: FeatureRecord,
  space: RoomSpace,
  { wall, at, width, key = 'width' }: { wall: string; at: Length; width: Length; key?: string },
): readonly Problem[] {
  const frame = wallFrame(space, wall);
  if (!frame) {
    const names = space.walls.map(({ name }) => name);
    const message = `${feature.name} is on wall '${wall}', which the room does not have`;
    return [
      problemAt(space.origin, [...feature.path, 'wall'], 'feature-wall-unknown', message, {
        fix: didYouMean(wall, names) ?? `walls of this room: ${names.join(', ')}`,
      }),
    ];
  }
  if (frame.isCurved) {
    const message = `${feature.name} is on wall '${wall}', which is an arc: what stands against one is not measured`;
    const fix = 'put it on a straight wall, or record the finish of its faces at places of its own';
    return [problemAt(space.origin, [...feature.path, 'wall'], 'feature-on-arc', message, { fix })];
  }
  if (frame.isLeaning) {
    const message = `${feature.name} is on wall '${wall}', which leans: what stands against one is not measured`;
    const fix = 'put it on a wall that is plumb, or record what stands before this one by x and y';
    return [problemAt(space.origin, [...feature.path, 'wall'], 'feature-on-lean', message, { fix })];
  }
  return stretchProblems(feature, space, { side: `wall '${wall}'`, of: frame.run, at, width, key });
}

/** A stretch of a straight side lies on it. `side` is how people name it: `wall 'north'`. */
export function stretchProblems(
  feature: FeatureRecord,
  space: RoomSpace,
  { side, of, at, width, key }: { side: string; of: Length; at: Length; width: Length; key: string },
): readonly Problem[] {
  if (width > of) {
    const message = `${feature.name} is ${printLength(width)} wide, wider than its ${side} of ${printLength(of)}`;
    return [
      problemAt(space.origin, [...feature.path, key], 'feature-wider-than-wall', message, {
        fix: `${printLength(of)} is the most that fits`,
      }),
    ];
  }
  if (at < 0 || width < 0 || at + width > of) {
    const past = (at < 0 ? -at : at + Math.max(0, width) - of) as Length;
    const most = (of - Math.max(0, width)) as Length;
    const message = `${feature.name} runs ${printLength(past)} past the ${at < 0 ? 'left' : 'right'} end of ${side}`;
    return [
      problemAt(space.origin, [...feature.path, 'at'], 'feature-past-wall', message, {
        fix: `at may be ${printLength(0 as Length)} to ${printLength(most)}`,
      }),
    ];
  }
  return [];
}

/** Footprint of something that goes `run` one way and is `width` wide, its bounding box's south-west corner at x, y. */
export function footprint(
  space: Pick<RoomSpace, 'corner'>,
  { x, y, go, run, width }: { x: Length; y: Length; go: Bearing; run: Length; width: Length },
): { readonly ring: Ring; readonly start: Xy; readonly ahead: Xy; readonly left: Xy } {
  const ahead = headings[go];
  const left = { x: -ahead.y, y: ahead.x };
  const [length, half] = [feet(run), feet(width) / 2];
  const corner = (along: number, side: number): Xy => ({
    x: ahead.x * along + left.x * side,
    y: ahead.y * along + left.y * side,
  });
  const loose = [corner(0, half), corner(0, -half), corner(length, -half), corner(length, half)];
  const box = bounds(loose);
  const origin = pointInFeet(space.corner);
  const shift = { x: origin.x + feet(x) - box.west, y: origin.y + feet(y) - box.south };
  const ring = loose.map((point) => ({ x: point.x + shift.x, y: point.y + shift.y }));
  return { ring, start: shift, ahead, left };
}

/** What stands on a wall or is let into it ends below the ceiling there. */
export function ceilingProblems(
  feature: FeatureRecord,
  space: RoomSpace,
  { wall, at, width, height }: { wall: string; at: Length; width: Length; height: Length },
): readonly Problem[] {
  const frame = wallFrame(space, wall);
  if (!frame) return [];
  const [from, to] = [feet(at), feet(at) + feet(width)];
  const top = space.topAlong(pointOf(frame.place(from, 0)), pointOf(frame.place(to, 0)));
  const { least } = heightRange(top, 0, to - from);
  if (feet(height) <= least + nearFeet) return [];
  const message = `${feature.name} ends ${printLength(height)} above the floor, but the ceiling there comes down to ${printLength(lengthOf(least))}`;
  const fix = `end it at ${printLength(lengthOf(least))} or lower`;
  return [problemAt(space.origin, [...feature.path, 'height'], 'feature-above-ceiling', message, { fix })];
}

/** Within a quarter of an inch of a wall is against it. */
const against = 0.25 / 12;

/** Does a point of the plan lie against a wall that stands? */
export function touchesWall(point: Xy, { walls }: RoomSpace): boolean {
  return walls
    .filter(({ openTo }) => openTo === undefined)
    .map((wall) => wallLine(wall).map(({ at }) => pointInFeet(at)))
    .some((line) => line.slice(1).some((to, index) => touches(point, line[index] as Xy, to)));
}

function touches(point: Xy, from: Xy, to: Xy): boolean {
  const ahead = direction(from, to);
  const off = minus(point, from);
  const along = off.x * ahead.x + off.y * ahead.y;
  return along > -against && along < distance(from, to) + against && Math.abs(cross(ahead, off)) < against;
}
