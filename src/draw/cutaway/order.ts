import { areaOf, placeOn, spaceDot, type Xyz } from '../../base/geometry/index.js';
import type { Spot } from '../convex.js';
import type { Facet } from './facet.js';
import { unhidden } from './hide.js';
import type { Axonometry } from './view.js';

/** A facet as it lies on the sheet. */
export interface Laid<Kind extends Facet = Facet> {
  readonly facet: Kind;
  /** Outlines and holes on the sheet. */
  readonly rings: readonly (readonly Spot[])[];
  readonly corners: readonly Xyz[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly depth: number;
}

export function layFacet<Kind extends Facet>(facet: Kind, camera: Axonometry): Laid<Kind> {
  const outlines = facet.patches.flatMap(({ outline, holes }) => [outline, ...holes]);
  const places = outlines.map((ring) => ring.map((corner) => placeOn(facet.plane, corner)));
  const rings = places.map((ring) => ring.map(camera.spot));
  const corners = places.flat();
  const xs = rings.flat().map(([x]) => x);
  const ys = rings.flat().map(([, y]) => y);
  return {
    facet,
    rings,
    corners,
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
    depth: corners.reduce((sum, corner) => sum + camera.depth(corner), 0) / corners.length,
  };
}

/** Is a place of the sheet on a facet, and not in a hole of it? */
export function covers({ rings, left, right, top, bottom }: Laid, [x, y]: Spot): boolean {
  return x >= left && x <= right && y >= top && y <= bottom && isIn([x, y], rings);
}

/** Feet within which a corner lies in a plane. */
const near = 2e-3;

/**
 * Facets from back to front. One lies behind another where they overlap on the sheet and it is wholly on the far side of the other's plane, or the other
 * wholly on the near side of its own: Newell, Newell and Sancha (1972), tests 2 to 4. Where neither plane parts two facets, the places on the sheet that
 * both cover say which is nearer. Of two that pass through each other, and of a ring, what is drawn later loses what the earlier hides of it.
 */
export function backToFront<Kind extends Facet>(
  laid: readonly Laid<Kind>[],
  camera: Axonometry,
): readonly Laid<Kind>[] {
  const count = laid.length;
  const before: number[][] = laid.map(() => []);
  const waiting: number[] = laid.map(() => 0);
  const pierced: (readonly [number, number])[] = [];
  for (let i = 0; i < count; i += 1)
    for (let j = i + 1; j < count; j += 1) {
      const order = compare(laid[i]!, laid[j]!, camera);
      if (order === 0) continue;
      const isFirst = order === 'through' ? isCutLast(laid[j]!, laid[i]!) : order < 0;
      const [back, front] = isFirst ? ([i, j] as const) : ([j, i] as const);
      if (order === 'through') pierced.push([back, front]);
      before[back]!.push(front);
      waiting[front]! += 1;
    }
  const sorted: number[] = [];
  const open = new Set(laid.keys());
  while (open.size > 0) {
    let best = -1;
    for (const i of open) {
      if (best < 0 || isSooner(i, best)) best = i;
    }
    open.delete(best);
    sorted.push(best);
    for (const front of before[best]!) waiting[front]! -= 1;
  }
  const rankOf: number[] = [];
  sorted.forEach((i, rank) => (rankOf[i] = rank));
  const inRings = before.flatMap((fronts, back) =>
    fronts.filter((front) => rankOf[front]! < rankOf[back]!).map((front) => [front, back] as const),
  );
  const hiders = new Map<number, number[]>();
  for (const [one, other] of [...pierced, ...inRings]) {
    const [earlier, later] = rankOf[one]! < rankOf[other]! ? [one, other] : [other, one];
    hiders.set(later, [...(hiders.get(later) ?? []), earlier]);
  }
  return sorted.flatMap((i) => {
    const hidden = hiders.get(i);
    if (!hidden) return [laid[i]!];
    const { facet } = laid[i]!;
    const patches = hidden.reduce(
      (left, j) => unhidden({ ...facet, patches: left }, laid[j]!.facet, camera),
      facet.patches,
    );
    return areaOf(patches) > 1e-6 ? [layFacet({ ...facet, patches }, camera)] : [];
  });

  function isSooner(i: number, j: number): boolean {
    const [a, b] = [waiting[i]!, waiting[j]!];
    if ((a === 0) !== (b === 0)) return a === 0;
    return laid[i]!.depth < laid[j]!.depth;
  }
}

/** Of two facets that pass through each other, is it the first that is cut? Nothing lies on it that would have to be cut too. */
function isCutLast({ facet: one }: Laid, { facet: other }: Laid): boolean {
  const carries = ({ side, decals }: Facet): boolean => side !== undefined || decals !== undefined;
  return !carries(one) || carries(other);
}

/** Under 0 when the first is to be drawn before the second, 0 when it does not matter; `through` when each hides a part of the other. */
function compare(one: Laid, other: Laid, camera: Axonometry): number | 'through' {
  const play = 1e-6;
  if (one.right <= other.left + play || other.right <= one.left + play) return 0;
  if (one.bottom <= other.top + play || other.bottom <= one.top + play) return 0;
  const [there, here] = [sideOf(other, one), sideOf(one, other)];
  if (there === 'in' || here === 'in') return 0;
  if (there === here && there !== 'across') return 0;
  if (!overlap(one.rings, other.rings)) return 0;
  if (there === 'front' || here === 'back') return -1;
  if (there === 'back' || here === 'front') return 1;
  return byDepth(one, other, camera);
}

/** Where the corners of a facet lie from another's plane: toward who sees it, away, in it, or on both sides. */
function sideOf({ corners }: Laid, { facet: { plane } }: Laid): 'front' | 'back' | 'in' | 'across' {
  let [least, most] = [0, 0];
  for (const corner of corners) {
    const off =
      (corner.x - plane.at.x) * plane.faces.x +
      (corner.y - plane.at.y) * plane.faces.y +
      (corner.z - plane.at.z) * plane.faces.z;
    least = Math.min(least, off);
    most = Math.max(most, off);
  }
  if (least >= -near) return most <= near ? 'in' : 'front';
  return most <= near ? 'back' : 'across';
}

function byDepth(one: Laid, other: Laid, camera: Axonometry): number | 'through' {
  let [least, most] = [0, 0];
  for (const spot of sharedSpots(one, other)) {
    const nearer = depthAt(one, spot, camera) - depthAt(other, spot, camera);
    least = Math.min(least, nearer);
    most = Math.max(most, nearer);
  }
  const play = 10 * near;
  if (least < -play && most > play) return 'through';
  return Math.max(-least, most) <= play ? 0 : most + least;
}

/** Depth of a facet's plane at a place of the sheet. */
function depthAt({ facet: { plane } }: Laid, [x, y]: Spot, { right, up, toward }: Axonometry): number {
  // The place is right·x − up·y + toward·t, and lies in the plane.
  const start: Xyz = { x: right.x * x - up.x * y, y: right.y * x - up.y * y, z: right.z * x - up.z * y };
  const off = spaceDot(start, plane.faces) - spaceDot(plane.at, plane.faces);
  return -off / spaceDot(toward, plane.faces);
}

/** Do two shapes, each with holes by the even-odd rule, share more than an edge on the sheet? */
function overlap(one: Laid['rings'], other: Laid['rings']): boolean {
  return one.some((ring) => other.some((hole) => ringsCross(ring, hole))) || within(one, other) || within(other, one);
}

function within(one: Laid['rings'], other: Laid['rings']): boolean {
  const [ring] = one;
  if (!ring) return false;
  return insidePoints(ring).some((spot) => isIn(spot, other) && isIn(spot, one));
}

/** A few places just within a ring. */
function insidePoints(ring: readonly Spot[]): readonly Spot[] {
  const middle: Spot = [
    ring.reduce((sum, [x]) => sum + x, 0) / ring.length,
    ring.reduce((sum, [, y]) => sum + y, 0) / ring.length,
  ];
  return [middle, ...ring.map(([x, y]): Spot => [x + (middle[0] - x) * 0.03, y + (middle[1] - y) * 0.03])];
}

function sharedSpots(one: Laid, other: Laid): readonly Spot[] {
  const crossings = one.rings.flatMap((ring) => other.rings.flatMap((hole) => crossingsOf(ring, hole)));
  const inner = [...one.rings.flatMap(insidePoints), ...other.rings.flatMap(insidePoints)];
  return [...inner, ...crossings].filter((spot) => isIn(spot, one.rings) && isIn(spot, other.rings)).concat(crossings);
}

function isIn([x, y]: Spot, rings: Laid['rings']): boolean {
  let inside = false;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 1) {
      const [ax, ay] = ring[i]!;
      const [bx, by] = ring[(i + 1) % ring.length]!;
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    }
  }
  return inside;
}

