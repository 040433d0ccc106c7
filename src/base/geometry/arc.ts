import { between, cross, direction, distance, minus, type Xy } from './xy.js';

/** A circular arc from one point to another, in feet. */
export interface Arc {
  readonly center: Xy;
  readonly radius: number;
  /** Angle at the center in radians; positive turns counter-clockwise. */
  readonly turn: number;
}

/** A point of a line with its true distance from the line's start, in feet. */
export interface PointAlong extends Xy {
  readonly along: number;
}

/** What a tape cannot tell: pieces of an arc leave it by no more than this many feet, 1/16". */
const tape = 1 / 192;

/** The arc between two points that bows to the left of the straight way by `rise`, or to the right where it is negative. Its
 *  radius is (c² / 4 + h²) / 2h for a chord c and a rise h. */
export function arcBetween(from: Xy, to: Xy, rise: number): Arc {
  const chord = distance(from, to);
  const radius = (chord * chord) / 4 / Math.abs(rise) / 2 + Math.abs(rise) / 2;
  const ahead = direction(from, to);
  const left = { x: -ahead.y, y: ahead.x };
  const off = rise > 0 ? rise - radius : rise + radius;
  const middle = between(from, to, 1 / 2);
  const center = { x: middle.x + left.x * off, y: middle.y + left.y * off };
  return { center, radius, turn: -4 * Math.atan((2 * rise) / chord) };
}

/** Rise of the lesser arc over a chord; undefined where the radius does not reach from end to end. */
export function riseOf(radius: number, chord: number): number | undefined {
  const half = chord / 2;
  if (radius < half) return undefined;
  return radius - Math.sqrt(radius * radius - half * half);
}

export function arcLength({ radius, turn }: Arc): number {
  return radius * Math.abs(turn);
}

/** Straight pieces of equal turn that stand for an arc. Its ends stay; the points between are moved off it by a hair, so that
 *  what lies between the pieces and the chord is the area of the true segment, r² (θ − sin θ) / 2. */
export function arcPoints(from: Xy, to: Xy, arc: Arc): readonly PointAlong[] {
  const { center, radius, turn } = arc;
  const most = 2 * Math.acos(Math.max(0, 1 - tape / radius));
  const count = Math.max(3, Math.ceil(Math.abs(turn) / most));
  const step = turn / count;
  const off = offArc(radius, Math.abs(turn), count);
  const start = minus(from, center);
  const points = Array.from({ length: count - 1 }, (_, index): PointAlong => {
    const angle = step * (index + 1);
    const [cos, sin] = [Math.cos(angle) * (off / radius), Math.sin(angle) * (off / radius)];
    return {
      x: center.x + start.x * cos - start.y * sin,
      y: center.y + start.x * sin + start.y * cos,
      along: radius * Math.abs(angle),
    };
  });
  return [{ ...from, along: 0 }, ...points, { ...to, along: arcLength(arc) }];
}

/** Radius of the points between: the fan of triangles from the center has the area of the sector. Its first and last triangle have one
 *  corner on the arc, the others none, so a quadratic gives it. */
function offArc(radius: number, turn: number, count: number): number {
  const sine = Math.sin(turn / count);
  const [a, b, c] = [((count - 2) / 2) * sine, radius * sine, (-radius * radius * turn) / 2];
  return (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
}

/** The two ends of a straight line, as those of an arc. */
export function straightPoints(from: Xy, to: Xy): readonly PointAlong[] {
  return [
    { ...from, along: 0 },
    { ...to, along: distance(from, to) },
  ];
}

/** Whether the turn from one direction to the next goes left, by more than rounding. */
export function turnsLeft(before: readonly [Xy, Xy], after: readonly [Xy, Xy]): boolean {
  return cross(direction(...before), direction(...after)) > 1e-6;
}
