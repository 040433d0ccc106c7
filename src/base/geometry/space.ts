import { clipAll } from './half-plane.js';
import type { Plane } from './plane.js';
import type { Patch, Ring, Xy } from './xy.js';

/** A place or a direction in a room: x east, y north, z up, in feet. */
export interface Xyz extends Xy {
  readonly z: number;
}

/** A plane in space with axes of its own: `u` to the right and `v` up, as seen from where it faces. All three are unit vectors. */
export interface SpacePlane {
  readonly at: Xyz;
  readonly u: Xyz;
  readonly v: Xyz;
  readonly faces: Xyz;
}

/** A flat shape in space, in the axes of its plane. */
export interface SpaceFace {
  readonly plane: SpacePlane;
  readonly patches: readonly Patch[];
}

export const upward: Xyz = { x: 0, y: 0, z: 1 };

export function xyz({ x, y }: Xy, z: number): Xyz {
  return { x, y, z };
}

/** `a` and so much of `b`. */
export function along(a: Xyz, b: Xyz, by: number): Xyz {
  return { x: a.x + b.x * by, y: a.y + b.y * by, z: a.z + b.z * by };
}

export function spaceDot(a: Xyz, b: Xyz): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function spaceCross(a: Xyz, b: Xyz): Xyz {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

/** Of length 1, the same way; nothing has no way and stays nothing. */
export function unitOf(a: Xyz): Xyz {
  const length = Math.hypot(a.x, a.y, a.z);
  return length === 0 ? a : { x: a.x / length, y: a.y / length, z: a.z / length };
}

export function opposed({ x, y, z }: Xyz): Xyz {
  return { x: 0 - x, y: 0 - y, z: 0 - z };
}

export function spaceDistance(a: Xyz, b: Xyz): number {
  return Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
}

/** The plane that goes from `at` by `u` to the right and by `v` up, and faces who sees it so. */
export function planeOf(at: Xyz, u: Xyz, v: Xyz): SpacePlane {
  return { at, u, v, faces: unitOf(spaceCross(u, v)) };
}

export function placeOn({ at, u, v }: SpacePlane, { x, y }: Xy): Xyz {
  return {
    x: at.x + u.x * x + v.x * y,
    y: at.y + u.y * x + v.y * y,
    z: at.z + u.z * x + v.z * y,
  };
}

/** Where a place in space lies in a plane's own axes, seen square to it. */
export function inPlane({ at, u, v }: SpacePlane, place: Xyz): Xy {
  const off = along(place, at, -1);
  return { x: spaceDot(off, u), y: spaceDot(off, v) };
}

/** A flat face through corners that lie in a plane, counter-clockwise as seen from where it faces. Its first edge runs along `u`. */
export function faceThrough(corners: readonly Xyz[]): SpaceFace | undefined {
  const [a, b] = corners;
  if (!a || !b) return undefined;
  const u = unitOf(along(b, a, -1));
  // Newell's method: right also where the first corner turns inward.
  const normal = unitOf(
    corners.reduce<Xyz>((sum, from, i) => along(sum, spaceCross(from, corners[(i + 1) % corners.length] as Xyz), 1), {
      x: 0,
      y: 0,
      z: 0,
    }),
  );
  const plane: SpacePlane = { at: a, u, v: spaceCross(normal, u), faces: normal };
  return { plane, patches: [{ outline: corners.map((corner) => inPlane(plane, corner)), holes: [] }] };
}

/** A face as long as the line from `from` to `to` in plan, upright over it, and seen with `from` at the left. */
export function uprightPlane(from: Xy, to: Xy, z = 0): SpacePlane {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const u = { x: (to.x - from.x) / length, y: (to.y - from.y) / length, z: 0 };
  return planeOf(xyz(from, z), u, upward);
}

/** The plane of heights `a·x + b·y + c`, with the axes of its unfolded shape: see `unfold`. It faces up. */
export function slopedPlane({ a, b, c }: Plane): SpacePlane {
  const slope = Math.hypot(a, b);
  if (slope === 0) return planeOf({ x: 0, y: 0, z: c }, { x: 1, y: 0, z: 0 }, { x: 0, y: 1, z: 0 });
  const [x, y] = [a / slope, b / slope];
  const factor = Math.hypot(1, slope);
  return planeOf({ x: 0, y: 0, z: c }, { x: y, y: -x, z: 0 }, { x: x / factor, y: y / factor, z: slope / factor });
}

/** What of a face lies at least `ahead` feet along a direction, from the origin; all of it or nothing where it is square to that. */
export function faceBeyond({ plane, patches }: SpaceFace, way: Xyz, ahead: number): readonly Patch[] {
  const [a, b, c] = [spaceDot(plane.u, way), spaceDot(plane.v, way), spaceDot(plane.at, way) - ahead];
  const steep = Math.hypot(a, b);
  if (steep < 1e-9) return c > 0 ? patches : [];
  return clipAll(patches, { a: a / steep, b: b / steep, c: c / steep });
}

/** The same shape as seen from its back. */
export function turnedOver({ plane, patches }: SpaceFace): SpaceFace {
  const flip = (ring: Ring): Ring => ring.map(({ x, y }) => ({ x: -x, y })).reverse();
  return {
    plane: { ...plane, u: opposed(plane.u), faces: opposed(plane.faces) },
    patches: patches.map(({ outline, holes }) => ({ outline: flip(outline), holes: holes.map(flip) })),
  };
}

/** The six faces of a stick between two places, from four corners of its section around each, as seen from outside. */
export function stickFaces(section: (place: Xyz) => readonly Xyz[], from: Xyz, to: Xyz): readonly SpaceFace[] {
  const [near, far] = [section(from), section(to)];
  const middle = along(from, along(to, from, -1), 0.5);
  const sides = near.map((one, i) => {
    const next = (i + 1) % near.length;
    return faceThrough([one, far[i] as Xyz, far[next] as Xyz, near[next] as Xyz]);
  });
  return [...sides, faceThrough(near), faceThrough(far)].flatMap((face) =>
    face ? [seenFromOutside(face, middle)] : [],
  );
}

function seenFromOutside(face: SpaceFace, middle: Xyz): SpaceFace {
  return spaceDot(along(face.plane.at, middle, -1), face.plane.faces) >= 0 ? face : turnedOver(face);
}
