import { between, cross, edges, minus, nearArea, nearFeet, type Ring, type Xy } from './xy.js';

/** Area in square feet, positive when the ring turns counter-clockwise. Measured from its first point, to keep digits. */
export function signedArea(ring: Ring): number {
  const origin = ring[0];
  if (!origin) return 0;
  let twice = 0;
  for (const [a, b] of edges(ring)) twice += cross(minus(a, origin), minus(b, origin));
  return twice / 2;
}

export function perimeter(ring: Ring): number {
  return edges(ring).reduce((sum, [a, b]) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0);
}

export function reversed(ring: Ring): Ring {
  return [...ring].reverse();
}

/** The ring turned counter-clockwise. */
export function counterClockwise(ring: Ring): Ring {
  return signedArea(ring) < 0 ? reversed(ring) : ring;
}

export interface Bounds {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

export function bounds(points: readonly Xy[]): Bounds {
  let [west, east, south, north] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    west = Math.min(west, x);
    east = Math.max(east, x);
    south = Math.min(south, y);
    north = Math.max(north, y);
  }
  return { west, east, south, north };
}

export function boundsMeet(a: Bounds, b: Bounds): boolean {
  return a.west < b.east && b.west < a.east && a.south < b.north && b.south < a.north;
}

/** Even-odd test; points on an edge fall either way. */
export function contains(ring: Ring, point: Xy): boolean {
  let inside = false;
  for (const [a, b] of edges(ring)) {
    if (a.y > point.y === b.y > point.y) continue;
    if (point.x < a.x + ((b.x - a.x) * (point.y - a.y)) / (b.y - a.y)) inside = !inside;
  }
  return inside;
}

/** A point well inside a ring: the middle of its widest stretch at the middle of the widest band between two corners. */
export function interiorPoint(ring: Ring): Xy | undefined {
  const levels = [...new Set(ring.map((point) => point.y))].sort((a, b) => a - b);
  let [y, band] = [0, 0];
  for (let i = 1; i < levels.length; i += 1) {
    const [low, high] = [levels[i - 1] as number, levels[i] as number];
    if (high - low > band) [y, band] = [(low + high) / 2, high - low];
  }
  const crossings: number[] = [];
  for (const [a, b] of edges(ring)) {
    if (a.y > y !== b.y > y) crossings.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
  }
  crossings.sort((a, b) => a - b);
  let [x, width] = [undefined as number | undefined, 0];
  for (let i = 1; i < crossings.length; i += 2) {
    const [left, right] = [crossings[i - 1] as number, crossings[i] as number];
    if (right - left > width) [x, width] = [(left + right) / 2, right - left];
  }
  return x === undefined ? undefined : { x, y };
}

/** Whether a counter-clockwise ring has no corner that turns right. */
export function isConvex(ring: Ring): boolean {
  return ring.every((corner, i) => {
    const before = ring[(i + ring.length - 1) % ring.length] as Xy;
    const after = ring[(i + 1) % ring.length] as Xy;
    return cross(minus(corner, before), minus(after, corner)) > -nearArea;
  });
}

/** Drops repeated points and points on a straight run between their neighbours, and spikes. */
export function tidied(ring: Ring): Ring {
  let points = ring.filter((point, i) => !samePlace(point, ring[(i + 1) % ring.length] as Xy));
  for (;;) {
    const kept = points.filter((point, i) => {
      const before = points[(i + points.length - 1) % points.length] as Xy;
      const after = points[(i + 1) % points.length] as Xy;
      const span = Math.hypot(after.x - before.x, after.y - before.y);
      const off = Math.abs(cross(minus(point, before), minus(after, before)));
      return span > nearFeet && off > nearFeet * span;
    });
    if (kept.length < 3) return [];
    if (kept.length === points.length) return kept;
    points = kept;
  }
}

export function samePlace(a: Xy, b: Xy): boolean {
  return Math.abs(a.x - b.x) < nearFeet && Math.abs(a.y - b.y) < nearFeet;
}

/** Two edges of a ring that cross or lie on one another though they are not neighbours, with the place. */
interface Crossing {
  readonly first: number;
  readonly second: number;
  readonly at: Xy;
}

/** First pair of edges that cross, touch or double back. An outline that may be measured has none. */
export function findCrossing(ring: Ring): Crossing | undefined {
  const sides = edges(ring);
  for (let first = 0; first < sides.length; first += 1) {
    for (let second = first + 1; second < sides.length; second += 1) {
      const neighbours = second === first + 1 || (first === 0 && second === sides.length - 1);
      const [a, b] = sides[first] as readonly [Xy, Xy];
      const [c, d] = sides[second] as readonly [Xy, Xy];
      const at = neighbours ? doublesBack(second === first + 1 ? [a, b, d] : [c, d, b]) : meet(a, b, c, d);
      if (at) return { first, second, at };
    }
  }
  return undefined;
}

/** The shared corner, when the walk turns straight back there. */
function doublesBack([before, corner, after]: readonly [Xy, Xy, Xy]): Xy | undefined {
  const into = minus(corner, before);
  const out = minus(after, corner);
  const straight = Math.abs(cross(into, out)) <= nearFeet * Math.hypot(out.x, out.y);
  return straight && into.x * out.x + into.y * out.y < 0 ? corner : undefined;
}

function meet(a: Xy, b: Xy, c: Xy, d: Xy): Xy | undefined {
  const along = minus(b, a);
  const other = minus(d, c);
  const length = Math.hypot(along.x, along.y);
  const turn = cross(along, other);
  if (Math.abs(turn) > 1e-12 * length * Math.hypot(other.x, other.y)) {
    const t = cross(minus(c, a), other) / turn;
    const u = cross(minus(c, a), along) / turn;
    const slackT = nearFeet / length;
    const slackU = nearFeet / Math.hypot(other.x, other.y);
    return t > -slackT && t < 1 + slackT && u > -slackU && u < 1 + slackU ? between(a, b, t) : undefined;
  }
  if (Math.abs(cross(along, minus(c, a))) > nearFeet * length) return undefined;
  const place = (p: Xy): number => (minus(p, a).x * along.x + minus(p, a).y * along.y) / (length * length);
  const [low, high] = [Math.max(0, Math.min(place(c), place(d))), Math.min(1, Math.max(place(c), place(d)))];
  return low <= high + nearFeet / length ? between(a, b, low) : undefined;
}
