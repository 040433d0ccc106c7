import type { CeilingFacet } from '../../core/model/index.js';

/** Where a place of the unfolded facet lies on the plan; the inverse of the unfolding in src/geometry. */
export function onPlan(
  facet: CeilingFacet,
  { x, y }: { readonly x: number; readonly y: number },
): { x: number; y: number } {
  if (facet.slope === 0) return { x, y };
  const turn = (facet.riseDirection * Math.PI) / 180;
  const up = { x: Math.cos(turn), y: Math.sin(turn) };
  const level = y / Math.hypot(1, facet.slope);
  return { x: up.y * x + up.x * level, y: -up.x * x + up.y * level };
}
