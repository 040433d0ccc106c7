import {
  bounds,
  boundsMeet,
  contains,
  counterClockwise,
  interiorPoint,
  perimeter,
  reversed,
  signedArea,
} from './ring.js';
import { cross, edges, minus, nearArea, nearTape, type Patch, type Ring, type Xy } from './xy.js';

export function patchArea(patch: Patch): number {
  return patch.holes.reduce((sum, hole) => sum + signedArea(hole), signedArea(patch.outline));
}

/** What a tape cannot tell around a shape, along its outline, in square feet. Gaps and overlaps below it are let pass. */
export function slackAround({ outline }: Patch): number {
  return perimeter(outline) * nearTape;
}

export function areaOf(patches: readonly Patch[]): number {
  return patches.reduce((sum, patch) => sum + patchArea(patch), 0);
}

/** A patch with the turns that patches have, from rings that turn either way. */
export function patchFrom(outline: Ring, holes: readonly Ring[] = []): Patch {
  return { outline: counterClockwise(outline), holes: holes.map((hole) => reversed(counterClockwise(hole))) };
}

export function patchContains(patch: Patch, point: Xy): boolean {
  return contains(patch.outline, point) && !patch.holes.some((hole) => contains(hole, point));
}

/** Area, and the integrals of x and y over a patch, in feet to the second and third power. */
interface Moments {
  readonly area: number;
  readonly x: number;
  readonly y: number;
}

/** Exact for polygons; worked from the first corner so that far-off coordinates cost no digits. */
export function moments(patch: Patch): Moments {
  const origin = patch.outline[0] ?? { x: 0, y: 0 };
  let [area, x, y] = [0, 0, 0];
  for (const ring of [patch.outline, ...patch.holes]) {
    for (const [from, to] of edges(ring)) {
      const a = minus(from, origin);
      const b = minus(to, origin);
      const turn = cross(a, b);
      area += turn / 2;
      x += (turn * (a.x + b.x)) / 6;
      y += (turn * (a.y + b.y)) / 6;
    }
  }
  return { area, x: x + area * origin.x, y: y + area * origin.y };
}

/** Sorts rings into patches: counter-clockwise ones are outlines, each clockwise one is a hole of the least outline around it. */
export function patchesFrom(rings: readonly Ring[]): readonly Patch[] {
  const outlines: { outline: Ring; area: number; holes: Ring[] }[] = [];
  const holes: Ring[] = [];
  for (const ring of rings) {
    const area = signedArea(ring);
    if (area > nearArea) outlines.push({ outline: ring, area, holes: [] });
    if (area < -nearArea) holes.push(ring);
  }
  outlines.sort((a, b) => a.area - b.area);
  for (const hole of holes) {
    const inside = interiorPoint(hole);
    const around = outlines.find((one) => outlines.length === 1 || (inside && contains(one.outline, inside)));
    around?.holes.push(hole);
  }
  return outlines.map(({ outline, holes: own }) => ({ outline, holes: own }));
}

export function patchesMayMeet(a: Patch, b: Patch): boolean {
  return boundsMeet(bounds(a.outline), bounds(b.outline));
}
