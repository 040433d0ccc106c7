import polygonClipping, { type MultiPolygon, type Polygon, type Ring } from 'polygon-clipping';
import type { Course, LayoutInput } from '../../../../src/core/takeoff/layout/index.js';
import type { Point } from '../../../../src/core/model/index.js';

/** Courses over surfaces by a second way: surfaces are turned as complex numbers, cut in bands by a polygon library, and what it cuts is
 *  read off. No publication is behind it: the rules for courses are common practice, no source. */

/** A course, and where boards must lie in it. Nanometres. */
export interface Band {
  readonly plane: number;
  readonly number: number;
  readonly offset: number;
  readonly width: number;
  readonly spans: readonly Stretch[];
  /** Where the surface begins along the courses. */
  readonly origin: number;
}

export type Stretch = readonly [from: number, to: number];

/** What a 64th of an inch and a millimetre have in common, in nanometres: Euclid's way. */
export const grid = ((): number => {
  let [a, b] = [25_400_000 / 64, 1_000_000];
  while (b > 0) [a, b] = [b, a % b];
  return a;
})();

/** A tenth of a millimetre, which no saw takes off. */
export const hair = 100_000;

interface Plane {
  readonly direction: number;
  readonly shapes: readonly Polygon[];
}

/** Turned back by the direction, so that courses run along the first coordinate; in units of the grid, without a minus before nothing. */
function turned({ x, y }: Point, degrees: number): [number, number] {
  const radians = (-degrees * Math.PI) / 180;
  const [re, im] = [Math.cos(radians), Math.sin(radians)];
  return [Math.round((x * re - y * im) / grid) + 0, Math.round((x * im + y * re) / grid) + 0];
}

export function planesIn({ regions, direction, rules }: LayoutInput): readonly Plane[] {
  const planes: { readonly key: unknown; readonly direction: number; readonly shapes: Polygon[] }[] = [];
  regions.forEach((region, index) => {
    const key = region.plane ?? (rules.grid === 'through' ? 'all' : `alone ${index}`);
    const before = planes.at(-1);
    const own = before?.key === key ? before : { key, direction: region.direction ?? direction, shapes: [] };
    if (own !== before) planes.push(own);
    own.shapes.push([region.outline, ...region.holes].map((ring) => ring.map((point) => turned(point, own.direction))));
  });
  return planes;
}

export function bandsIn(input: LayoutInput): readonly Band[] {
  return planesIn(input).flatMap(({ shapes }, plane) => {
    const corners = shapes.flat(2);
    const [low, high] = extent(corners.map(([, across]) => across * grid));
    const [origin] = extent(corners.map(([along]) => along * grid));
    let offset = low;
    return widthsFor(high - low, input).map((width, index): Band => {
      const spans = spansBetween(shapes, offset, offset + width);
      const band = { plane, number: index + 1, offset, width, spans, origin };
      offset += width;
      return band;
    });
  });
}

/** The fewest courses that reach; then whole ones, and what is left for the two at the ends. */
function widthsFor(reach: number, { face, rules }: LayoutInput): readonly number[] {
  let count = 1;
  while (count * face < reach - hair) count += 1;
  if (count === 1) return [reach];
  const ends = reach - (count - 2) * face;
  const rest = ends - face;
  const isWhole = rest > face - hair - 1;
  const isKept = rules.endCourses === 'full-first' && rest >= rules.leastEndShare * face;
  const first = isWhole || isKept ? face : Math.floor(ends / 2);
  return [first, ...Array.from({ length: count - 2 }, () => face), ends - first];
}

function spansBetween(shapes: readonly Polygon[], from: number, to: number): readonly Stretch[] {
  const [west, east] = extent(shapes.flat(2).map(([along]) => along));
  const [low, high] = [from / grid, to / grid];
  const band: Polygon = [
    [
      [west - 1, low],
      [east + 1, low],
      [east + 1, high],
      [west - 1, high],
    ],
  ];
  const pieces = shapes.flatMap((shape) => polygonClipping.intersection([shape], band));
  return united(
    pieces.map(([outline = []]): Stretch => {
      const [start, end] = extent(outline.map(([along]) => along));
      return [start * grid, end * grid];
    }),
  );
}

/** Stretches that overlap or meet as one, in order. */
export function united(stretches: readonly Stretch[]): readonly Stretch[] {
  const found: [number, number][] = [];
  for (const [from, to] of [...stretches].sort(([a], [b]) => a - b)) {
    const last = found.at(-1);
    if (last && from <= last[1] + 2 * grid) last[1] = Math.max(last[1], to);
    else found.push([from, to]);
  }
  return found;
}

/** Pieces of a course that lie end to end as one stretch. */
export function laidIn({ pieces }: Course): readonly Stretch[] {
  const found: [number, number][] = [];
  for (const { start, end } of pieces) {
    const last = found.at(-1);
    if (last?.[1] === start) last[1] = end;
    else found.push([start, end]);
  }
  return found;
}

/** Square nanometres of all surfaces. */
export function areaOf(input: LayoutInput): number {
  return planesIn(input).reduce((sum, { shapes }) => sum + polygonsArea([...shapes]) * grid * grid, 0);
}

function polygonsArea(polygons: MultiPolygon): number {
  return polygons.reduce(
    (sum, [outline = [], ...holes]) => sum + ringArea(outline) - holes.reduce((less, hole) => less + ringArea(hole), 0),
    0,
  );
}

/** By trapezoids under each side. */
function ringArea(ring: Ring): number {
  const sides = ring.map(([x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [x, y];
    return ((nextX - x) * (y + nextY)) / 2;
  });
  return Math.abs(sides.reduce((sum, side) => sum + side, 0));
}

/** The least that sums of the lengths come to and is not under `needed`, by trying all sums, the least first. */
export function leastSumOf(lengths: readonly number[], needed: number): number {
  const sums = new Set([0]);
  for (;;) {
    const least = Math.min(...sums);
    if (least >= needed) return least;
    sums.delete(least);
    for (const length of lengths) sums.add(least + length);
  }
}

export function extent(values: readonly number[]): Stretch {
  return [
    values.reduce((least, value) => Math.min(least, value), Infinity),
    values.reduce((most, value) => Math.max(most, value), -Infinity),
  ];
}
