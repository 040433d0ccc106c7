import { feet, type Length } from '../../../base/units/index.js';

/** Feet of casing around one side of an opening: two legs and a head, for a window a fourth side. Head and sill run past
 *  the legs by the casing's face at each end; without a face they end at the opening. Common practice, no source. */
export function casingLength(
  opening: { readonly width: Length; readonly height: Length; readonly sides: 3 | 4 },
  face: Length = 0 as Length,
): { readonly opening: number; readonly past: number } {
  const across = opening.sides === 4 ? 2 : 1;
  return {
    opening: 2 * feet(opening.height) + across * feet(opening.width),
    past: across * 2 * feet(face),
  };
}
