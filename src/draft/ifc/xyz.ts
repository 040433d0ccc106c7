import { PartRefused } from './refused.js';

/** A place or a direction in space. Places are in feet. */
export interface Xyz {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Where something stands and how it is turned: three unit vectors that are square to each other. */
export interface Frame {
  readonly origin: Xyz;
  readonly x: Xyz;
  readonly y: Xyz;
  readonly z: Xyz;
}

const zero: Xyz = { x: 0, y: 0, z: 0 };
export const east: Xyz = { x: 1, y: 0, z: 0 };
export const north: Xyz = { x: 0, y: 1, z: 0 };
export const up: Xyz = { x: 0, y: 0, z: 1 };

/** The model's own. */
export const world: Frame = { origin: zero, x: east, y: north, z: up };

export function add(a: Xyz, b: Xyz): Xyz {
  return { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z };
}

export function less(a: Xyz, b: Xyz): Xyz {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

export function times({ x, y, z }: Xyz, by: number): Xyz {
  return { x: x * by, y: y * by, z: z * by };
}

export function dot(a: Xyz, b: Xyz): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function crossed(a: Xyz, b: Xyz): Xyz {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

export function size({ x, y, z }: Xyz): number {
  return Math.hypot(x, y, z);
}

/** Of one foot's length. Throws PartRefused where it has none. */
export function unit(way: Xyz): Xyz {
  const length = size(way);
  if (!(length > 1e-12) || !Number.isFinite(length)) throw new PartRefused('a direction in it has no length');
  return times(way, 1 / length);
}

/** A direction of a frame, as the frame around it sees it. */
export function turnedBy({ x, y, z }: Frame, way: Xyz): Xyz {
  return add(add(times(x, way.x), times(y, way.y)), times(z, way.z));
}

/** A place in a frame, as the frame around it sees it. */
export function placedIn(frame: Frame, place: Xyz): Xyz {
  return add(frame.origin, turnedBy(frame, place));
}

/** A frame in a frame. */
export function within(outer: Frame, inner: Frame): Frame {
  return {
    origin: placedIn(outer, inner.origin),
    x: turnedBy(outer, inner.x),
    y: turnedBy(outer, inner.y),
    z: turnedBy(outer, inner.z),
  };
}
