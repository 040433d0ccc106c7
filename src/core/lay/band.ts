import { areaOf, intersect } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { Side } from './laid-room.js';
import { withWalls, type Placed } from './placed.js';
import { stripDepth, stripInside } from './strip.js';

/** Square feet of the band between a stretch of a room's wall and the floor above it: from the wall's own height, over its length, to that floor, as
 *  far as rooms of the level above stand over it. Nothing where no height is recorded. */
export function bandOver(
  above: readonly Placed[],
  wall: number,
): (placed: Placed, side: Side, from: number, to: number) => number {
  const floor = above[0]?.room.floor;
  const over = withWalls(above, wall);
  return ({ room, at }, side, from, to) => {
    if (floor === undefined || room.floor === undefined) return 0;
    const strip = stripInside(side, from, to, at);
    const covered = over.reduce((sum, patch) => sum + areaOf(intersect([strip], patch)), 0) / stripDepth;
    const { gross, run } = side.wall;
    return covered * Math.max(0, floor - room.floor - gross / feet(run));
  };
}
