import { ClipperOffset, Clipper, EndType, FillRule, JoinType, type Path64, type Paths64 } from 'clipper2-ts';
import { patchesFrom } from './patch.js';
import { tidied } from './ring.js';
import type { Patch, Ring } from './xy.js';

/** Clipper works on whole numbers; a foot is so many of them, which is 3 1/8 micrometres each and keeps its products exact within 300 ft. 1/64 inch is
 *  127 of them and 1 mm 320, so what lies on either is not rounded. */
const grain = 97_536;

/** Corners that are sharper than this many times the distance are cut off. */
const miter = 3;

/** One shape of patches that may overlap or touch. */
export function unite(patches: readonly Patch[]): readonly Patch[] {
  return patchesOf(Clipper.union(pathsOf(patches), FillRule.NonZero));
}

/** What is left of patches without others. */
export function without(patches: readonly Patch[], others: readonly Patch[]): readonly Patch[] {
  return patchesOf(Clipper.difference(pathsOf(patches), pathsOf(others), FillRule.NonZero));
}

/** What patches have in common with others. */
export function common(patches: readonly Patch[], others: readonly Patch[]): readonly Patch[] {
  return patchesOf(Clipper.intersect(pathsOf(patches), pathsOf(others), FillRule.NonZero));
}

/** The shapes grown by so many feet all around, square at their corners; drawn in where that is below 0. */
export function grown(patches: readonly Patch[], by: number): readonly Patch[] {
  const offset = new ClipperOffset(miter);
  offset.addPaths(pathsOf(patches), JoinType.Miter, EndType.Polygon);
  const paths: Paths64 = [];
  offset.execute(by * grain, paths);
  return patchesOf(paths);
}

/** The shapes with gaps and notches closed that are narrower than twice `by` feet. */
export function closed(patches: readonly Patch[], by: number): readonly Patch[] {
  return grown(grown(patches, by), -by);
}

function pathsOf(patches: readonly Patch[]): Paths64 {
  return patches.flatMap(({ outline, holes }) => [outline, ...holes].map(pathOf));
}

function pathOf(ring: Ring): Path64 {
  return ring.map(({ x, y }) => ({ x: Math.round(x * grain), y: Math.round(y * grain) }));
}

function patchesOf(paths: Paths64): readonly Patch[] {
  const rings = paths.map((path) => tidied(path.map(({ x, y }) => ({ x: x / grain, y: y / grain }))));
  return patchesFrom(rings.filter((ring) => ring.length > 2));
}
