import { areaOf, between, distance, subtract, type Patch, type Xy } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { Stretch } from './behind.js';
import type { Side } from './laid-room.js';
import type { Placed } from './placed.js';
import { stripInside } from './strip.js';

/** Edges of the roof along an outside wall, in feet, at the wall's inside face: the roof's overhang is not recorded. */
export interface RoofEdges {
  /** Under a level edge from which the ceiling rises. */
  readonly eaves: number;
  /** Up a sloping top, by its true length. */
  readonly rakes: number;
  /** Under a flat ceiling, of which nobody knows how the roof lies on it. */
  readonly unknown: number;
}

export const noEdges: RoofEdges = { eaves: 0, rakes: 0, unknown: 0 };

/** Roof edges along the stretches of a side that stand outside and have no room above them. */
export function roofEdgesOf(
  { room, at }: Placed,
  side: Side,
  outside: readonly Stretch[],
  above: readonly Placed[],
): RoofEdges {
  const top = side.wall.top.map(({ along, height }) => ({ x: feet(along), y: feet(height) }));
  const isRising = room.measure.ceiling.facets.some(({ slope, riseDirection }) => {
    const turn = (riseDirection * Math.PI) / 180;
    return slope > 0 && Math.cos(turn) * side.out.x + Math.sin(turn) * side.out.y < -0.99;
  });
  let edges = noEdges;
  for (const { from, to } of outside) {
    for (const [start, end] of piecesOf(top, from, to)) {
      const length = distance(start, end) * openShare(side, start.x, end.x, at, above);
      if (Math.abs(start.y - end.y) > 1e-6) edges = { ...edges, rakes: edges.rakes + length };
      else if (isRising) edges = { ...edges, eaves: edges.eaves + length };
      else edges = { ...edges, unknown: edges.unknown + length };
    }
  }
  return edges;
}

/** Straight pieces of a wall's top between two places along it. Upright steps are none. */
function piecesOf(top: readonly Xy[], from: number, to: number): readonly (readonly [Xy, Xy])[] {
  return top.slice(1).flatMap((end, index) => {
    const start = top[index] as Xy;
    const [low, high] = [Math.max(from, start.x), Math.min(to, end.x)];
    if (high - low < 1e-6) return [];
    const point = (x: number): Xy => between(start, end, (x - start.x) / (end.x - start.x));
    return [[point(low), point(high)] as const];
  });
}

/** How much of a stretch of a wall has no room over it, as a share: looked at in a strip just inside it. */
function openShare(side: Side, start: number, end: number, at: Xy, above: readonly Placed[]): number {
  const strip = stripInside(side, start, end, at);
  const left = above.reduce<readonly Patch[]>((rest, { plan }) => subtract(rest, plan), [strip]);
  return areaOf(left) / areaOf([strip]);
}
