import { heightOn, lengthOf, pointInFeet } from '../../base/geometry/index.js';
import type { Length } from '../../base/units/index.js';
import { facetPlane } from '../../core/feature/index.js';
import type { CeilingFacet, Point } from '../../core/model/index.js';
import { edgesOf, overlapOf, type Edge } from './edge.js';

/** A line where two planes of the ceiling meet. */
export interface Seam extends Edge {
  readonly kind: 'ridge' | 'hip' | 'valley' | 'break' | 'step';
  /** Heights at its ends. */
  readonly heights: readonly [Length, Length];
}

const level = 1e-6;

/** Every seam of the ceiling: a ridge is level with both planes falling away, a hip slopes; in a valley both rise away. */
export function seamsOf(facets: readonly CeilingFacet[]): Seam[] {
  const heightAt = facets.map(heightOver);
  const seams: Seam[] = [];
  facets.forEach((one, index) => {
    facets.slice(index + 1).forEach((other, step) => {
      for (const edge of edgesOf(one)) {
        for (const candidate of edgesOf(other)) {
          const shared = overlapOf(edge, candidate);
          if (shared !== undefined)
            seams.push(seamOf(shared, one, other, heightAt[index]!, heightAt[index + 1 + step]!));
        }
      }
    });
  });
  return seams;
}

function seamOf(edge: Edge, one: CeilingFacet, other: CeilingFacet, heightOne: HeightAt, heightOther: HeightAt): Seam {
  const heights = [heightOne(edge.a), heightOne(edge.b)] as const;
  const beside = [heightOther(edge.a), heightOther(edge.b)] as const;
  const differs = heights.some((height, index) => Math.abs(height - beside[index]!) > 1_600_000);
  if (differs) return { ...edge, kind: 'step', heights };
  const run = Math.hypot(edge.b.x - edge.a.x, edge.b.y - edge.a.y);
  const along = [(edge.b.x - edge.a.x) / run, (edge.b.y - edge.a.y) / run] as const;
  // Outlines go counter-clockwise, so that the first facet is to the left of its edge.
  const inward = [-along[1], along[0]] as const;
  const intoOne = gradient(one, inward);
  const intoOther = -gradient(other, inward);
  const isLevel = Math.abs(gradient(one, along)) < level;
  if (intoOne < -level && intoOther < -level) return { ...edge, kind: isLevel ? 'ridge' : 'hip', heights };
  if (intoOne > level && intoOther > level) return { ...edge, kind: 'valley', heights };
  return { ...edge, kind: 'break', heights };
}

type HeightAt = (point: Point) => Length;

/** Height of the ceiling's plane over a place of the plan. */
function heightOver(facet: CeilingFacet): HeightAt {
  const plane = facetPlane(facet);
  return (point) => lengthOf(heightOn(plane, pointInFeet(point)));
}

function gradient(facet: CeilingFacet, direction: readonly [number, number]): number {
  const turn = (facet.riseDirection * Math.PI) / 180;
  return facet.slope * (Math.cos(turn) * direction[0] + Math.sin(turn) * direction[1]);
}
