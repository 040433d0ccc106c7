import { feet, type Length } from '../../../base/units/index.js';

/** Feet of base along walls, less openings that reach the floor; a wall finished on both sides counts twice. Source:
 *  Estimating in Building Construction, example 13-25. */
export function baseLength(
  walls: readonly { readonly run: Length; readonly sides: 1 | 2 }[],
  openings: readonly Length[],
): number {
  const runs = walls.reduce((sum, { run, sides }) => sum + feet(run) * sides, 0);
  return Math.max(
    0,
    openings.reduce((left, width) => left - feet(width), runs),
  );
}
