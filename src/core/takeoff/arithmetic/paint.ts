import type { Area } from '../../../base/units/index.js';
import { wholePieces } from './whole.js';

/** Gallons for an area painted in coats, at a spread in square feet for a gallon and a coat, and the cans to buy. The spread
 *  is product data. Common practice, no source. */
export function paintFor(
  area: Area,
  coats: number,
  spread: number,
  canHolds = 1,
): { readonly gallons: number; readonly cans: number } {
  const gallons = (area * coats) / spread;
  return { gallons, cans: wholePieces(gallons / canHolds) };
}
