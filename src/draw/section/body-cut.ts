import {
  areaOf,
  between,
  common,
  direction,
  dot,
  grown,
  minus,
  nearFeet,
  patchFrom,
  pointInFeet,
  ringInFeet,
  stretchesIn,
  unite,
  without,
  type Patch,
  type Xy,
} from '../../base/geometry/index.js';
import { feet, type Length } from '../../base/units/index.js';
import { flightProfile, solidsOf, stairOf, type SolidFace, type SolidSpace } from '../../core/feature/index.js';
import type { FeatureMeasure } from '../../core/model/index.js';
import { placeAt, stretchesOf, tracesOf, type Cut, type Trace } from './cut.js';
import { upright } from './shell-cut.js';

/** What of a feature a plane goes through, in the plane's axes: where it is solid, or what it leaves out of the room's shell. */
export interface BodyCut {
  readonly feature: FeatureMeasure;
  readonly solid: readonly Patch[];
  /** A niche or a shaft, let into the shell. */
  readonly hollow: readonly Patch[];
  /** What is around a hollow, where it goes deeper than the shell is drawn. */
  readonly lining: readonly Patch[];
}

/** Around what is let into a wall or a ceiling, in feet. As drawn. */
const liningThickness = 0.15;
/** Over any room, in feet. */
const farUp = 200;

export function bodyCut(feature: FeatureMeasure, space: SolidSpace, cut: Cut): BodyCut | undefined {
  const cutBody = { feature, solid: [], hollow: [], lining: [] };
  const stair = stairOf(feature);
  if (stair) {
    const solid = flightCut(feature, cut);
    return solid.length > 0 ? { ...cutBody, solid } : undefined;
  }
  const faces = solidsOf(feature, space);
  const traces = tracesIn(cut, faces, (face) => face.role !== 'hollow' && face.role !== 'glass');
  if (traces.length === 0) return undefined;
  if (feature.footprint ?? feature.overhead) {
    const foot = feet(feature.floor ?? (0 as Length));
    const columns = traces.flatMap((trace) => column(trace, feature, foot));
    const insides = chainsOf(tracesIn(cut, faces, (face) => face.role === 'hollow')).flatMap(shapeOf);
    return { ...cutBody, solid: without(unite(columns), insides) };
  }
  const chains = chainsOf(traces);
  if (chains.every(({ isClosed }) => isClosed)) return { ...cutBody, solid: chains.flatMap(shapeOf) };
  const hollow = chains.flatMap(shapeOf);
  return { ...cutBody, hollow, lining: without(grown(hollow, liningThickness), hollow) };
}

/** What lies under a cut face down to the floor, or over it up to the ceiling. */
function column({ from, to }: Trace, { footprint }: FeatureMeasure, foot: number): readonly Patch[] {
  if (Math.abs(from.x - to.x) < nearFeet) return [];
  const level = footprint ? foot : farUp;
  const patch = patchFrom([{ x: from.x, y: level }, { x: to.x, y: level }, to, from]);
  return areaOf([patch]) > 1e-6 ? [patch] : [];
}

/** A flight through its length is its side, drawn out where it is cut askew; across it is a step as deep as the flight is there. */
function flightCut(feature: FeatureMeasure, cut: Cut): readonly Patch[] {
  const stair = stairOf(feature);
  const ring = ringInFeet(feature.footprint ?? []);
  const [stretch] = stretchesOf(cut, [ring]);
  const line = lineOf(feature);
  if (!stair || !stretch || !line) return [];
  const profile = flightProfile(stair);
  const up = direction(line.foot, line.top);
  // How far up the flight a place in the plane lies, and how far it goes up with a foot to the right.
  const upAt = (x: number): number => dot(minus(placeAt(cut, x), line.foot), up);
  const side = dot(up, cut.right);
  if (Math.abs(side) < 1e-6) {
    return stretchesIn([profile], { x: upAt(stretch.from), y: 0 }, { x: 0, y: 1 }).map(({ from, to }) =>
      upright(stretch.from, stretch.to, from, to),
    );
  }
  const start = upAt(0);
  const shape = patchFrom(profile.map(({ x, y }) => ({ x: (x - start) / side, y })));
  const within = upright(stretch.from, stretch.to, 0, Math.max(...profile.map(({ y }) => y)));
  return Math.abs(side) > 1 - 1e-6 ? [shape] : common([shape], [within]);
}

/** Middle of a flight's foot, and of its top. Its footprint begins with the two corners of its foot. */
export function lineOf(feature: FeatureMeasure): { readonly foot: Xy; readonly top: Xy } | undefined {
  const [a, b, c, d] = (feature.footprint ?? []).map(pointInFeet);
  if (!stairOf(feature) || !a || !b || !c || !d) return undefined;
  return { foot: between(a, b, 1 / 2), top: between(c, d, 1 / 2) };
}

function tracesIn(cut: Cut, faces: readonly SolidFace[], isOf: (face: SolidFace) => boolean): readonly Trace[] {
  return faces.filter(isOf).flatMap((face) => tracesOf(cut, face));
}

interface Chain {
  readonly traces: readonly Trace[];
  readonly isClosed: boolean;
}

/** Traces one after another, as a body's faces meet; of several that go on from a place the next in the body's own order. */
function chainsOf(traces: readonly Trace[]): readonly Chain[] {
  const left = new Set(traces.keys());
  const meets = (a: Xy, b: Xy): boolean => Math.hypot(a.x - b.x, a.y - b.y) < 1e-5;
  const chains: Chain[] = [];
  const isFirst = (i: number): boolean => !traces.some(({ to }) => meets(to, traces[i]!.from));
  const order = [...traces.keys()].toSorted((a, b) => Number(isFirst(b)) - Number(isFirst(a)) || a - b);
  for (const start of order) {
    if (!left.delete(start)) continue;
    const chain = [start];
    for (;;) {
      const last = chain.at(-1)!;
      const end = traces[last]!.to;
      if (meets(end, traces[start]!.from)) break;
      const next = [...left]
        .filter((i) => meets(traces[i]!.from, end))
        .toSorted((a, b) => Math.abs(a - last) - Math.abs(b - last))[0];
      if (next === undefined) break;
      left.delete(next);
      chain.push(next);
    }
    const own = chain.map((i) => traces[i]!);
    chains.push({ traces: own, isClosed: own.length > 2 && meets(own.at(-1)!.to, own[0]!.from) });
  }
  return chains;
}

function shapeOf({ traces }: Chain): readonly Patch[] {
  const patch = patchFrom([...traces.map(({ from }) => from), ...traces.slice(-1).map(({ to }) => to)]);
  return areaOf([patch]) > 1e-6 ? unite([patch]) : [];
}
