import {
  areaOf,
  distance,
  intersect,
  lengthOf,
  patchFrom,
  pointInFeet,
  pointsOf,
  rectangle,
  ringInFeet,
  sharedStretch,
  slackAround,
  slopeOf,
  type Patch,
  type Xy,
} from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../../base/problem/index.js';
import { feet, printArea, printLength, type Area, type Length } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { wallProblems } from '../place.js';
import { wallFrame, type WallFrame } from '../wall-frame.js';
import { surfaceOf } from '../surface.js';
import type { Soffit } from './read.js';

/** Its bottom and what is seen of its upright sides; the ceiling above it and the walls behind it are hidden. */
export function measure(data: Soffit, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { wall, at, length, depth, drop } = data;
  const problems = wallProblems(feature, space, { wall, at, width: length, key: 'length' });
  const frame = wallFrame(space, wall);
  if (problems.length > 0 || !frame) return { problems };
  const corners = cornersOf(data, frame);
  const { height, problems: wrong } = ceilingOver(patchFrom(corners), data, feature, space);
  if (height === undefined) return { problems: wrong };
  const sides = sidesOf(corners, space);
  const deep = feet(drop);
  const [bottom, top] = [(height - drop) as Length, height];
  const free = sides.filter(({ seen }) => seen > 0);
  const value: FeatureMeasure = {
    kind: 'soffit',
    id: feature.id,
    name: feature.name,
    faces: [
      surfaceOf(`${feature.id}/bottom`, 'Bottom', [rectangle(0, 0, feet(length), feet(depth))]),
      ...free.map(({ id, name, seen }) => surfaceOf(`${feature.id}/${id}`, name, [rectangle(0, 0, seen, deep)])),
    ],
    runs: [
      {
        id: `${feature.id}/edge`,
        name: 'Lower edge',
        length: lengthOf(free.reduce((sum, { seen }) => sum + seen, 0)),
        pieces: free.map(({ seen }) => lengthOf(seen)),
      },
    ],
    counts: [],
    overhead: pointsOf(corners),
    covers: [
      { wall, from: at, to: (at + length) as Length, sill: bottom, height: top },
      ...sides.flatMap(({ against }) => against.map((one) => ({ ...one, sill: bottom, height: top }))),
    ],
    facts: [
      { label: 'Size', text: `${printLength(length)} × ${printLength(depth)}, ${printLength(drop)} deep` },
      { label: 'Bottom above the floor', text: printLength(bottom) },
    ],
  };
  return { value, problems: [] };
}

/** From its left end at the wall, seen from the room: along the wall to the right, and back along its front. */
function cornersOf({ at, length, depth }: Soffit, { place }: WallFrame): readonly [Xy, Xy, Xy, Xy] {
  const [from, to, out] = [feet(at), feet(at) + feet(length), feet(depth)];
  return [place(from, 0), place(to, 0), place(to, out), place(from, out)];
}

interface Side {
  readonly id: string;
  readonly name: string;
  /** Feet of it that stand free. */
  readonly seen: number;
  /** Stretches of other walls that it stands against. */
  readonly against: readonly { readonly wall: string; readonly from: Length; readonly to: Length }[];
}

/** In a corner its end is against the other wall; in a narrow room its front may be. */
function sidesOf([left, right, frontRight, frontLeft]: readonly [Xy, Xy, Xy, Xy], space: RoomSpace): readonly Side[] {
  const sides = [
    { id: 'front', name: 'Front', ends: [frontLeft, frontRight] },
    { id: 'left-end', name: 'Left end', ends: [left, frontLeft] },
    { id: 'right-end', name: 'Right end', ends: [right, frontRight] },
  ] as const;
  return sides.map(({ id, name, ends: [from, to] }) => {
    const against = space.walls.flatMap(({ name: wall, from: start, to: end, openTo, arc }) => {
      // An arc does not follow the straight line between its ends.
      if (openTo !== undefined || arc) return [];
      const shared = sharedStretch([pointInFeet(start), pointInFeet(end)], [from, to]);
      return shared ? [{ wall, from: lengthOf(shared[0]), to: lengthOf(shared[1]) }] : [];
    });
    const hidden = against.reduce((sum, one) => sum + feet((one.to - one.from) as Length), 0);
    const rest = distance(from, to) - hidden;
    return { id, name, seen: rest < hair ? 0 : rest, against };
  });
}

/** Less than this, in feet, is not seen. */
const hair = 1e-6;

/** Height of the level ceiling that it hangs from. */
function ceilingOver(
  patch: Patch,
  { drop }: Soffit,
  feature: FeatureRecord,
  space: RoomSpace,
): { readonly height?: Length; readonly problems: readonly Problem[] } {
  const problem = (key: string, message: string, fix: string) => ({
    problems: [problemAt(space.origin, [...feature.path, key], 'soffit-ceiling', message, { fix })],
  });
  const over = space.ceiling.filter((piece) => areaOf(intersect([piece.patch], patch)) > hair);
  const heights = [...new Set(over.map(({ plane }) => lengthOf(plane.c)))];
  const [height] = heights;
  const inRoom = areaOf(intersect([patchFrom(ringInFeet(space.plan))], patch));
  const bare = inRoom - over.reduce((sum, piece) => sum + areaOf(intersect([piece.patch], patch)), 0);
  if (bare > slackAround(patch)) {
    const message = `${feature.name} hangs where there is no ceiling: a hole or a wall that leans takes ${printArea(bare as Area)} over it`;
    return problem('at', message, 'let it end where the ceiling does');
  }
  if (over.some(({ plane }) => slopeOf(plane) > 0) || heights.length > 1) {
    const message = `${feature.name} hangs where the ceiling is not level, or not of one height`;
    return problem('wall', message, 'record a soffit for each level part, or its bottom as a part of the ceiling');
  }
  // Outside of the room there is no ceiling either, which is told of every feature.
  if (height === undefined || drop < height) return { ...(height !== undefined && { height }), problems: [] };
  const message = `${feature.name} drops ${printLength(drop)} from a ceiling of ${printLength(height)}`;
  return problem('drop', message, 'a soffit ends above the floor: drop is from the ceiling down');
}
