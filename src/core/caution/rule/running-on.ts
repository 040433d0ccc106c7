import {
  cross,
  direction,
  distance,
  edges,
  heightOn,
  minus,
  planeFrom,
  plus,
  pointInFeet,
  ringInFeet,
  type Plane,
  type Xy,
} from '../../../base/geometry/index.js';
import type { CeilingFacet, WallMeasure } from '../../model/index.js';
import { feet } from '../../../base/units/index.js';
import { offsetBetween, type HouseView, type RoomView } from '../view.js';

/** What rooms' tapes may leave between faces that are one, in feet. Common practice, no source: what laying out passes over at a joint. */
const play = 0.5 / 12;

/** Turned by more than this, one in fifty, a surface folds: about a degree. Common practice, no source. */
const fold = 0.02;

/** Ceilings that meet along less than this, in feet, meet in a corner. */
const leastMeeting = 0.5;

/** Walls of two rooms that go on from one another in one plane, by id. */
export interface WallsRunningOn {
  readonly here: string;
  readonly there: string;
}

/** At either end of an open side, the wall that goes on in the room beside it without a corner. Undefined where it is not known how the two rooms
 *  stand. */
export function wallsRunningOn(
  house: HouseView,
  room: RoomView,
  side: WallMeasure,
  beside: RoomView,
): readonly WallsRunningOn[] | undefined {
  const offset = offsetBetween(house, room, beside);
  if (!offset) return undefined;
  const { walls } = room.measure;
  const index = walls.indexOf(side);
  const ends = [
    { wall: walls.at(index - 1), end: pointInFeet(side.from) },
    { wall: walls[(index + 1) % walls.length], end: pointInFeet(side.to) },
  ];
  return ends.flatMap(({ wall, end }) => {
    if (!wall || !isPlain(wall)) return [];
    const ahead = direction(pointInFeet(wall.from), pointInFeet(wall.to));
    return beside.measure.walls
      .filter((other) => isPlain(other) && passes(other, minus(end, offset), ahead))
      .map((other) => ({ here: wall.id, there: other.id }));
  });
}

/** A wall that stands, upright, in one plane. */
function isPlain({ openTo, arc, lean }: WallMeasure): boolean {
  return openTo === undefined && arc === undefined && lean === undefined;
}

/** Whether a wall touches a place, looking the same way. */
function passes(wall: WallMeasure, at: Xy, ahead: Xy): boolean {
  const [from, to] = [pointInFeet(wall.from), pointInFeet(wall.to)];
  const own = direction(from, to);
  if (dot(own, ahead) < 0 || Math.abs(cross(own, ahead)) > fold) return false;
  const off = minus(at, from);
  const along = dot(off, own);
  return Math.abs(cross(own, off)) < play && along > -play && along < distance(from, to) + play;
}

/** Whether ceilings of two rooms go on from one another over an open side without a step or a fold; so it is taken to be where it is not
 *  known how the two rooms stand. */
export function areCeilingsRunningOn(house: HouseView, room: RoomView, side: WallMeasure, beside: RoomView): boolean {
  const offset = offsetBetween(house, room, beside);
  const rise = riseBetween(room, beside);
  if (!offset || rise === undefined) return true;
  const line = [pointInFeet(side.from), pointInFeet(side.to)] as const;
  const here = stretchesAlong(line, room.measure.ceiling.facets, { x: 0, y: 0 }, 0);
  const there = stretchesAlong(line, beside.measure.ceiling.facets, offset, rise);
  return here.some((one) => there.some((other) => areOne(line, one, other)));
}

/** From one room's floor up to the other's, in feet. Undefined where their levels differ and no height above the ground is recorded. */
function riseBetween(room: RoomView, beside: RoomView): number | undefined {
  if (room.aboveGround !== undefined && beside.aboveGround !== undefined)
    return feet(beside.aboveGround) - feet(room.aboveGround);
  return room.level === beside.level ? 0 : undefined;
}

/** A stretch of a line in plan, from its start, along which a plane of a ceiling ends. */
interface CeilingEdge {
  readonly from: number;
  readonly to: number;
  readonly plane: Plane;
}

function stretchesAlong(
  [start, end]: readonly [Xy, Xy],
  facets: readonly CeilingFacet[],
  offset: Xy,
  rise: number,
): readonly CeilingEdge[] {
  const ahead = direction(start, end);
  return facets.flatMap((facet) => {
    const outline = ringInFeet(facet.plan.outline).map((point) => plus(point, offset));
    const plane = planeOf(facet, outline, rise);
    return edges(outline).flatMap((edge): readonly CeilingEdge[] => {
      if (edge.some((point) => Math.abs(cross(ahead, minus(point, start))) > play)) return [];
      const along = edge.map((point) => dot(ahead, minus(point, start)));
      return [{ from: Math.min(...along), to: Math.max(...along), plane }];
    });
  });
}

/** The plane of a facet over its outline, as moved, which gives how high its highest corner is. */
function planeOf({ slope, riseDirection, highest }: CeilingFacet, outline: readonly Xy[], rise: number): Plane {
  const turn = (riseDirection * Math.PI) / 180;
  const toward = { x: Math.cos(turn), y: Math.sin(turn) };
  const [top] = outline.toSorted((a, b) => dot(b, toward) - dot(a, toward));
  return planeFrom(top ?? { x: 0, y: 0 }, feet(highest) + rise, toward, slope);
}

function areOne([start, end]: readonly [Xy, Xy], one: CeilingEdge, other: CeilingEdge): boolean {
  const [from, to] = [Math.max(one.from, other.from, 0), Math.min(one.to, other.to, distance(start, end))];
  if (to - from < leastMeeting) return false;
  const ahead = direction(start, end);
  const isFolded = Math.hypot(one.plane.a - other.plane.a, one.plane.b - other.plane.b) > fold;
  return (
    !isFolded &&
    [from, to].every((along) => {
      const at = { x: start.x + ahead.x * along, y: start.y + ahead.y * along };
      return Math.abs(heightOn(one.plane, at) - heightOn(other.plane, at)) < play;
    })
  );
}

function dot(a: Xy, b: Xy): number {
  return a.x * b.x + a.y * b.y;
}
