import {
  areaOf,
  between,
  bounds,
  distance,
  edges,
  heightAlong,
  lengthOf,
  pointOf,
  profileAlong,
  sharedStretch,
  weld,
  type Patch,
  type Profile,
  type Xy,
} from '../../base/geometry/index.js';
import { regionsOf } from '../feature/index.js';
import type { Riser, UprightFace } from '../model/index.js';
import { feet, type Area } from '../../base/units/index.js';
import type { Level } from './floor.js';
import { slugOf } from './slug.js';
import type { Vault } from './vault.js';

/** Nearer than this, in feet, is the same place. */
const tiny = 1e-6;

/** Planes over a part of the plan: a part of the ceiling, or of the floor. */
type Part = Pick<Vault, 'name' | 'planes' | 'patches' | 'openAbove'>;

/**
 * Upright faces where two parts of a ceiling meet at different heights: from the lower one up to the higher, or to where the
 * higher part is open above. One surface for each pair of parts, unfolded side by side as seen from under the higher part.
 */
export function stepsOf(vaults: readonly Vault[]): readonly UprightFace[] {
  return facesBetween('step', vaults, sharedEdges).map(({ surface }) => surface);
}

/** The same of a floor, as seen from the lower part. */
export function risersOf(levels: readonly Level[]): readonly Riser[] {
  const parts = levels.map(({ name, plane, patches }) => ({ name, planes: [plane], patches }));
  return facesBetween('riser', parts, (higher, lower) => sharedEdges(lower, higher)).map(({ surface, face }) => {
    const boxes = face.map(({ outline }) => bounds(outline));
    const run = boxes.reduce((sum, { west, east }) => sum + east - west, 0);
    const rise = boxes.reduce((most, { south, north }) => Math.max(most, north - south), 0);
    return { ...surface, run: lengthOf(run), rise: lengthOf(rise) };
  });
}

interface FaceBetween {
  readonly surface: UprightFace;
  readonly face: readonly Patch[];
}

function facesBetween(
  kind: 'step' | 'riser',
  parts: readonly Part[],
  edgesBetween: typeof sharedEdges,
): readonly FaceBetween[] {
  const ids = new Map<string, number>();
  return parts.flatMap((higher) =>
    parts.flatMap((lower) => {
      const shared = higher === lower ? [] : edgesBetween(higher, lower);
      const face = faceAlong(shared, higher, lower);
      const area = areaOf(face);
      if (area < tiny) return [];
      const id = `${kind}-${slugOf(lower.name)}-${slugOf(higher.name)}`;
      const count = (ids.get(id) ?? 0) + 1;
      ids.set(id, count);
      const name = `${kind === 'step' ? 'Step' : 'Riser'} from ${inside(lower.name)} up to ${inside(higher.name)}`;
      const whole = area as Area;
      const surface = {
        id: count === 1 ? id : `${id}-${count}`,
        name,
        gross: whole,
        deductions: [],
        net: whole,
        regions: regionsOf(face),
        lines: shared.map(([from, to]) => ({ from: pointOf(from), to: pointOf(to) })),
      };
      return [{ surface, face }];
    }),
  );
}

/** All of the face, stretch by stretch from the left. */
function faceAlong(shared: ReturnType<typeof sharedEdges>, higher: Part, lower: Part): readonly Patch[] {
  let start = 0;
  return shared.flatMap(([from, to]) => {
    const stretches = stretchesBetween(higher, lower, from, to, start);
    start += distance(from, to);
    return weld(stretches);
  });
}

/** Edges of one part that lie on edges of another, each from the left as seen from within the first. */
function sharedEdges(own: Part, other: Part): readonly (readonly [Xy, Xy])[] {
  return edgesOf(own).flatMap(([a, b]) =>
    edgesOf(other).flatMap(([c, d]) => {
      const length = distance(a, b);
      const shared = sharedStretch([a, b], [c, d]);
      // Outlines turn counter-clockwise, so from within the far end of an edge is at the left hand.
      return shared ? [[between(a, b, shared[1] / length), between(a, b, shared[0] / length)] as const] : [];
    }),
  );
}

function edgesOf({ patches }: Part): readonly (readonly [Xy, Xy])[] {
  return patches.flatMap(({ outline, holes }) => [outline, ...holes].flatMap(edges));
}

/** Quadrilaterals from the lower top to the higher along a line, between the breaks of both. */
function stretchesBetween(higher: Part, lower: Part, from: Xy, to: Xy, start: number): readonly Patch[] {
  const length = distance(from, to);
  const open = higher.openAbove === undefined ? Infinity : feet(higher.openAbove);
  const [high, low] = [higher, lower].map(({ planes }) => profileAlong(planes, from, to)) as [Profile, Profile];
  const top = (along: number) => Math.min(open, heightAlong(high, along));
  const bottom = (along: number) => heightAlong(low, along);
  const breaks = [...high, ...low].map(({ along }) => along);
  const opens = [high, low].flatMap((profile) => levelCrossings(profile, open));
  const meeting = [0, length, ...breaks, ...crossings(high, low, length), ...opens]
    .map((along) => Math.min(length, Math.max(0, along)))
    .sort((a, b) => a - b);
  return meeting.slice(1).flatMap((end, i) => {
    const begin = meeting[i] as number;
    const middle = (begin + end) / 2;
    if (end - begin < tiny || top(middle) - bottom(middle) < tiny) return [];
    const outline = [
      { x: start + begin, y: bottom(begin) },
      { x: start + end, y: bottom(end) },
      { x: start + end, y: Math.max(bottom(end), top(end)) },
      { x: start + begin, y: Math.max(bottom(begin), top(begin)) },
    ];
    return [{ outline, holes: [] }];
  });
}

/** Where two profiles cross. */
function crossings(one: Profile, other: Profile, length: number): readonly number[] {
  const stops = [0, length, ...one.map(({ along }) => along), ...other.map(({ along }) => along)].sort((a, b) => a - b);
  return zeros(stops, (along) => heightAlong(one, along) - heightAlong(other, along));
}

function levelCrossings(profile: Profile, level: number): readonly number[] {
  if (!Number.isFinite(level)) return [];
  return zeros(
    profile.map(({ along }) => along),
    (along) => heightAlong(profile, along) - level,
  );
}

/** Zeros of a function that is straight between the stops. */
function zeros(stops: readonly number[], valueAt: (along: number) => number): readonly number[] {
  return stops.slice(1).flatMap((end, i) => {
    const begin = stops[i] as number;
    const [a, b] = [valueAt(begin), valueAt(end)];
    return a < 0 !== b < 0 ? [begin + ((end - begin) * a) / (a - b)] : [];
  });
}

/** A part's name inside a sentence. */
function inside(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}
