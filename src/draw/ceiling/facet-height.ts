import { wallLine, type CeilingFacet, type PlanPoint, type Point, type RoomMeasure } from '../../core/model/index.js';

/** Height of the ceiling's plane at a place of the plan, both in nanometres; undefined when it cannot be known. */
export type HeightAt = (point: { readonly x: number; readonly y: number }) => number | undefined;

const near = 1_600_000;

/** A facet knows its slope and its direction, not its height. The height comes from the top of a wall that it meets, else from a
 *  facet beside it whose height is known: planes of one ceiling meet at equal heights, save at steps between parts. */
export function facetHeights(measure: RoomMeasure): HeightAt[] {
  const { facets } = measure.ceiling;
  const bases: (number | undefined)[] = facets.map((facet) => baseFromWalls(measure, facet));
  for (let round = 0; round < facets.length; round++) {
    facets.forEach((facet, index) => {
      if (bases[index] !== undefined) return;
      for (const [other, otherFacet] of facets.entries()) {
        const otherBase = bases[other];
        const shared = otherBase === undefined ? undefined : sharedPoint(facet, otherFacet);
        if (otherBase === undefined || shared === undefined) continue;
        bases[index] = otherBase + rise(otherFacet, shared) - rise(facet, shared);
        return;
      }
    });
  }
  return facets.map((facet, index) => {
    const base = bases[index] ?? (facet.slope === 0 ? measure.highest : undefined);
    return (point) => (base === undefined ? undefined : base + rise(facet, point));
  });
}

/** Rise of the plane from the room's origin to the point. */
function rise(facet: CeilingFacet, point: { readonly x: number; readonly y: number }): number {
  if (facet.slope === 0) return 0;
  const turn = (facet.riseDirection * Math.PI) / 180;
  return facet.slope * (point.x * Math.cos(turn) + point.y * Math.sin(turn));
}

export interface Edge {
  readonly a: Point;
  readonly b: Point;
}

export function edgesOf(facet: CeilingFacet): Edge[] {
  return [facet.plan.outline, ...facet.plan.holes].flatMap((ring) =>
    ring.map((a, index) => ({ a, b: ring[(index + 1) % ring.length]! })),
  );
}

function baseFromWalls(measure: RoomMeasure, facet: CeilingFacet): number | undefined {
  for (const edge of edgesOf(facet)) {
    // The middle of an edge is clear of corners, ridges and steps.
    const middle = { x: (edge.a.x + edge.b.x) / 2, y: (edge.a.y + edge.b.y) / 2 };
    for (const wall of measure.walls) {
      const along = alongLine(wallLine(wall), middle);
      if (along === undefined) continue;
      const height = topBetween(wall.top, along);
      if (height !== undefined) return height - rise(facet, middle);
    }
  }
  return undefined;
}

/** Distance from the start of a line when the point is on it. */
function alongLine(line: readonly PlanPoint[], point: { readonly x: number; readonly y: number }): number | undefined {
  for (const [index, from] of line.slice(0, -1).entries()) {
    const to = line[index + 1]!;
    const along = alongWall(from.at, to.at, point);
    if (along !== undefined) return from.along + along;
  }
  return undefined;
}

/** Distance from `from` when the point is on the line between the ends. */
function alongWall(from: Point, to: Point, point: { readonly x: number; readonly y: number }): number | undefined {
  const run = Math.hypot(to.x - from.x, to.y - from.y);
  if (run < near) return undefined;
  const [x, y] = [(to.x - from.x) / run, (to.y - from.y) / run];
  const along = (point.x - from.x) * x + (point.y - from.y) * y;
  const off = Math.abs((point.x - from.x) * y - (point.y - from.y) * x);
  return off < near && along > -near && along < run + near ? along : undefined;
}

function topBetween(top: RoomMeasure['walls'][number]['top'], along: number): number | undefined {
  for (let index = 0; index + 1 < top.length; index++) {
    const a = top[index]!;
    const b = top[index + 1]!;
    if (b.along - a.along < near || along < a.along || along > b.along) continue;
    return a.height + ((b.height - a.height) * (along - a.along)) / (b.along - a.along);
  }
  return undefined;
}

function sharedPoint(one: CeilingFacet, other: CeilingFacet): { x: number; y: number } | undefined {
  const shared = edgesOf(one).flatMap((edge) => edgesOf(other).map((candidate) => overlapOf(edge, candidate)));
  const found = shared.find((overlap) => overlap !== undefined);
  return found === undefined ? undefined : { x: (found.a.x + found.b.x) / 2, y: (found.a.y + found.b.y) / 2 };
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
