import { areaOf, bounds, boundsMeet, intersect, perimeter, type Patch } from '../../base/geometry/index.js';
import type { LayRoom } from './laid-room.js';
import type { Placed } from './placed.js';

/** Two rooms of a level that stand in each other. */
export interface Overlap {
  readonly a: LayRoom;
  readonly b: LayRoom;
  /** In square feet, and how deep the one reaches into the other, in feet. */
  readonly area: number;
  readonly depth: number;
}

/** Less than this is what tapes miss, in feet. */
const leastDepth = 1 / 12;

export function overlapsOf(placed: readonly Placed[]): readonly Overlap[] {
  return placed.flatMap((one, index) =>
    placed.slice(index + 1).flatMap((other): readonly Overlap[] => {
      if (one.room.level !== other.room.level) return [];
      if (!boundsMeet(bounds(one.plan.outline), bounds(other.plan.outline))) return [];
      const common = intersect([one.plan], other.plan);
      const depth = common.reduce((most, patch) => Math.max(most, depthOf(patch)), 0);
      return depth > leastDepth ? [{ a: one.room, b: other.room, area: areaOf(common), depth }] : [];
    }),
  );
}

/** The lesser side of a rectangle of the same area and perimeter. */
function depthOf(patch: Patch): number {
  const [area, half] = [areaOf([patch]), perimeter(patch.outline) / 2];
  return (half - Math.sqrt(Math.max(0, half * half - 4 * area))) / 2;
}
