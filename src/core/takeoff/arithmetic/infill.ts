import { feet, fromFeet, type Length } from '../../../base/units/index.js';
import { wholePieces } from './whole.js';

/** The fewest balusters with which no gap of a bay is wider than `widest`, a gap at each post included, and the gap that they
 *  leave then: all alike. `bay` is what is clear between the posts. */
export function balustersIn(
  bay: Length,
  width: Length,
  widest: Length,
): { readonly balusters: number; readonly gap: Length } {
  if (bay <= 0 || width + widest <= 0) return { balusters: 0, gap: bay };
  const balusters = wholePieces((bay - widest) / (width + widest));
  return { balusters, gap: fromFeet((feet(bay) - balusters * feet(width)) / (balusters + 1)) };
}

/** The fewest cables with which no gap from the floor to the top of the rail is wider than `apart`, centre to centre. */
export function cablesUnder(height: Length, apart: Length): number {
  return apart > 0 ? Math.max(0, wholePieces(height / apart) - 1) : 0;
}
