import { aroundOf, openingArea, type OpeningForm } from '../../opening/index.js';
import { feet, inches, type Area, type Length } from '../../../base/units/index.js';

/** Square feet of a run of trim that is coated: its face, and as many of its edges as are seen. Geometry of the profile; a molded one is
 *  taken as flat. Common practice, no source. */
export function trimFaces(
  run: number,
  { face, thickness, edges }: { readonly face: Length; readonly thickness: Length; readonly edges: number },
): Area {
  return (run * (feet(face) + edges * feet(thickness))) as Area;
}

/** Both faces and all edges of each leaf, which has the opening's shape; two leaves meet in its middle. Panels and glass are taken as
 *  flat. Common practice, no source. */
export function leafFaces(opening: OpeningForm, thickness: Length, leaves: 1 | 2): Area {
  const meeting = leaves === 2 ? 2 * middleHeight(opening) : 0;
  return (2 * openingArea(opening) + feet(thickness) * (aroundOf(opening) + meeting)) as Area;
}

function middleHeight({ height, shape }: OpeningForm): number {
  return shape?.is === 'rake' ? (feet(height) + feet(shape.to)) / 2 : feet(height);
}

/** Three or four sides of a dressed section along its pieces; under a ceiling the top is hidden. Ends are left out. Source: geometry. */
export function timberFaces(
  section: { readonly width: Length; readonly depth: Length },
  run: Length,
  sides: 3 | 4,
): Area {
  const around = 2 * feet(section.depth) + (sides === 4 ? 2 : 1) * feet(section.width);
  return (around * feet(run)) as Area;
}

/** Treads with what is before the riser below and the front edge; where the stair is open, the underside and the back edge too. Source:
 *  geometry. */
export function treadFaces(treads: number, { width, going, nosing, thickness, isOpen }: Treads): Area {
  const deep = inches(going) + inches(nosing) + inches(thickness);
  return ((treads * inches(width) * deep * (isOpen ? 2 : 1)) / 144) as Area;
}

interface Treads {
  readonly width: Length;
  readonly going: Length;
  readonly nosing: Length;
  readonly thickness: Length;
  readonly isOpen: boolean;
}