function ringsCross(one: readonly Spot[], other: readonly Spot[]): boolean {
  return crossingsOf(one, other, true).length > 0;
}

/** Where edges of two rings cross, each well within the other. */
function crossingsOf(one: readonly Spot[], other: readonly Spot[], isFirstOnly = false): readonly Spot[] {
  const found: Spot[] = [];
  for (let i = 0; i < one.length; i += 1) {
    const [a, b] = [one[i]!, one[(i + 1) % one.length]!];
    for (let j = 0; j < other.length; j += 1) {
      const [c, d] = [other[j]!, other[(j + 1) % other.length]!];
      const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
      const turn = ux * vy - uy * vx;
      if (Math.abs(turn) < 1e-9) continue;
      const [wx, wy] = [c[0] - a[0], c[1] - a[1]];
      const s = (wx * vy - wy * vx) / turn;
      const t = (wx * uy - wy * ux) / turn;
      // A share of an edge that is under 1/64 of an inch on either side is its end.
      const [playS, playT] = [1.3e-3 / Math.hypot(ux, uy), 1.3e-3 / Math.hypot(vx, vy)];
      if (s <= playS || s >= 1 - playS || t <= playT || t >= 1 - playT) continue;
      found.push([a[0] + ux * s, a[1] + uy * s]);
      if (isFirstOnly) return found;
    }
  }
  return found;
}
