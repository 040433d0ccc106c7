import { bounds, direction, headings, plus, pointInFeet, type Ring, type Xy } from '../../base/geometry/index.js';
import { feet, type Length } from '../../base/units/index.js';
import type { Bearing, MeasuredArc, MeasuredLean, Point } from '../model/index.js';

/** A wall with its ends as seen from inside. */
export interface FramedWall {
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly run: Length;
  readonly arc?: MeasuredArc;
  readonly lean?: MeasuredLean;
}

/** A wall as a feature stands against it: `place` goes along it from the left, facing it, and out into the room, in feet. */
export interface WallFrame {
  readonly run: Length;
  /** It is an arc, along which nothing straight stands. */
  readonly isCurved: boolean;
  readonly isLeaning: boolean;
  place(along: number, out: number): Xy;
}

export function wallFrame(space: { readonly walls: readonly FramedWall[] }, name: string): WallFrame | undefined {
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

/** Footprint of something that goes `run` one way and is `width` wide, its bounding box's south-west corner at x, y. */
export function footprint(
  space: { readonly corner: Point },
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
  const ring = loose.map((point) => plus(point, shift));
  return { ring, start: shift, ahead, left };
}
