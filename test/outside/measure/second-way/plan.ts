import polygonClipping, { type Polygon } from 'polygon-clipping';
import type { CeilingForm, CeilingPart } from '../../../../src/core/model/index.js';
import { feet, fromFeet } from '../../../../src/base/units/index.js';

/** Rooms by a second way: a plan is read row by row as a scanner does, and what is over it from the words of the record format. No
 *  publication is behind it. In feet. */

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export type Height = (at: Spot) => number;

/** A piece of the plan with a ceiling or a floor of its own. */
export interface Piece {
  readonly name: string;
  readonly over: readonly Spot[];
  readonly height: Height;
  readonly openAbove?: number;
}

export const rectangle = (west: number, south: number, east: number, north: number): readonly Spot[] => [
  { x: west, y: south },
  { x: east, y: south },
  { x: east, y: north },
  { x: west, y: north },
];

export const recorded = ({ x, y }: Spot): CeilingPoint => ({ x: fromFeet(x), y: fromFeet(y) });
type CeilingPoint = { x: ReturnType<typeof fromFeet>; y: ReturnType<typeof fromFeet> };

/** Inside by the count of sides to the east of it. */
export function isIn(corners: readonly Spot[], { x, y }: Spot): boolean {
  const east = corners.filter((from, index) => {
    const to = corners[(index + 1) % corners.length] as Spot;
    return from.y > y !== to.y > y && from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x) > x;
  });
  return east.length % 2 === 1;
}

/** Corners of what two outlines have in common. */
export function common(one: readonly Spot[], other: readonly Spot[]): readonly Spot[] {
  const polygon = (corners: readonly Spot[]): Polygon => [corners.map(({ x, y }) => [x, y])];
  return polygonClipping
    .intersection([polygon(one)], [polygon(other)])
    .flat(2)
    .map(([x, y]) => ({ x, y }));
}

const along = (way: Spot, { x, y }: Spot): number => way.x * x + way.y * y;

/** Height of a form over its part of the plan, whose corners are given. */
export function heightOf({ form, cut }: Pick<CeilingPart, 'form' | 'cut'>, corners: readonly Spot[]): Height {
  const height = uncut(form, corners);
  return cut === undefined ? height : (at) => Math.min(height(at), feet(cut));
}

function uncut(form: CeilingForm, corners: readonly Spot[]): Height {
  switch (form.form) {
    case 'flat':
      return () => feet(form.height);
    case 'shed': {
      const { plate, low, pitch } = form;
      const lowest = Math.max(...corners.map((corner) => along(low, corner)));
      return (at) => feet(plate) + ((lowest - along(low, at)) * pitch.rise) / pitch.run;
    }
    case 'gable': {
      const across = { x: form.ridge.y, y: -form.ridge.x };
      const places = corners.map((corner) => along(across, corner));
      const [from, to] = [Math.min(...places), Math.max(...places)];
      const plate = feet(form.plate);
      const top =
        'pitch' in form ? plate + ((to - from) / 2) * (form.pitch.rise / form.pitch.run) : feet(form.ridgeHeight);
      // A roof's ridge is half way, and its eaves are at the plate.
      return (at) => top - ((top - plate) * Math.abs(along(across, at) - (from + to) / 2)) / ((to - from) / 2);
    }
    case 'hip':
      return hipOver(corners, feet(form.plate), form.pitch.rise / form.pitch.run);
    case 'planes':
      return (at) => Math.min(...form.planes.map((points) => planeAt(points, at)));
  }
}

/** From every wall of a convex part as steep; from the sides of the box around any other. */
function hipOver(corners: readonly Spot[], plate: number, slope: number): Height {
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const box = rectangle(Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys));
  const walls = isConvex(corners) ? corners : box;
  return (at) =>
    plate +
    slope *
      Math.min(
        ...walls.map((from, index) => {
          const to = walls[(index + 1) % walls.length] as Spot;
          const run = Math.hypot(to.x - from.x, to.y - from.y);
          if (run === 0) return Infinity;
          return Math.abs((to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x)) / run;
        }),
      );
}

