import type { OpeningMeasure, RoomMeasure, WallMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import type { Sheet } from '../sheet.js';

/** A wall on the sheet. Walls go clockwise; `outward` points away from the room. Lengths are in points. */
export interface WallLine {
  readonly wall: WallMeasure;
  readonly from: Spot;
  readonly to: Spot;
  readonly along: Spot;
  readonly outward: Spot;
  readonly length: number;
  readonly thickness: number;
  readonly isOpen: boolean;
  /** Openings that the plan cuts through. */
  readonly openings: readonly OpeningMeasure[];
  /** Openings that begin above the plane of the plan. */
  readonly above: readonly OpeningMeasure[];
  /** The place `u` along from the left and `v` outward from the inner face, both in points. */
  at(u: number, v: number): Spot;
}

/** Thicknesses are drawn, not measured: the records hold inside faces. Six and a half inches stand for walls with an opening to
 *  the outside, four and a half for the others. */
const outsideWall = 6.5 * 25_400_000;
const insideWall = 4.5 * 25_400_000;

/** A plan is looked down on from about here. Common practice, no source. */
export const planeHeight = 5 * 304_800_000;

export function wallLines(sheet: Sheet, measure: RoomMeasure): WallLine[] {
  return measure.walls.map((wall) => {
    const openings = measure.openings.filter((opening) => opening.wall === wall.id);
    const from = sheet.spot(wall.from);
    const to = sheet.spot(wall.to);
    const line = lineThrough(from, to);
    const isOutside = openings.some((opening) => opening.to === 'outside');
    return {
      wall,
      from,
      to,
      ...line,
      thickness: (isOutside ? outsideWall : insideWall) * sheet.perNanometre,
      isOpen: wall.openTo !== undefined,
      openings: openings.filter((opening) => opening.sill < planeHeight),
      above: openings.filter((opening) => opening.sill >= planeHeight),
    };
  });
}

/** A straight line of the plan, with the room to its right. */
export function lineThrough(from: Spot, to: Spot): Pick<WallLine, 'along' | 'outward' | 'length' | 'at'> {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Spot = length > 0 ? [(to[0] - from[0]) / length, (to[1] - from[1]) / length] : [1, 0];
  const outward: Spot = [along[1], -along[0]];
  return {
    along,
    outward,
    length,
    at: (u, v) => [from[0] + along[0] * u + outward[0] * v, from[1] + along[1] * u + outward[1] * v],
  };
}
