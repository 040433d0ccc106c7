import { between, cross, direction, distance, minus, nearTape, type Ring, type Xy } from './xy.js';

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

/** Rise of the lesser arc over a chord, r − √(r² − (c/2)²), written so that flat arcs keep their digits. The radius is half the chord at least. */
export function riseOf(radius: number, chord: number): number {
  const half = chord / 2;
  return (half * half) / (radius + Math.sqrt(Math.max(0, radius * radius - half * half)));
}

export function arcLength({ radius, turn }: Arc): number {
  return radius * Math.abs(turn);
}

/** Straight pieces of equal turn that stand for an arc and leave it by less than a tape tells. Its ends stay; the points between are moved off it by a hair, so that
 *  what lies between the pieces and the chord is the area of the true segment, r² (θ − sin θ) / 2. */
export function arcPoints(from: Xy, to: Xy, arc: Arc): readonly PointAlong[] {
  const { center, radius, turn } = arc;
  // The points between lie outside the arc by less than half of what the middle of a piece lies inside: three quarters leave room for both.
  const most = 2 * Math.acos(Math.max(0, 1 - (0.75 * nearTape) / radius));
  const count = Math.max(3, Math.ceil(Math.abs(turn) / most));
  const step = turn / count;
  const off = outsideOf(radius, Math.abs(turn), count);
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

type Circle = Pick<Arc, 'center' | 'radius'>;

/** No step of a curve turns further than this: at a radius of 3 feet its corners lie under 1/64" off the curve. */
const mostTurn = Math.PI / 52;

/**
 * Corners of an arc, counter-clockwise by `sweep` radians from the angle `from`, without its two ends, which stay where they are. The
 * corners lie so far outside the curve that what they enclose with the center is what the arc does, r²·sweep/2: areas are those
 * of the closed form. They are an even number, so that the middle of the arc is the middle of an edge and no corner lies beyond it.
 */
export function arcCorners({ center, radius }: Circle, from: number, sweep: number): Ring {
  const least = Math.max(3, Math.ceil(sweep / mostTurn - 1e-9));
  const steps = least + (least % 2 === 0 ? 1 : 0);
  const step = sweep / steps;
  const out = outsideOf(radius, sweep, steps);
  return Array.from({ length: steps - 1 }, (_, index) => onCircle(center, out, from + (index + 1) * step));
}

/** Radius of the corners between the ends of an arc: two end triangles r·R·sin δ / 2 and n − 2 between them R²·sin δ / 2, of steps
 *  δ = sweep/n, are together r²·sweep/2; R solves it. */
function outsideOf(radius: number, sweep: number, steps: number): number {
  const sine = Math.sin(sweep / steps);
  const inner = (steps - 2) * sine;
  return (radius * (Math.sqrt(sine * sine + inner * sweep) - sine)) / inner;
}

/** Corners of a whole circle, with its area πr²: none lies further out than the circle does to the east, north, west or south. */
export function circleCorners({ center, radius }: Circle): Ring {
  const steps = Math.round((2 * Math.PI) / mostTurn);
  const step = (2 * Math.PI) / steps;
  const out = radius * Math.sqrt(step / Math.sin(step));
  return Array.from({ length: steps }, (_, index) => onCircle(center, out, (index + 0.5) * step));
}

function onCircle(center: Xy, radius: number, angle: number): Xy {
  return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
}
