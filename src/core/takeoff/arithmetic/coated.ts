import { feet, inches, type Area, type Length } from '../../../base/units/index.js';

/** Square feet of a run of trim that is coated: its face, and as many of its edges as are seen. Geometry of the profile; a molded one is
 *  taken as flat. Common practice, no source. */
export function trimFaces(
  run: number,
  { face, thickness, edges }: { readonly face: Length; readonly thickness: Length; readonly edges: number },
): Area {
  return (run * (feet(face) + edges * feet(thickness))) as Area;
}

/** Both faces and all four edges of each leaf; panels and glass are taken as flat. Common practice, no source. */
export function leafFaces(
  opening: { readonly width: Length; readonly height: Length },
  thickness: Length,
  leaves: 1 | 2,
): Area {
  const [wide, high, thick] = [feet(opening.width), feet(opening.height), feet(thickness)];
  return (2 * wide * high + thick * 2 * (wide + leaves * high)) as Area;
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
