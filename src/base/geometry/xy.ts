/** A place in a plane, in feet. */
export interface Xy {
  readonly x: number;
  readonly y: number;
}

/** A closed outline that does not repeat its first point, in feet. */
export type Ring = readonly Xy[];

/** A flat shape in feet: the outline counter-clockwise, the holes clockwise. Holes may touch the outline. */
export interface Patch {
  readonly outline: Ring;
  readonly holes: readonly Ring[];
}

/** Distances below this are no distance: 30 nanometres, far under any tape and far over rounding. */
export const nearFeet = 1e-7;

/** What a tape cannot tell: 1/16", in feet. */
export const nearTape = 1 / 16 / 12;

/** Twice this area is no area. */
export const nearArea = 1e-9;

export function dot(a: Xy, b: Xy): number {
  return a.x * b.x + a.y * b.y;
}

export function plus(a: Xy, b: Xy): Xy {
  return { x: a.x + b.x, y: a.y + b.y };
}

export function minus(a: Xy, b: Xy): Xy {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function cross(a: Xy, b: Xy): number {
  return a.x * b.y - a.y * b.x;
}

export function distance(a: Xy, b: Xy): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** The point a share `t` of the way from `a` to `b`. */
export function between(a: Xy, b: Xy, t: number): Xy {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

/** Unit vector from `a` to `b`; zero when they are the same point. */
export function direction(a: Xy, b: Xy): Xy {
  const length = distance(a, b);
  return length === 0 ? { x: 0, y: 0 } : { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}

/** Edges of a ring as pairs of points, the last one closing it. */
export function edges(ring: Ring): readonly (readonly [Xy, Xy])[] {
  return ring.map((from, i) => [from, ring[(i + 1) % ring.length] as Xy] as const);
}
