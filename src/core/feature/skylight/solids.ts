import {
  along,
  faceThrough,
  placeOn,
  plus,
  pointInFeet,
  ringInFeet,
  slopedPlane,
  slopeOf,
  type Xy,
} from '../../../base/geometry/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import type { SolidFace, SolidSpace } from '../solid.js';
import type { Skylight } from './read.js';
import { shaftOf } from './shaft.js';

/** The four sides of the shaft, from the ceiling up to the skylight, and its glass. */
export function solids(data: Skylight, { id, opensCeiling }: FeatureMeasure, space: SolidSpace): readonly SolidFace[] {
  const hole = ringInFeet(opensCeiling ?? []);
  const ceiling = hole.length > 0 ? space.ceilingOver(middleOf(hole)) : undefined;
  if (!ceiling) return [];
  const shaft = shaftOf(data, slopeOf(ceiling));
  const plane = slopedPlane(ceiling);
  const origin = inSlope(plane, plus(space.corner, pointInFeet(data)));
  const corner = (x: number, y: number, up: number) =>
    along(placeOn(plane, { x: origin.x + x, y: origin.y + y }), plane.faces, up);
  const ring = (from: number, to: number, up: number) =>
    [corner(0, from, up), corner(shaft.width, from, up), corner(shaft.width, to, up), corner(0, to, up)] as const;
  const [low, high] = [ring(shaft.from, shaft.to, 0), ring(0, shaft.length, shaft.depth)];
  const side = (name: string, a: 0 | 1 | 2 | 3, b: 0 | 1 | 2 | 3): readonly SolidFace[] => {
    // Seen from within the shaft, from under it.
    const face = faceThrough([low[b], low[a], high[a], high[b]]);
    return face ? [{ ...face, places: [`${id}/${name}`, id, 'ceiling'] }] : [];
  };
  const glass = faceThrough([high[3], high[2], high[1], high[0]]);
  return [
    ...side('foot', 0, 1),
    ...side('right', 1, 2),
    ...side('head', 2, 3),
    ...side('left', 3, 0),
    ...(glass ? [{ ...glass, places: [], role: 'glass' as const }] : []),
  ];
}

/** A place of the plan in the axes of a slope that lies over it. */
function inSlope({ u, v }: ReturnType<typeof slopedPlane>, place: Xy): Xy {
  const across = place.x * u.x + place.y * u.y;
  const level = Math.hypot(v.x, v.y);
  return { x: across, y: (place.x * v.x + place.y * v.y) / (level * level) };
}

function middleOf(ring: readonly Xy[]): Xy {
  const sum = ring.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), { x: 0, y: 0 });
  return { x: sum.x / ring.length, y: sum.y / ring.length };
}
