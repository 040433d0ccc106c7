import { feet } from '../../../base/units/index.js';
import type { Area, Length } from '../../../base/units/index.js';
import { wholePieces } from './whole.js';

/** Flats for a face: its area less what the corner pieces cover, never below nothing. `covers` is square feet for a foot of
 *  corner and differs by maker: 0.5 and 0.75 are published, so it is product data. */
export function stoneFlats(area: Area, corners: Length, covers: number): Area {
  return Math.max(0, area - feet(corners) * covers) as Area;
}

/** Corner pieces to order, in whole feet. Source: practice of makers of thin stone, who round the run up. */
export function stoneCorners(corners: Length): number {
  return wholePieces(feet(corners));
}

/** Pounds on a square foot of a facing of this thickness. Source: thickness × density. */
export function facingWeight(thickness: Length, poundsPerCubicFoot: number): number {
  return feet(thickness) * poundsPerCubicFoot;
}
