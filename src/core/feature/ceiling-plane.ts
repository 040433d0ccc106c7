import { heightOn, pointInFeet, type Plane } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { CeilingFacet } from '../model/index.js';

/** The plane that a part of the ceiling or of the floor lies in, in feet: its slope, its direction and its highest place fix it. */
export function facetPlane({
  slope,
  riseDirection,
  highest,
  plan,
}: Pick<CeilingFacet, 'slope' | 'riseDirection' | 'highest' | 'plan'>): Plane {
  const turn = (riseDirection * Math.PI) / 180;
  const [a, b] = slope === 0 ? [0, 0] : [slope * Math.cos(turn), slope * Math.sin(turn)];
  const rises = plan.outline.map((point) => heightOn({ a, b, c: 0 }, pointInFeet(point)));
  return { a, b, c: feet(highest) - Math.max(...rises) };
}
