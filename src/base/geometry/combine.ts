import { clipAll, leftOf, opposite } from './half-plane.js';
import { patchesMayMeet } from './patch.js';
import { isConvex } from './ring.js';
import { cross, edges, minus, nearArea, type Patch, type Xy } from './xy.js';

/** What two patches share, in one or more patches that do not overlap. */
export function intersect(patches: readonly Patch[], other: Patch): readonly Patch[] {
  const near = patches.filter((patch) => patchesMayMeet(patch, other));
  if (near.length === 0) return [];
  return convexPieces(other).flatMap((piece) =>
    edges(piece.outline).reduce<readonly Patch[]>((rest, [from, to]) => clipAll(rest, leftOf(from, to)), near),
  );
}

/** What is left of patches without another, in patches that do not overlap and may meet along cuts. */
export function subtract(patches: readonly Patch[], other: Patch): readonly Patch[] {
  const far = patches.filter((patch) => !patchesMayMeet(patch, other));
  const near = patches.filter((patch) => patchesMayMeet(patch, other));
  if (near.length === 0) return patches;
  return [...far, ...convexPieces(other).reduce(withoutConvex, near)];
}

/** A patch cut into convex ones, each along the line of an edge at a corner that turns inward. */
export function convexPieces(patch: Patch): readonly Patch[] {
  if (patch.holes.length === 0 && isConvex(patch.outline)) return [patch];
  for (const ring of [patch.outline, ...patch.holes]) {
    for (let i = 0; i < ring.length; i += 1) {
      const [before, corner] = [ring[i] as Xy, ring[(i + 1) % ring.length] as Xy];
      const after = ring[(i + 2) % ring.length] as Xy;
      if (cross(minus(corner, before), minus(after, corner)) > -nearArea) continue;
      const side = leftOf(before, corner);
      const [left, right] = [clipAll([patch], side), clipAll([patch], opposite(side))];
      if (left.length > 0 && right.length > 0) return [...left, ...right].flatMap(convexPieces);
    }
  }
  return [patch];
}

function withoutConvex(patches: readonly Patch[], piece: Patch): readonly Patch[] {
  const outside: Patch[] = [];
  let inside = patches;
  for (const [from, to] of edges(piece.outline)) {
    const side = leftOf(from, to);
    outside.push(...clipAll(inside, opposite(side)));
    inside = clipAll(inside, side);
  }
  return outside;
}
