import {
  areaOf,
  cross,
  direction,
  distance,
  heightRange,
  intersect,
  lengthOf,
  minus,
  nearFeet,
  patchFrom,
  pointInFeet,
  pointOf,
  slackAround,
  type Ring,
  type Xy,
} from '../../base/geometry/index.js';
import { wallLine, type FeatureRecord } from '../model/index.js';
import { didYouMean, problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import { feet, printLength, type Length } from '../../base/units/index.js';
import type { RoomSpace } from './kind.js';
import { wallFrame } from './wall-frame.js';

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

/** Height of the floor under all of a footprint, over the rest of the room's; a problem where that is not one. */
export function floorUnder(outline: Ring, feature: FeatureRecord, space: RoomSpace): Outcome<Length> {
  const patch = patchFrom(outline);
  const slack = slackAround(patch);
  const under = space.floor.filter(({ patches }) => areaOf(patches.flatMap((one) => intersect([patch], one))) > slack);
  const [first, ...more] = under;
  const ramp = under.find(({ plane: { a, b } }) => a !== 0 || b !== 0);
  if (!ramp && more.every(({ height }) => height === first?.height))
    return { value: first?.height ?? (0 as Length), problems: [] };
  const message = ramp
    ? `${feature.name} stands on the ramp '${ramp.name}'`
    : `${feature.name} stands on parts of the floor at different heights: ${under.map(({ name, height }) => `${name} at ${printLength(height)}`).join(', ')}`;
  const fix = 'move it onto one level, or let a part of the floor reach under all of it';
  return { problems: [problemAt(space.origin, feature.path, 'feature-across-floors', message, { fix })] };
}

/** Where a feature stands, for its measure: nothing on the floor that heights of the room count from. */
export function standingAt(floor: Length): { readonly floor?: Length } {
  return floor === 0 ? {} : { floor };
}

/** What is let into a wall begins at the floor before it or above. */
export function sillProblems(
  feature: FeatureRecord,
  space: RoomSpace,
  { wall, at, width, sill }: { wall: string; at: Length; width: Length; sill: Length },
): readonly Problem[] {
  const { foot = [] } = space.walls.find(({ name }) => name === wall) ?? {};
  const { greatest } = heightRange(foot, feet(at), feet(at) + feet(width));
  if (!Number.isFinite(greatest) || feet(sill) >= greatest - nearFeet) return [];
  const floor = printLength(lengthOf(greatest));
  const message = `${feature.name} begins ${printLength(sill)} above the room's floor, but the floor before it is at ${floor}`;
  const fix = `sill: ${floor} puts it on the floor there`;
  return [problemAt(space.origin, [...feature.path, 'sill'], 'feature-below-floor', message, { fix })];
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
