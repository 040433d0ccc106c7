import { bounds, headings, signedArea, ringInFeet, type Ring, type Xy } from '../../../base/geometry/index.js';
import {
  compass,
  fromFeet,
  toRecordStep,
  writeLength,
  type CompassBearing,
  type Length,
} from '../../../base/units/index.js';
import { PartRefused } from '../refused.js';
import type { Space } from './space.js';
import type { Wall } from './wall.js';

/** A place in a room, from its south-west corner. */
export interface Place {
  readonly x: Length;
  readonly y: Length;
}

/** A wall as the record has it, its ends on whole steps. */
export interface PlanWall {
  readonly wall: Wall;
  readonly from: Place;
  readonly to: Place;
  readonly run: Length;
  /** Where it goes along one of the eight bearings. */
  readonly go?: CompassBearing;
}

/** A room's outline, clockwise from above, on whole steps of records: corners are rounded before runs are taken, so that walls close. */
export interface RoomPlan {
  readonly walls: readonly PlanWall[];
  /** Of the model's place for the room's south-west corner, on the turned plan, in feet. */
  readonly origin: Xy;
}

export function planOf({ shape }: Space, walls: readonly Wall[]): RoomPlan {
  const { west, south } = bounds(shape.floor.outline);
  const origin = { x: west, y: south };
  const rounded = walls.map((wall) => ({ wall, from: placeFrom(origin, wall.from) }));
  const long = rounded.filter(({ from }, index) => {
    const to = (rounded[(index + 1) % rounded.length] as { readonly from: Place }).from;
    return from.x !== to.x || from.y !== to.y;
  });
  const planned = long.map(({ wall, from }, index): PlanWall => {
    const to = (long[(index + 1) % long.length] as { readonly from: Place }).from;
    const [x, y] = [to.x - from.x, to.y - from.y];
    const go = bearingOf(x, y);
    return { wall, from, to, run: toRecordStep(Math.hypot(x, y)), ...(go && { go }) };
  });
  if (planned.length < 3 || signedArea(ringInFeet(planned.map(({ from }) => from))) >= 0)
    throw new PartRefused('its floor is too small to be a room');
  return { walls: planned, origin };
}

export function placeFrom(origin: Xy, { x, y }: Xy): Place {
  return { x: toRecordStep(fromFeet(x - origin.x)), y: toRecordStep(fromFeet(y - origin.y)) };
}

/** Of a way that is exactly one of the eight. */
function bearingOf(x: number, y: number): CompassBearing | undefined {
  if (x !== 0 && y !== 0 && Math.abs(x) !== Math.abs(y)) return undefined;
  return compass.find((name) => Math.sign(x) === sign(headings[name].x) && Math.sign(y) === sign(headings[name].y));
}

function sign(figure: number): number {
  return Math.sign(Math.round(figure * 2));
}

/** `size`, `walls` or `outline`, whichever says it with the least. */
export function shapeLines({ walls }: RoomPlan): readonly string[] {
  const [north, east, south, west, ...more] = walls;
  const isBox = [north, east, south, west].every((wall, index) => wall?.go === box[index]) && more.length === 0;
  if (isBox && north && east) {
    const open = walls.flatMap(({ wall }) => (wall.openTo ? [`${wall.name}: ${wall.openTo.slug}`] : []));
    return [
      `size: ${writeLength(north.run)} x ${writeLength(east.run)}`,
      ...(open.length > 0 ? [`open: { ${open.join(', ')} }`] : []),
    ];
  }
  if (walls.every(({ go }) => go !== undefined)) {
    return [
      'walls:',
      ...walls.map(
        ({ wall, go, run }) => `  - { name: ${wall.name}, go: ${go}, run: ${writeLength(run)}${openKey(wall)} }`,
      ),
    ];
  }
  return [
    'outline:',
    ...walls.map(({ wall, from }) => `  - { ${placeKeys(from)}, wall: ${wall.name}${openKey(wall)} }`),
  ];
}

/** Ways of the walls that a `size` has: the north one goes east. */
const box: readonly CompassBearing[] = ['east', 'south', 'west', 'north'];

function openKey({ openTo }: Wall): string {
  return openTo ? `, open-to: ${openTo.slug}` : '';
}

export function placeKeys({ x, y }: Place): string {
  return `x: ${writeLength(x)}, y: ${writeLength(y)}`;
}

/** What a part covers: `{ x, y, width, depth }` of a box, else its corners. In feet from the room's south-west corner. */
export function overText(ring: Ring): string {
  const places = ring.map((corner) => placeFrom({ x: 0, y: 0 }, corner));
  const { west, east, south, north } = bounds(places);
  const isBox =
    places.length === 4 && places.every(({ x, y }) => (x === west || x === east) && (y === south || y === north));
  if (!isBox) return `[${places.map((place) => `{ ${placeKeys(place)} }`).join(', ')}]`;
  return `{ ${boxKeys({ west, east, south, north })} }`;
}

/** In whole nanometres. */
export function boxKeys({ west, east, south, north }: ReturnType<typeof bounds>): string {
  const [width, depth] = [(east - west) as Length, (north - south) as Length];
  const corner = { x: west as Length, y: south as Length };
  return `${placeKeys(corner)}, width: ${writeLength(width)}, depth: ${writeLength(depth)}`;
}
