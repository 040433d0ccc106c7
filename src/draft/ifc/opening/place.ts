import { direction, distance, minus, type Xy } from '../../../base/geometry/index.js';
import { outward, type Wall } from '../room/wall.js';
import type { Space } from '../room/space.js';
import type { Hole } from './hole.js';

/** A hole in a wall of a space, in feet along the wall from its left end, seen from inside. */
export interface InWall {
  readonly space: Space;
  readonly wall: Wall;
  readonly from: number;
  readonly to: number;
  /** From the wall's face to the hole's near side, to a thousandth of a foot, since corners are drafted to 0.1 mm: of two rooms as near, the first of the model has the
   *  hole, however the model is turned. */
  readonly near: number;
}

const metre = 1 / 0.3048;
/** How far a hole may begin behind the face of its wall, and how far it may stand before it. */
const [behind, before] = [0.25 * metre, 0.05 * metre];
/** How far it may reach past a corner: a void is often cut wider than what fills it. */
const past = 0.06 * metre;
const narrowest = 0.2 * metre;

/** The walls that a hole goes through: of the room nearest to it, and of the room on the other side if there is one. */
export function wallsThrough(hole: Hole, walls: ReadonlyMap<Space, readonly Wall[]>): readonly InWall[] {
  const found = [...walls].flatMap(([space, around]) => nearestWall(hole, space, around) ?? []);
  const [first, ...others] = found.toSorted((a, b) => a.near - b.near);
  if (!first) return [];
  const second = others.find(({ wall }) => facing(wall, first.wall) < -0.99);
  return second ? [first, second] : [first];
}

function facing(a: Wall, b: Wall): number {
  const [one, other] = [outward(a), outward(b)];
  return one.x * other.x + one.y * other.y;
}

function nearestWall(hole: Hole, space: Space, walls: readonly Wall[]): InWall | undefined {
  const [low, high] = heightsOf(hole);
  const { height, top } = space.shape;
  if (high < height + before || low > top - before) return undefined;
  const found = walls.flatMap((wall) => (wall.openTo ? [] : (inWall(hole, space, wall) ?? [])));
  return found.toSorted((a, b) => a.near - b.near)[0];
}

function inWall(hole: Hole, space: Space, wall: Wall): InWall | undefined {
  const { along, off } = extentAt(hole, wall.from, wall.to);
  const wide = along.to - along.from;
  const thick = off.to - off.from;
  if (wide < narrowest || along.from < -past || along.to > distance(wall.from, wall.to) + past) return undefined;
  if ((thick > wide && thick > 0.7 * metre) || off.from > behind || off.to < -before) return undefined;
  return { space, wall, ...along, near: Math.round(Math.abs(off.from) * 1e3) / 1e3 };
}

/** Does a hole lie in a line of the plan, so that a wall must stand there? */
export function isInLine(hole: Hole, from: Xy, to: Xy): boolean {
  const { along, off } = extentAt(hole, from, to);
  const isWithin = along.from > -past && along.to < distance(from, to) + past && along.to - along.from > narrowest;
  return isWithin && off.from < before && off.to > -before;
}

/** In feet, in the model. */
export function heightsOf({ corners }: Hole): readonly [number, number] {
  return extent(corners.map(({ z }) => z));
}

interface Extent {
  readonly from: number;
  readonly to: number;
}

/** How far a hole reaches along a line, and to the left of it. */
export function extentAt({ corners }: Hole, from: Xy, to: Xy): { readonly along: Extent; readonly off: Extent } {
  const ahead = direction(from, to);
  const places = corners.map((corner) => minus(corner, from));
  const [start, end] = extent(places.map(({ x, y }) => x * ahead.x + y * ahead.y));
  const [near, far] = extent(places.map(({ x, y }) => y * ahead.x - x * ahead.y));
  return { along: { from: start, to: end }, off: { from: near, to: far } };
}

function extent(figures: readonly number[]): readonly [number, number] {
  return figures.reduce(([low, high], figure) => [Math.min(low, figure), Math.max(high, figure)] as const, [
    Infinity,
    -Infinity,
  ] as const);
}
