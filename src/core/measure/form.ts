import {
  bounds,
  edges,
  headings,
  isConvex,
  leftOf,
  nearestHeading,
  planeFrom,
  planeThrough,
  slopeOf,
  type Bounds,
  type Patch,
  type Plane,
  type Xy,
} from '../../base/geometry/index.js';
import type { CeilingForm, CeilingPart } from '../model/index.js';
import { feet } from '../../base/units/index.js';

/**
 * The planes of a ceiling form over a part of the plan; the ceiling is the lowest of them at each place. Plates lie at the
 * part's own extent: a shed's at its low side, a gable's at both eaves, a hip's along every wall of a convex part and
 * along the bounding box of any other.
 */
export function planesOf({ form, cut }: CeilingPart, over: readonly Patch[]): readonly Plane[] {
  const planes = formPlanes(form, over);
  return cut === undefined ? planes : [...planes, level(feet(cut))];
}

/** `Flat`, or the side that a slope comes down to: `South slope`. */
export function planeName(plane: Plane): string {
  const slope = slopeOf(plane);
  if (slope === 0) return 'Flat';
  const side = nearestHeading({ x: -plane.a / slope, y: -plane.b / slope });
  return `${side.charAt(0).toUpperCase()}${side.slice(1)} slope`;
}

function formPlanes(form: CeilingForm, over: readonly Patch[]): readonly Plane[] {
  const corners = over.flatMap(({ outline }) => outline);
  switch (form.form) {
    case 'flat':
      return [level(feet(form.height))];
    case 'shed': {
      const { low } = form;
      const reach = (point: Xy): number => low.x * point.x + low.y * point.y;
      const start = corners.reduce((best, point) => (reach(point) > reach(best) ? point : best));
      return [planeFrom(start, feet(form.plate), opposite(low), form.pitch.rise / form.pitch.run)];
    }
    case 'gable': {
      const [low, high] = eaves(corners, form.ridge);
      const slope = 'pitch' in form ? form.pitch.rise / form.pitch.run : ridgeSlope(form, low, high);
      return [low, high].map(({ point, up }) => planeFrom(point, feet(form.plate), up, slope));
    }
    case 'planes':
      return form.planes.flatMap((points) => {
        const inFeet = points.map(({ x, y, height }) => ({ x: feet(x), y: feet(y), height: feet(height) }));
        return planeThrough(inFeet) ?? [];
      });
    case 'hip':
      return hipEaves(over, bounds(corners)).map(({ point, up }) =>
        planeFrom(point, feet(form.plate), up, form.pitch.rise / form.pitch.run),
      );
  }
}

/** A line that a plane starts from: a point on it and the way the plane rises. */
interface Eave {
  readonly point: Xy;
  readonly up: Xy;
}

/** Both sides of a ridge: lines along it through the corners that lie furthest out. */
function eaves(corners: readonly Xy[], ridge: Xy): readonly [Eave, Eave] {
  const up = { x: -ridge.y, y: ridge.x };
  const out = (point: Xy): number => up.x * point.x + up.y * point.y;
  const first = corners.reduce((best, point) => (out(point) < out(best) ? point : best));
  const last = corners.reduce((best, point) => (out(point) > out(best) ? point : best));
  return [
    { point: first, up },
    { point: last, up: opposite(up) },
  ];
}

function ridgeSlope({ plate, ridgeHeight }: { plate: number; ridgeHeight: number }, low: Eave, high: Eave): number {
  const span = Math.abs(low.up.x * (high.point.x - low.point.x) + low.up.y * (high.point.y - low.point.y));
  return feet((ridgeHeight - plate) as Parameters<typeof feet>[0]) / (span / 2);
}

function hipEaves(over: readonly Patch[], box: Bounds): readonly Eave[] {
  const [only, ...more] = over;
  if (!only || more.length > 0 || only.holes.length > 0 || !isConvex(only.outline)) {
    const corners = [
      { x: box.west, y: box.south },
      { x: box.east, y: box.north },
    ];
    return [...eaves(corners, headings.east), ...eaves(corners, headings.south)];
  }
  return edges(only.outline).map(([from, to]) => {
    const { a, b } = leftOf(from, to);
    return { point: from, up: { x: a, y: b } };
  });
}

function level(height: number): Plane {
  return { a: 0, b: 0, c: height };
}

function opposite({ x, y }: Xy): Xy {
  return { x: -x, y: -y };
}
