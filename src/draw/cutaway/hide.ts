import {
  along,
  faceBeyond,
  inPlane,
  patchFrom,
  placeOn,
  spaceDot,
  without,
  type Patch,
  type Ring,
} from '../../base/geometry/index.js';
import type { Facet } from './facet.js';
import type { Axonometry } from './view.js';

/** What is left of a facet that is drawn after another, without what the other hides of it: so far as the other is the nearer one. */
export function unhidden(facet: Facet, other: Facet, { toward }: Axonometry): readonly Patch[] {
  const { at, faces } = facet.plane;
  const nearer = faceBeyond(other, faces, spaceDot(at, faces));
  const steep = spaceDot(toward, faces);
  const cast = (ring: Ring): Ring =>
    ring.map((corner) => {
      const place = placeOn(other.plane, corner);
      const off = spaceDot(place, faces) - spaceDot(at, faces);
      return inPlane(facet.plane, along(place, toward, -off / steep));
    });
  const shadows = nearer.map(({ outline, holes }) => patchFrom(cast(outline), holes.map(cast)));
  return shadows.length === 0 ? facet.patches : without(facet.patches, shadows);
}
