import {
  bounds,
  direction,
  distance,
  pointInFeet,
  ringInFeet,
  type Bounds,
  type Ring,
  type Xy,
} from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { Records, Room, RoomMeasure, WallMeasure } from '../model/index.js';
import { elevationsOf } from './elevation.js';
import { thicknessOf, type Thickness } from './wall-thickness.js';

/** One side of a room, in the room's own coordinates, in feet. */
export interface Side {
  /** Index in the room's sides. */
  readonly index: number;
  readonly wall: WallMeasure;
  /** Left and right end, facing it from inside. */
  readonly from: Xy;
  readonly to: Xy;
  /** Unit vectors: from its left end to its right, and out of the room. */
  readonly along: Xy;
  readonly out: Xy;
  /** Straight from end to end. */
  readonly run: number;
  /** Of the wall that stands there, face to face, as far as its records say. */
  readonly thickness: Thickness;
  /** Meant to stand out of line, or in no wall's usual thickness. */
  readonly isJog: boolean;
}

/** A room as laying out sees it, in feet. */
export interface LayRoom {
  readonly index: number;
  readonly slug: string;
  readonly record: Room;
  readonly measure: RoomMeasure;
  /** Index in the house's levels, lowest first. */
  readonly level: number;
  /** Of its floor and of its ceiling's highest place over the lowest level's floor, where the levels say. */
  readonly floor?: number;
  readonly top?: number;
  readonly outline: Ring;
  readonly box: Bounds;
  readonly sides: readonly Side[];
}

export function layRoomsOf(
  { house, rooms }: Pick<Records, 'house' | 'rooms'>,
  measures: ReadonlyMap<string, RoomMeasure>,
): readonly LayRoom[] {
  const elevations = elevationsOf(house.levels);
  const ids = house.levels.map(({ id }) => id);
  const laid: LayRoom[] = [];
  for (const record of rooms) {
    const measure = measures.get(record.slug);
    if (!measure) continue;
    const floor = elevations.get(record.level);
    const outline = ringInFeet(measure.plan);
    laid.push({
      index: laid.length,
      slug: record.slug,
      record,
      measure,
      level: ids.indexOf(record.level),
      ...(floor !== undefined && { floor, top: floor + feet(measure.highest) }),
      outline,
      box: bounds(outline),
      sides: measure.walls.map((wall, index) =>
        sideBetween(index, wall, pointInFeet(wall.from), pointInFeet(wall.to), {
          thickness: thicknessOf(record.wallTypes?.[wall.id], house),
          isJog: record.jogs?.includes(wall.id) === true,
        }),
      ),
    });
  }
  return laid;
}

function sideBetween(
  index: number,
  wall: WallMeasure,
  from: Xy,
  to: Xy,
  { thickness, isJog }: Pick<Side, 'thickness' | 'isJog'>,
): Side {
  const along = direction(from, to);
  // Sides go clockwise, so out of the room is to the left.
  const out = { x: -along.y, y: along.x };
  return { index, wall, from, to, along, out, run: distance(from, to), thickness, isJog };
}

/** The room with one side moved outward by `by` feet, its neighbours drawn out or in along their lines. Undefined where they
 *  run on in its own line, so that it can't move by itself, and where nothing would be left of it or of a neighbour. */
export function withSideMoved(room: LayRoom, moved: number, by: number): LayRoom | undefined {
  const count = room.sides.length;
  const side = room.sides[moved] as Side;
  const before = room.sides[(moved + count - 1) % count] as Side;
  const after = room.sides[(moved + 1) % count] as Side;
  const from = slid(side.from, side.out, before.along, by);
  const to = slid(side.to, side.out, after.along, by);
  if (!from || !to) return undefined;
  const ends = room.sides.map((one): Ends => ({ from: one.from, to: one.to }));
  ends[moved] = { from, to };
  ends[before.index] = { from: (ends[before.index] as Ends).from, to: from };
  ends[after.index] = { from: to, to: (ends[after.index] as Ends).to };
  if ([before, side, after].some(({ index, along }) => !runsOn(ends[index] as Ends, along))) return undefined;
  const outline = ends.map((one) => one.from);
  return {
    ...room,
    outline,
    box: bounds(outline),
    sides: room.sides.map((one, index) => {
      const { from: left, to: right } = ends[index] as Ends;
      return sideBetween(index, one.wall, left, right, one);
    }),
  };
}

type Ends = Pick<Side, 'from' | 'to'>;

function runsOn({ from, to }: Ends, along: Xy): boolean {
  return (to.x - from.x) * along.x + (to.y - from.y) * along.y > 0;
}

/** A corner moved along `line` until it lies `by` further along `out`. */
function slid(corner: Xy, out: Xy, line: Xy, by: number): Xy | undefined {
  const share = line.x * out.x + line.y * out.y;
  if (Math.abs(share) < 0.1) return undefined;
  return { x: corner.x + (line.x * by) / share, y: corner.y + (line.y * by) / share };
}
