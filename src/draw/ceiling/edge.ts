import type { CeilingFacet, Point } from '../../core/model/index.js';

const near = 1_600_000;

export interface Edge {
  readonly a: Point;
  readonly b: Point;
}

export function edgesOf(facet: CeilingFacet): Edge[] {
  return [facet.plan.outline, ...facet.plan.holes].flatMap((ring) =>
    ring.map((a, index) => ({ a, b: ring[(index + 1) % ring.length]! })),
  );
}

/** The stretch that two edges share, in the direction of the first. */
export function overlapOf(one: Edge, other: Edge): Edge | undefined {
  const run = Math.hypot(one.b.x - one.a.x, one.b.y - one.a.y);
  if (run < near) return undefined;
  const [x, y] = [(one.b.x - one.a.x) / run, (one.b.y - one.a.y) / run];
  const along = (point: Point): number => (point.x - one.a.x) * x + (point.y - one.a.y) * y;
  const off = (point: Point): number => Math.abs((point.x - one.a.x) * y - (point.y - one.a.y) * x);
  if (off(other.a) > near || off(other.b) > near) return undefined;
  const low = Math.max(0, Math.min(along(other.a), along(other.b)));
  const high = Math.min(run, Math.max(along(other.a), along(other.b)));
  if (high - low < near) return undefined;
  const at = (distance: number): Point => ({ x: one.a.x + x * distance, y: one.a.y + y * distance }) as Point;
  return { a: at(low), b: at(high) };
}