export function isConvex(corners: readonly Spot[]): boolean {
  const turns = corners.map((from, index) => {
    const [mid, to] = [1, 2].map((step) => corners[(index + step) % corners.length] as Spot) as [Spot, Spot];
    return (mid.x - from.x) * (to.y - mid.y) - (mid.y - from.y) * (to.x - mid.x);
  });
  return turns.every((turn) => turn >= -1e-9) || turns.every((turn) => turn <= 1e-9);
}

type SpacePoints = Extract<CeilingForm, { form: 'planes' }>['planes'][number];

/** By the shares of three corners of a triangle: their areas. */
function planeAt(points: SpacePoints, at: Spot): number {
  const [a, b, c] = points.map(({ x, y }) => ({ x: feet(x), y: feet(y) })) as [Spot, Spot, Spot];
  const twice = (p: Spot, q: Spot, r: Spot): number => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  const [one, two, three] = [twice(b, c, at), twice(c, a, at), twice(a, b, at)];
  const heights = points.map(({ height }) => feet(height));
  return (one * (heights[0] ?? 0) + two * (heights[1] ?? 0) + three * (heights[2] ?? 0)) / (one + two + three);
}

export interface Cell {
  readonly at: Spot;
  readonly area: number;
}

/** A plan in rows, each cut in cells, which end at the borders from south to north: their middles and areas. */
export function cellsOf(
  corners: readonly Spot[],
  rows: number,
  across: number,
  borders: readonly number[] = [],
): readonly Cell[] {
  const ys = corners.map(({ y }) => y);
  const [south, north] = [Math.min(...ys), Math.max(...ys)];
  // Rows end at corners, so that each is a trapezoid.
  const stops = [
    ...new Set([...ys, ...Array.from({ length: rows }, (_, row) => south + ((north - south) * row) / rows)]),
  ].sort((a, b) => a - b);
  return stops.slice(1).flatMap((top, index) => {
    const bottom = stops[index] as number;
    const y = (bottom + top) / 2;
    const places = corners
      .flatMap((from, side) => {
        const to = corners[(side + 1) % corners.length] as Spot;
        return from.y > y === to.y > y ? [] : [from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x)];
      })
      .sort((a, b) => a - b);
    return places.flatMap((west, which) => {
      const east = places[which + 1];
      if (which % 2 === 1 || east === undefined) return [];
      const ends = [west, ...borders.filter((x) => x > west && x < east), east];
      return ends.slice(1).flatMap((to, at) => {
        const from = ends[at] as number;
        const wide = (to - from) / across;
        return Array.from({ length: across }, (_, cell) => ({
          at: { x: from + (cell + 1 / 2) * wide, y },
          area: wide * (top - bottom),
        }));
      });
    });
  });
}

/** True area for a foot of plan: how far both slopes rise in a step too short for a break to be likely in it. */
export function steepness(
  height: Height,
  { x, y }: Spot,
): { readonly a: number; readonly b: number; readonly factor: number } {
  const step = 1e-6;
  const here = height({ x, y });
  const [a, b] = [(height({ x: x + step, y }) - here) / step, (height({ x, y: y + step }) - here) / step];
  return { a, b, factor: Math.sqrt(1 + a * a + b * b) };
}

/** The integral of a function along a line, by the middles of many steps. */
export function integral(from: number, to: number, valueAt: (at: number) => number, steps = 3000): number {
  const step = (to - from) / steps;
  return Array.from({ length: steps }, (_, index) => valueAt(from + (index + 1 / 2) * step) * step).reduce(
    (sum, value) => sum + value,
    0,
  );
}

export function total<T>(list: readonly T[], of: (one: T) => number): number {
  return list.reduce((sum, one) => sum + of(one), 0);
}
