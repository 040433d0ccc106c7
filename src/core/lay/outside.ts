import { areaOf, intersect, patchFrom, subtract, type Patch } from '../../base/geometry/index.js';
import { feet, keepSame } from '../../base/units/index.js';
import { wallShape, wallWithin } from '../measure/index.js';
import { surfaceOnly, type OpeningMeasure, type Surface, type WallMeasure } from '../model/index.js';
import { alongSide, crossing, type Stretch } from './behind.js';
import type { LayRoom, Side } from './laid-room.js';

/** Less than this of a wall, in square feet, is where walls cross. */
const leastPart = 2;

/** A wall in its two parts; one of them is absent where the other is all of it. */
export interface WallParts {
  readonly outside?: Surface;
  readonly inside?: Surface;
}

/** What of a wall stands to the outside, or to no room above a lower neighbour: its shape less what each neighbour covers, from the neighbour's
 *  floor to its ceiling, and on to the floor above where a room stands there too. What is open to a room, or to the outside, is of that side. */
export function partsOf(
  room: LayRoom,
  side: Side,
  behind: readonly Stretch[],
  keepsOff: (slug: string) => boolean,
): WallParts {
  const { wall } = side;
  const leadsOut = ({ to }: OpeningMeasure): boolean => !keepsOff(to);
  const openings = room.measure.openings.filter((opening) => opening.wall === wall.id);
  const neighbours = levelsBehind(behind).flatMap((level) => {
    const own = behind.filter((stretch) => stretch.behind?.room.level === level);
    return alongSide(side, level, own).flatMap((stretch) => coverOf(stretch, room) ?? []);
  });
  if (wall.arc && isInsideArc(wall, openings, leadsOut)) return { inside: surfaceOnly(wall) };
  const [toOutside, toRooms] = [openings.filter(leadsOut), openings.filter((opening) => !leadsOut(opening))];
  const each = [...neighbours, ...toRooms.map(coverOfOpening)];
  const covers = [...each, ...crossingsOf(each, crossing(side))];
  if (covers.length === 0) {
    const isWhole = isEndOfWall(room, side) && toOutside.length === 0;
    return isWhole ? { inside: surfaceOnly(wall) } : { outside: surfaceOnly(wall) };
  }
  return parted(wall, JSON.stringify(covers), toOutside, toRooms);
}

/** Cuts a wall along its covers, as JSON. Houses that differ in one room have most walls in common, with the same behind them. */
const parted = keepSame(
  (
    wall: WallMeasure,
    covering: string,
    toOutside: readonly OpeningMeasure[],
    toRooms: readonly OpeningMeasure[],
  ): WallParts => {
    const covers = JSON.parse(covering) as readonly Cover[];
    const shape = wallShape(wall);
    const free = [...covers, ...bridgesOf(covers)].map(rectangle).reduce<readonly Patch[]>(subtract, [shape]);
    const windows = toOutside.flatMap((opening) => intersect([shape], rectangle(coverOfOpening(opening))));
    const out = [...free, ...free.reduce<readonly Patch[]>(subtract, windows)];
    const left = out.reduce<readonly Patch[]>(subtract, [shape]);
    if (areaOf(out) < leastPart) return { inside: surfaceOnly(wall) };
    if (areaOf(left) < leastPart) return { outside: surfaceOnly(wall) };
    return { outside: wallWithin(wall, out, toOutside), inside: wallWithin(wall, left, toRooms) };
  },
);

/** What stands behind an arc is not laid out: a room does where the wall's record or an opening in it says so. */
function isInsideArc(
  { beside = [] }: WallMeasure,
  openings: readonly OpeningMeasure[],
  leadsOut: (opening: OpeningMeasure) => boolean,
): boolean {
  return beside.length + openings.length > 0 && !openings.some(leadsOut);
}

/** A side beside an open one that is no longer than a wall is thick: there the wall ends that goes on behind it. */
export function isEndOfWall({ sides }: LayRoom, side: Side): boolean {
  const beside = [sides.at(side.index - 1), sides[(side.index + 1) % sides.length]];
  return side.run < crossing(side) && beside.some((other) => other?.wall.openTo !== undefined);
}

function levelsBehind(behind: readonly Stretch[]): readonly number[] {
  return [...new Set(behind.flatMap(({ behind: one }) => one?.room.level ?? []))];
}

/** What a neighbour covers of a wall, in the wall's plane. */
interface Cover {
  readonly from: number;
  readonly to: number;
  readonly floor: number;
  readonly top: number;
}

function coverOf({ from, to, behind }: Stretch, room: LayRoom): Cover | undefined {
  if (!behind) return undefined;
  const floor =
    behind.room.level === room.level
      ? 0
      : behind.room.floor === undefined || room.floor === undefined
        ? undefined
        : behind.room.floor - room.floor;
  if (floor === undefined) return undefined;
  const highest = Math.max(...behind.side.wall.top.map(({ height }) => feet(height)));
  return { from, to, floor, top: floor + highest };
}

function coverOfOpening({ at, width, sill, height }: OpeningMeasure): Cover {
  return { from: feet(at), to: feet(at) + feet(width), floor: feet(sill), top: feet(sill) + feet(height) };
}

/** Where what is open to a room and the next room behind a wall are no farther apart than a wall is thick, the wall between them ends there. */
function crossingsOf(covers: readonly Cover[], thickest: number): readonly Cover[] {
  return covers.flatMap((cover) =>
    covers.flatMap((next): readonly Cover[] => {
      const [from, to] = [cover.to, next.from];
      const [floor, top] = [Math.max(cover.floor, next.floor), Math.min(cover.top, next.top)];
      return to > from && to - from < thickest && top > floor ? [{ from, to, floor, top }] : [];
    }),
  );
}

/** Between a neighbour's ceiling and the floor of what stands over it is the inside of the house. */
function bridgesOf(covers: readonly Cover[]): readonly Cover[] {
  return covers.flatMap((cover) =>
    covers.flatMap((above): readonly Cover[] => {
      const [from, to] = [Math.max(cover.from, above.from), Math.min(cover.to, above.to)];
      return above.floor > cover.top && to > from ? [{ from, to, floor: cover.top, top: above.floor }] : [];
    }),
  );
}

function rectangle({ from, to, floor, top }: Cover): Patch {
  return patchFrom([
    { x: from, y: floor },
    { x: to, y: floor },
    { x: to, y: top },
    { x: from, y: top },
  ]);
}
