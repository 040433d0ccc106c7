import { moments } from './patch.js';
import type { Patch, Ring, Xy } from './xy.js';

/** A plane over the plan: height in feet = a·x + b·y + c. (a, b) points the way it rises; its length is rise over run. */
export interface Plane {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

export function heightOn({ a, b, c }: Plane, { x, y }: Xy): number {
  return a * x + b * y + c;
}

/** A plane that has a height on a line through `start` and rises by `slope` for each foot that one goes `toward`, a unit vector. */
export function planeFrom(start: Xy, height: number, toward: Xy, slope: number): Plane {
  const [a, b] = [toward.x * slope, toward.y * slope];
  return { a, b, c: height - a * start.x - b * start.y };
}

/** The plane through three points with heights; undefined where they lie in a line in plan. */
export function planeThrough([one, two, three]: readonly (Xy & { readonly height: number })[]): Plane | undefined {
  if (!one || !two || !three) return undefined;
  const [ax, ay, bx, by] = [two.x - one.x, two.y - one.y, three.x - one.x, three.y - one.y];
  const turn = ax * by - ay * bx;
  // A hair of a turn is a line that was taped.
  if (Math.abs(turn) < 1e-6) return undefined;
  const [up, over] = [two.height - one.height, three.height - one.height];
  const [a, b] = [(up * by - over * ay) / turn, (over * ax - up * bx) / turn];
  return { a, b, c: one.height - a * one.x - b * one.y };
}

export function slopeOf({ a, b }: Plane): number {
  if (a === 0) return Math.abs(b);
  return b === 0 ? Math.abs(a) : Math.hypot(a, b);
}

/** True length up the slope for a foot of plan: sqrt(1 + slope²). Handbook factors are checked in test/outside/measure. */
export function slopeFactor(plane: Plane): number {
  return Math.hypot(1, slopeOf(plane));
}

/** Volume in cubic feet between the floor and the plane over a patch. */
export function volumeUnder({ a, b, c }: Plane, patch: Patch): number {
  const { area, x, y } = moments(patch);
  return a * x + b * y + c * area;
}

/**
 * Unfolds a plan patch on a plane to its true size: x along the level direction with the rise pointing up the sheet, as a
 * reflected ceiling plan shows it, and y up the slope. Not moved: plan (0, 0) stays (0, 0). A flat patch stays as it is.
 */
export function unfold(plane: Plane, patch: Patch): Patch {
  const slope = slopeOf(plane);
  if (slope === 0) return patch;
  const up = { x: plane.a / slope, y: plane.b / slope };
  const factor = slopeFactor(plane);
  const turn = (ring: Ring): Ring =>
    ring.map(({ x, y }) => ({ x: up.y * x - up.x * y, y: (up.x * x + up.y * y) * factor }));
  return { outline: turn(patch.outline), holes: patch.holes.map(turn) };
}

/** Direction of the rise in degrees counter-clockwise from east, 0 to under 360; 0 when flat. */
export function riseDirection({ a, b }: Plane): number {
  if (a === 0 && b === 0) return 0;
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return degrees < 0 ? degrees + 360 : degrees;
}
