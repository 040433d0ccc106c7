import { clipAll } from './half-plane.js';
import { heightOn, type Plane } from './plane.js';
import { between, distance, nearFeet, type Patch, type Xy } from './xy.js';

/** Planes whose slopes differ by less than this are parallel. */
const nearSlope = 1e-12;

/** Height of the lower envelope: the least of the planes. */
export function envelopeHeight(planes: readonly Plane[], point: Xy): number {
  return planes.reduce((least, plane) => Math.min(least, heightOn(plane, point)), Infinity);
}

/** For each plane in turn, where it is the lowest over the given patches. Together they cover the patches once. */
export function facets(patches: readonly Patch[], planes: readonly Plane[]): readonly (readonly Patch[])[] {
  return planes.map((plane, i) =>
    planes.reduce<readonly Patch[]>((rest, other, j) => (i === j ? rest : below(rest, plane, other, i < j)), patches),
  );
}

/** Parts of patches where a plane reaches at least a height. */
export function atLeast(patches: readonly Patch[], plane: Plane, height: number): readonly Patch[] {
  return below(patches, { a: 0, b: 0, c: height }, plane, true);
}

/** Where `plane` is no higher than `other`; `wins` says who has it when they are the same plane. */
function below(patches: readonly Patch[], plane: Plane, other: Plane, wins: boolean): readonly Patch[] {
  const [a, b, c] = [other.a - plane.a, other.b - plane.b, other.c - plane.c];
  const steepness = Math.hypot(a, b);
  if (steepness < nearSlope) {
    const gap = heightOn({ a, b, c }, patches[0]?.outline[0] ?? { x: 0, y: 0 });
    if (Math.abs(gap) < nearFeet) return wins ? patches : [];
    return gap > 0 ? patches : [];
  }
  return clipAll(patches, { a: a / steepness, b: b / steepness, c: c / steepness });
}

/** A line of heights along a wall: `along` never falls; two points at one place are a step. All in feet. */
export type Profile = readonly { readonly along: number; readonly height: number }[];

/** The lower envelope above a straight line of the plan, with a point at each end and at each break. */
export function profileAlong(planes: readonly Plane[], from: Xy, to: Xy): Profile {
  const length = distance(from, to);
  const stops = [0, 1];
  for (let i = 0; i < planes.length; i += 1) {
    for (let j = i + 1; j < planes.length; j += 1) {
      const [one, other] = [planes[i] as Plane, planes[j] as Plane];
      const start = heightOn(one, from) - heightOn(other, from);
      const end = heightOn(one, to) - heightOn(other, to);
      if (start * end < 0) stops.push(start / (start - end));
    }
  }
  stops.sort((a, b) => a - b);
  const points = stops.map((t) => ({ along: t * length, height: envelopeHeight(planes, between(from, to, t)) }));
  return straightened(points);
}

/** Drops repeated points and points on the line between their neighbours; steps stay. */
export function straightened(profile: Profile): Profile {
  const kept: { along: number; height: number }[] = [];
  for (const point of profile) {
    const last = kept[kept.length - 1];
    if (last && point.along - last.along < nearFeet && Math.abs(point.height - last.height) < nearFeet) continue;
    const before = kept[kept.length - 2];
    if (last && before && onLine(before, last, point)) kept.pop();
    kept.push(point);
  }
  return kept;
}

function onLine(before: Profile[number], middle: Profile[number], after: Profile[number]): boolean {
  const run = after.along - before.along;
  const rise = after.height - before.height;
  const off = (middle.along - before.along) * rise - (middle.height - before.height) * run;
  const forward = (middle.along - before.along) * run + (middle.height - before.height) * rise;
  return forward >= 0 && Math.abs(off) < nearFeet * Math.hypot(run, rise);
}
