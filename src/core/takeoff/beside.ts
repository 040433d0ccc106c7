import { pointInFeet, turnsLeft, type Xy } from '../../base/geometry/index.js';
import {
  isDownToFloor,
  wallLine,
  type GoesWith,
  type OpeningMeasure,
  type RoomMeasure,
  type WallMeasure,
} from '../model/index.js';
import { sidesOf } from '../opening/index.js';
import { feet, type Length } from '../../base/units/index.js';
import { hingesFor } from './arithmetic/index.js';
import type { Place } from './places.js';

/** What is at some places beside their net quantity: outside corners in feet, pairs of leaves, hinges. */
export type Beside = Readonly<Record<GoesWith, number>>;

export function besideOf(places: readonly Place[], measure: RoomMeasure): Beside {
  const walls = new Set(places.filter(({ kind }) => kind === 'wall').map(({ id }) => id));
  const doors = places.flatMap((place) =>
    place.kind === 'opening' && place.opening.own && place.opening.kind === 'door' ? [place.opening] : [],
  );
  return {
    'outside-corners': outsideCorners(walls, measure),
    pairs: doors.filter(({ operation }) => operation === 'double').length,
    hinges: doors.reduce((sum, door) => sum + hingesOf(door), 0),
  };
}

/** Hinges of a door that swings: each leaf by its height. */
export function hingesOf({ kind, operation, height }: Pick<OpeningMeasure, 'kind' | 'operation' | 'height'>): number {
  if (kind !== 'door') return 0;
  if (operation === 'double') return 2 * hingesFor(height);
  return operation === 'swing' ? hingesFor(height) : 0;
}

/** Feet of outside corner: where two walls meet and turn away from the room, counted with the wall that ends there, and around openings
 *  that have neither leaf nor casing, on this side. What is cased has none. Corners of features are not among them. */
function outsideCorners(of: ReadonlySet<string>, { walls, openings }: RoomMeasure): number {
  const turns = walls.map((wall, index) => {
    const next = walls[(index + 1) % walls.length];
    return next && of.has(wall.id) && turnsAway(wall, next) ? lower(endOf(wall), startOf(next)) : 0;
  });
  const around = openings.map((opening) => (opening.kind === 'open' && of.has(opening.wall) ? cornersOf(opening) : 0));
  return [...turns, ...around].reduce((sum, length) => sum + length, 0);
}

/** Down to the floor it has no corner at its foot. */
function cornersOf(opening: OpeningMeasure): number {
  const { head, left, right, sill } = sidesOf(opening);
  return head + left + right + (isDownToFloor(opening) ? 0 : sill);
}

/** Walls are walked clockwise from above: at an outside corner the walk turns left. No corner is where no wall stands. */
function turnsAway(wall: WallMeasure, next: WallMeasure): boolean {
  if (wall.openTo !== undefined || next.openTo !== undefined) return false;
  const [into, out] = [wallLine(wall).slice(-2), wallLine(next).slice(0, 2)].map((ends) =>
    ends.map(({ at }) => pointInFeet(at)),
  ) as [[Xy, Xy], [Xy, Xy]];
  return turnsLeft(into, out);
}

const endOf = ({ top }: WallMeasure): Length => top.at(-1)?.height ?? (0 as Length);
const startOf = ({ top }: WallMeasure): Length => top[0]?.height ?? (0 as Length);
const lower = (one: Length, other: Length): number => feet(Math.min(one, other) as Length);
