import { sidesOf, type OpeningForm } from '../../opening/index.js';
import { feet, type Length } from '../../../base/units/index.js';

/** Feet of casing around one side of an opening: two legs and a head, for a window a fourth side. Head and sill run past
 *  the legs by the casing's face at each end; without a face they end at the opening. A curved head is as long as the edge that it
 *  follows and butts the legs, so that it runs past nothing. Common practice, no source. */
export function casingLength(
  opening: OpeningForm & { readonly sides: 3 | 4 },
  face: Length = 0 as Length,
): { readonly opening: number; readonly past: number } {
  const { head, left, right, sill } = sidesOf(opening);
  const isCurved = opening.shape?.is === 'round' || opening.shape?.is === 'arch';
  const past = (isCurved ? 0 : 1) + (opening.sides === 4 && sill > 0 ? 1 : 0);
  return {
    opening: left + right + head + (opening.sides === 4 ? sill : 0),
    past: past * 2 * feet(face),
  };
}
