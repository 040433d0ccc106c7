import {
  areaOf,
  intersect,
  patchContains,
  patchFrom,
  regionOf,
  ringInFeet,
  subtract,
  type Patch,
} from '../../base/geometry/index.js';
import { feet, type Area } from '../../base/units/index.js';
import {
  surfaceOnly,
  wallFoot,
  type Deduction,
  type OpeningMeasure,
  type Region,
  type RoomMeasure,
  type Surface,
  type WallMeasure,
} from '../model/index.js';
import { alongSide, type Stretch } from './behind.js';
import type { LayRoom, Side } from './laid-room.js';

/** Less than this of a wall, in square feet, is where walls cross. */
const leastOutside = 2;

/** What of a wall stands to the outside, or to no room above a lower neighbour: its shape less what each neighbour covers, from the neighbour's
 *  floor to its ceiling, and on to the floor above where a room stands there too, and less what is open to a room that `keepsOff` the outside.
 *  Undefined where that is nothing. */
export function outsideOf(
  room: LayRoom,
  side: Side,
  behind: readonly Stretch[],
  keepsOff: (slug: string) => boolean,
): Surface | undefined {
  const { wall } = side;
  const covers = levelsBehind(behind).flatMap((level) => {
    const own = behind.filter((stretch) => stretch.behind?.room.level === level);
    return alongSide(side, level, own).flatMap((stretch) => coverOf(stretch, room) ?? []);
  });
  // What is open to a room is no outside, also where no wall of that room stands behind it.
  const open = room.measure.openings.filter((opening) => opening.wall === wall.id && keepsOff(opening.to));
  if (covers.length === 0 && open.length === 0) return surfaceOnly(wall);
  const patches = [
    ...covers.map((cover) => rectangle(cover, topOf(cover, covers))),
    ...open.map(openingRectangle),
  ].reduce<readonly Patch[]>(subtract, [shapeOf(wall)]);
  if (areaOf(patches) < leastOutside) return undefined;
  return within(wall, patches, room.measure);
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

/** The floor above a neighbour, where a room stands over it, is inside the house. */
function topOf(cover: Cover, covers: readonly Cover[]): number {
  const above = covers.filter(({ from, to, floor }) => floor > cover.floor && from < cover.to && to > cover.from);
  return Math.max(cover.top, ...above.map(({ floor }) => floor));
}

function openingRectangle({ at, width, sill, height }: OpeningMeasure): Patch {
  const [from, floor] = [feet(at), feet(sill)];
  return rectangle({ from, to: from + feet(width), floor, top: floor }, floor + feet(height));
}

function rectangle({ from, to, floor }: Cover, top: number): Patch {
  return patchFrom([
    { x: from, y: floor },
    { x: to, y: floor },
    { x: to, y: top },
    { x: from, y: top },
  ]);
}

function shapeOf(wall: WallMeasure): Patch {
  const line = (points: WallMeasure['top']) => points.map(({ along, height }) => ({ x: feet(along), y: feet(height) }));
  return patchFrom([...line(wallFoot(wall)), ...line(wall.top).toReversed()]);
}

function opensThere({ to, at, width, sill, height }: OpeningMeasure, patches: readonly Patch[]): boolean {
  if (to === 'outside') return true;
  const middle = { x: feet(at) + feet(width) / 2, y: feet(sill) + feet(height) / 2 };
  return patches.some((patch) => patchContains(patch, middle));
}

/** A wall's surface, as much of it as lies within some shapes in its plane. */
function within(wall: WallMeasure, patches: readonly Patch[], { openings }: RoomMeasure): Surface {
  const clip = (region: Region): readonly Patch[] => patches.flatMap((patch) => intersect([patchOf(region)], patch));
  const deductions = wall.deductions.flatMap((deduction): readonly Deduction[] => {
    const opening = openings.find(({ mark, wall: of }) => mark === deduction.of && of === wall.id);
    if (deduction.kind === 'opening') return opening && opensThere(opening, patches) ? [deduction] : [];
    const { hidden } = deduction;
    if (!hidden) return [];
    const pieces = hidden.pieces.flatMap(({ region }) => clip(region).map((patch) => ({ region: regionOf(patch) })));
    const area = areaOf(pieces.map(({ region }) => patchOf(region)));
    return area > 0 ? [{ ...deduction, area: area as Area, hidden: { by: hidden.by, pieces } }] : [];
  });
  const gross = areaOf(patches);
  const net = deductions.reduce((sum, { area }) => sum - area, gross);
  const regions = wall.regions.flatMap(clip).map(regionOf);
  return { id: wall.id, name: wall.name, gross: gross as Area, deductions, net: Math.max(0, net) as Area, regions };
}

function patchOf({ outline, holes }: Region): Patch {
  return patchFrom(ringInFeet(outline), holes.map(ringInFeet));
}
