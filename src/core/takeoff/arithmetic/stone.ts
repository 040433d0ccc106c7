import { feet, type Area, type Length } from '../../../base/units/index.js';

/** Flats for a face: its area less what the corner pieces cover, never below nothing. `covers` is square feet for a foot of
 *  corner and differs by maker: 0.5 and 0.75 are published, so it is product data. */
export function stoneFlats(area: Area, corners: Length, covers: number): Area {
  return Math.max(0, area - feet(corners) * covers) as Area;
}
