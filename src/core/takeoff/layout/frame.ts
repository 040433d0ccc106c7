import type { Point, Region } from '../../model/index.js';
import type { Length } from '../../../base/units/index.js';

/** A place in the frame of the courses. */
export interface FramePoint {
  readonly along: number;
  readonly across: number;
}

/** Rings of one region in the frame of the courses: outline and holes alike, read by the even-odd rule. */
export type FrameShape = readonly (readonly FramePoint[])[];

/** The greatest length that measures both 1/64 inch and 1 mm: 3 125 nm. Places are set to it, so that the last digits of
 *  an unfolded slope make no course or piece of their own. */
export const frameGrid = 3_125;

/** A region turned so that courses of `direction` degrees run along. */
export function toFrame(region: Region, direction: number): FrameShape {
  const { cos, sin } = turn(direction);
  return [region.outline, ...region.holes].map((ring) =>
    ring.map(({ x, y }) => ({ along: toGrid(x * cos + y * sin), across: toGrid(y * cos - x * sin) })),
  );
}

/** A place in the frame of the courses, back on the surface. */
export function fromFrame(direction: number, { along, across }: FramePoint): Point {
  const { cos, sin } = turn(direction);
  return {
    x: (Math.round(along * cos - across * sin) + 0) as Length,
    y: (Math.round(along * sin + across * cos) + 0) as Length,
  };
}

/** Places are whole nanometres, so that what a quarter turn has of a float's last digit rounds away. */
function turn(direction: number): { cos: number; sin: number } {
  const radians = (direction * Math.PI) / 180;
  return { cos: Math.cos(radians), sin: Math.sin(radians) };
}

function toGrid(value: number): number {
  return Math.round(value / frameGrid) * frameGrid + 0;
}

/** Area of rings read by the even-odd rule, in square nanometres: outline less holes, whichever way they turn. */
export function shapeArea([outline, ...holes]: FrameShape): number {
  return ringArea(outline ?? []) - holes.reduce((sum, hole) => sum + ringArea(hole), 0);
}

function ringArea(ring: readonly FramePoint[]): number {
  const origin = ring[0];
  if (!origin) return 0;
  let twice = 0;
  ring.forEach((point, i) => {
    const next = ring[(i + 1) % ring.length] ?? origin;
    twice +=
      (point.along - origin.along) * (next.across - origin.across) -
      (next.along - origin.along) * (point.across - origin.across);
  });
  return Math.abs(twice) / 2;
}
