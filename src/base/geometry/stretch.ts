import { between, cross, direction, distance, edges, minus, type Ring, type Xy } from './xy.js';

/** Nearer than this, in feet, is the same place. */
const tiny = 1e-6;

/** What two straight edges share when they lie on one line: from and to, in feet along the first. Undefined where they only meet. */
export function sharedStretch(
  [a, b]: readonly [Xy, Xy],
  [c, d]: readonly [Xy, Xy],
): readonly [number, number] | undefined {
  const length = distance(a, b);
  const ahead = direction(a, b);
  if (length < tiny || [c, d].some((point) => Math.abs(cross(ahead, minus(point, a))) > tiny)) return undefined;
  const along = (point: Xy): number => minus(point, a).x * ahead.x + minus(point, a).y * ahead.y;
  const first = Math.max(0, Math.min(along(c), along(d)));
  const last = Math.min(length, Math.max(along(c), along(d)));
  return last - first < tiny ? undefined : [first, last];
}

/** A part of a line, along it: in feet, or in whole nanometres, which stay whole. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What is left of a stretch, in order, when others are taken from it: they may overlap, meet or reach past it. */
export function stretchLess({ from, to }: Stretch, taken: readonly Stretch[]): readonly Stretch[] {
  const left: Stretch[] = [];
  let at = from;
  for (const one of taken.filter((each) => each.to > each.from).toSorted((a, b) => a.from - b.from)) {
    if (one.from > at) left.push({ from: at, to: Math.min(one.from, to) });
    at = Math.max(at, one.to);
    if (at >= to) return left;
  }
  return at < to ? [...left, { from: at, to }] : left;
}

export function lengthOfStretches(stretches: readonly Stretch[]): number {
  return stretches.reduce((sum, { from, to }) => sum + to - from, 0);
}

/** How near two straight stretches come to each other, in feet; nothing where they cross. */
export function stretchDistance([a, b]: readonly [Xy, Xy], [c, d]: readonly [Xy, Xy]): number {
  if (areApart(a, b, c, d) && areApart(c, d, a, b)) return 0;
  return Math.min(toStretch(a, [c, d]), toStretch(b, [c, d]), toStretch(c, [a, b]), toStretch(d, [a, b]));
}

/** Do `c` and `d` lie on different sides of the line through `a` and `b`? */
function areApart(a: Xy, b: Xy, c: Xy, d: Xy): boolean {
  const ahead = minus(b, a);
  return cross(ahead, minus(c, a)) * cross(ahead, minus(d, a)) < 0;
}

function toStretch(point: Xy, [from, to]: readonly [Xy, Xy]): number {
  const ahead = direction(from, to);
  const off = minus(point, from);
  const along = Math.min(Math.max(off.x * ahead.x + off.y * ahead.y, 0), distance(from, to));
  return distance(point, { x: from.x + ahead.x * along, y: from.y + ahead.y * along });
}

/** Stretches of a line that lie in an area, in feet along `ahead`, a unit vector, from `through`. An outline that the line runs along is on
 *  one side of it or the other: ask a little inside of it. */
export function stretchesIn(rings: readonly Ring[], through: Xy, ahead: Xy): readonly Stretch[] {
  const hits = rings
    .flatMap((ring) => edges(ring))
    .flatMap(([a, b]) => {
      const [sideA, sideB] = [cross(ahead, minus(a, through)), cross(ahead, minus(b, through))];
      if (sideA > 0 === sideB > 0) return [];
      const off = minus(between(a, b, sideA / (sideA - sideB)), through);
      return [off.x * ahead.x + off.y * ahead.y];
    })
    .sort((a, b) => a - b);
  return hits.flatMap((from, index) => {
    const to = hits[index + 1];
    return index % 2 === 1 || to === undefined || to - from < tiny ? [] : [{ from, to }];
  });
}
