import { areaOf, grown, intersect, patchFrom, unite } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { Side } from './laid-room.js';
import type { Placed } from './placed.js';

/** How deep along a wall it is looked whether a room stands over it, in feet. */
const depth = 0.25;

/** Square feet of the band between a stretch of a room's wall and the floor above it: from the wall's own height, over its length, to that floor, as
 *  far as rooms of the level above stand over it. Nothing where no height is recorded. */
export function bandOver(
  above: readonly Placed[],
  wall: number,
): (placed: Placed, side: Side, from: number, to: number) => number {
  const floor = above[0]?.room.floor;
  const over = grown(unite(above.map(({ plan }) => plan)), wall);
  return ({ room, at }, { from: left, along, out, wall: { gross, run } }, from, to) => {
    if (floor === undefined || room.floor === undefined) return 0;
    const place = (by: number, inward: number) => ({
      x: at.x + left.x + along.x * by - out.x * inward,
      y: at.y + left.y + along.y * by - out.y * inward,
    });
    const strip = patchFrom([place(from, 0), place(to, 0), place(to, depth), place(from, depth)]);
    const covered = over.reduce((sum, patch) => sum + areaOf(intersect([strip], patch)), 0) / depth;
    return covered * Math.max(0, floor - room.floor - gross / feet(run));
  };
}
