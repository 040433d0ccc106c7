import {
  along,
  bounds,
  headings,
  placeOn,
  ringInFeet,
  spaceDot,
  stretchesIn,
  upward,
  xyz,
  type Ring,
  type SpaceFace,
  type Stretch,
  type Xy,
  type Xyz,
} from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { RoomMeasure, RoomSection } from '../../core/model/index.js';
import type { Axonometry } from '../cutaway/view.js';

/** An upright plane through a room, and who looks at it square. What is cut is told in its own axes: x along it to the right of who looks, from the room's
 *  own origin, and y up from the room's floor, in feet. */
export interface Cut {
  readonly looks: Xy;
  readonly right: Xy;
  /** How far the plane lies ahead of the room's origin, the way that one looks, in feet. */
  readonly ahead: number;
  readonly camera: Axonometry;
}

/** What lies as near as this to the plane, in feet, would be cut and not cut: the plane goes as far beyond it. */
const nearPlane = 1e-4;

export function cutOf(measure: RoomMeasure, { at, looks }: Pick<RoomSection, 'at' | 'looks'>): Cut {
  const toward = headings[looks];
  const right = { x: toward.y, y: 0 - toward.x };
  const corner = bounds(ringInFeet(measure.plan));
  const place = { x: corner.west + feet(at), y: corner.south + feet(at) };
  return {
    looks: toward,
    right,
    ahead: place.x * toward.x + place.y * toward.y,
    camera: {
      right: xyz(right, 0),
      up: upward,
      toward: { x: 0 - toward.x, y: 0 - toward.y, z: 0 },
      spot: (spot) => [spot.x * right.x + spot.y * right.y, 0 - spot.z],
      depth: (spot) => 0 - spot.x * toward.x - spot.y * toward.y,
    },
  };
}

/** The same plane, a hair further on where it would run along a face. */
export function clearOf(cut: Cut, faces: readonly SpaceFace[]): Cut {
  const touches = faces.some(({ plane, patches }) =>
    patches.some(({ outline, holes }) =>
      [outline, ...holes].flat().some((corner) => Math.abs(beyond(cut, placeOn(plane, corner))) < nearPlane / 10),
    ),
  );
  return touches ? { ...cut, ahead: cut.ahead + nearPlane } : cut;
}

/** Feet that a place lies beyond the plane. */
export function beyond({ looks, ahead }: Cut, place: Xy): number {
  return place.x * looks.x + place.y * looks.y - ahead;
}

export function rightOf({ right }: Cut, place: Xy): number {
  return place.x * right.x + place.y * right.y;
}

/** The place of the plan that lies so far to the right in the plane. */
export function placeAt({ looks, right, ahead }: Cut, x: number): Xy {
  return { x: looks.x * ahead + right.x * x, y: looks.y * ahead + right.y * x };
}

/** Where the plane goes through rings of the plan. */
export function stretchesOf(cut: Cut, rings: readonly Ring[]): readonly Stretch[] {
  return stretchesIn(rings, placeAt(cut, 0), cut.right);
}

/** A stretch of a face that the plane goes through, with what is inside of the body on its left. */
export interface Trace {
  readonly from: Xy;
  readonly to: Xy;
}

export function tracesOf(cut: Cut, { plane, patches }: SpaceFace): readonly Trace[] {
  const looks = xyz(cut.looks, 0);
  const [a, b, c] = [spaceDot(plane.u, looks), spaceDot(plane.v, looks), spaceDot(plane.at, looks) - cut.ahead];
  const steep = Math.hypot(a, b);
  if (steep < 1e-9) return [];
  const through = { x: (-a * c) / steep ** 2, y: (-b * c) / steep ** 2 };
  const inPlane = (place: Xyz): Xy => ({ x: rightOf(cut, place), y: place.z });
  const out = { x: spaceDot(plane.faces, xyz(cut.right, 0)), y: plane.faces.z };
  return patches.flatMap(({ outline, holes }) =>
    stretchesIn([outline, ...holes], through, { x: -b / steep, y: a / steep }).map(({ from, to }) => {
      const [start, end] = [from, to].map((by) =>
        inPlane(along(placeOn(plane, through), along(alongU(plane, -b / steep), alongV(plane, a / steep), 1), by)),
      ) as [Xy, Xy];
      const isRight = (end.x - start.x) * -out.y + (end.y - start.y) * out.x > 0;
      return isRight ? { from: start, to: end } : { from: end, to: start };
    }),
  );
}

function alongU({ u }: SpaceFace['plane'], by: number): Xyz {
  return { x: u.x * by, y: u.y * by, z: u.z * by };
}

function alongV({ v }: SpaceFace['plane'], by: number): Xyz {
  return { x: v.x * by, y: v.y * by, z: v.z * by };
}
