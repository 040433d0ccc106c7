import type { MeasuredArc } from '../../core/model/index.js';
import type { PlanOpening, PlanWall } from '../../core/book/index.js';
import type { Spot } from '../convex.js';
import type { Sheet } from '../sheet.js';

/** A wall on the sheet. Walls go clockwise; `outward` points away from the room. Lengths are in points. */
export interface WallLine<Wall extends PlanWall = PlanWall> extends StraightLine {
  readonly wall: Wall;
  readonly from: Spot;
  readonly to: Spot;
  /** Its own, along the arc where it is one; `along` and `outward` are those of the straight way between its ends. */
  readonly length: number;
  readonly thickness: number;
  readonly isOpen: boolean;
  /** Openings that the plan cuts through. */
  readonly openings: readonly PlanOpening[];
  /** Openings that begin above the plane of the plan. */
  readonly above: readonly PlanOpening[];
  /** Places between two along it at which the line goes another way; none on a straight wall. */
  bends(from: number, to: number): readonly number[];
  /** Which way it goes at a place along it. */
  ahead(u: number): Spot;
}

/** A straight line of the plan, with the room to its right. */
export interface StraightLine {
  readonly along: Spot;
  readonly outward: Spot;
  readonly length: number;
  /** The place `u` along from the left and `v` outward from the inner face, both in points. */
  at(u: number, v: number): Spot;
}

/** Thicknesses are drawn, not measured: the records hold inside faces. Six and a half inches stand for walls with an opening to
 *  the outside, four and a half for the others. */
const outsideWall = 6.5 * 25_400_000;
const insideWall = 4.5 * 25_400_000;

/** A plan is looked down on from about here. Common practice, no source. */
export const planeHeight = 5 * 304_800_000;

export function wallLines<Wall extends PlanWall>(
  sheet: Sheet,
  room: { readonly walls: readonly Wall[]; readonly openings: readonly PlanOpening[] },
): WallLine<Wall>[] {
  return room.walls.map((wall) => {
    const openings = room.openings.filter((opening) => opening.wall === wall.id);
    const from = sheet.spot(wall.from);
    const to = sheet.spot(wall.to);
    const line = wall.arc ? arcLine(sheet, wall, wall.arc) : straightLine(from, to);
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

/** Its inner face, or one beside it, from one place along it to another. */
export function faceSpots(line: WallLine, from: number, to: number, out = 0): Spot[] {
  return [from, ...line.bends(from, to), to].map((u) => line.at(u, out));
}

/** A line from one spot to another. */
export function lineThrough(from: Spot, to: Spot): StraightLine {
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

type Line = StraightLine & Pick<WallLine, 'bends' | 'ahead'>;

function straightLine(from: Spot, to: Spot): Line {
  const line = lineThrough(from, to);
  return { ...line, bends: () => [], ahead: () => line.along };
}

/** An arc with the room on its right hand. What bows out of the room goes clockwise, as walls do. */
function arcLine(sheet: Sheet, { from, to, run }: PlanWall, { center, radius, bows, line }: MeasuredArc): Line {
  const [middle, start] = [sheet.spot(center), sheet.spot(from)];
  const [points, length] = [radius * sheet.perNanometre, run * sheet.perNanometre];
  const begin = Math.atan2(start[1] - middle[1], start[0] - middle[0]);
  // On the sheet y goes down, so that clockwise is the way of growing angles.
  const way = bows === 'out' ? 1 : -1;
  const angle = (u: number): number => begin + (way * u) / points;
  return {
    ...lineThrough(start, sheet.spot(to)),
    length,
    at: (u, v) => {
      const off = points + way * v;
      return [middle[0] + off * Math.cos(angle(u)), middle[1] + off * Math.sin(angle(u))];
    },
    bends: (low, high) =>
      line.map(({ along }) => along * sheet.perNanometre).filter((u) => u > low + 0.05 && u < high - 0.05),
    ahead: (u) => [-way * Math.sin(angle(u)), way * Math.cos(angle(u))],
  };
}
