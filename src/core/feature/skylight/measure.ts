import {
  areaOf,
  headings,
  intersect,
  lengthOf,
  patchArea,
  plus,
  pointInFeet,
  pointsOf,
  rectangle,
  slackAround,
  slopeFactor,
  slopeOf,
  type Patch,
  type Plane,
  type Xy,
} from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord, Run } from '../../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../../base/problem/index.js';
import { printArea, printLength, type Area } from '../../../base/units/index.js';
import type { CeilingPiece, RoomSpace } from '../kind.js';
import { surfaceOf } from '../surface.js';
import type { Skylight } from './read.js';
import { shaftOf, type Shaft } from './shaft.js';

/** The hole in its plane of the ceiling, and the four sides of the shaft. */
export function measure(data: Skylight, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const seats = space.ceiling.map((piece) => seatOn(piece, data, space));
  const seat = seats.reduce<Seat | undefined>((best, one) => (best && best.share >= one.share ? best : one), undefined);
  if (!seat) {
    const message = `${feature.name} is in a room without a ceiling: walls that lean, or holes, take all of it`;
    const fix = 'record it as a window in the wall that leans, or leave it out';
    return {
      problems: [problemAt(space.origin, [...feature.path, 'x'], 'skylight-outside-ceiling', message, { fix })],
    };
  }
  const problems = [...shaftProblems(data, seat, feature, space), ...seatProblems(seat, feature, space)];
  if (problems.length > 0) return { problems };
  const { shaft, patch } = seat;
  const value: FeatureMeasure = {
    kind: 'skylight',
    id: feature.id,
    name: feature.name,
    faces: facesOf(shaft, feature.id),
    runs: [
      around(`${feature.id}/edge`, 'Edge at the ceiling', shaft.width, shaft.to - shaft.from),
      around(`${feature.id}/frame`, 'Edge at the skylight', shaft.width, shaft.length),
    ],
    counts: [{ id: `${feature.id}/skylights`, name: 'Skylights', count: 1 }],
    opensCeiling: pointsOf(patch.outline),
    covers: [],
    facts: factsOf(data, seat),
  };
  return { value, problems: [] };
}

/** A skylight as it would lie in a plane of the ceiling. */
interface Seat {
  readonly slope: number;
  readonly shaft: Shaft;
  /** The hole in the ceiling, in plan, and how much of it lies under its plane, of 1. */
  readonly patch: Patch;
  readonly share: number;
}

function seatOn({ plane, patch: over }: CeilingPiece, data: Skylight, space: RoomSpace): Seat {
  const slope = slopeOf(plane);
  const shaft = shaftOf(data, slope);
  const isBounded = Number.isFinite(shaft.to) && shaft.to > shaft.from;
  const patch = holeInPlan(isBounded ? shaft : { ...shaft, from: 0, to: shaft.length }, plane, cornerOf(data, space));
  return { slope, shaft, patch, share: areaOf(intersect([over], patch)) / patchArea(patch) };
}

function cornerOf({ x, y }: Skylight, { corner }: RoomSpace): Xy {
  return plus(pointInFeet(corner), pointInFeet({ x, y }));
}

/** A flat ceiling is seen looking north. */
function holeInPlan({ width, from, to }: Shaft, plane: Plane, corner: Xy): Patch {
  const slope = slopeOf(plane);
  const up = slope === 0 ? headings.north : { x: plane.a / slope, y: plane.b / slope };
  const factor = slopeFactor(plane);
  const outline = rectangle(0, from / factor, width, (to - from) / factor).outline.map(({ x, y }) => ({
    x: corner.x + up.y * x + up.x * y,
    y: corner.y - up.x * x + up.y * y,
  }));
  return { outline, holes: [] };
}

/** Sides that are not square make trapezoids of the two others: x up the slope, y from the ceiling up to the skylight. */
function facesOf({ width, length, depth, from, to, foot, head }: Shaft, id: string): FeatureMeasure['faces'] {
  const right = [
    { x: 0, y: 0 },
    { x: to - from, y: 0 },
    { x: length - from, y: depth },
    { x: -from, y: depth },
  ];
  // Seen from within the shaft, up the slope is to the other hand on the other side.
  const left = right.map(({ x, y }) => ({ x: to - from - x, y })).reverse();
  const side = (outline: readonly Xy[]): readonly Patch[] => [{ outline, holes: [] }];
  return [
    surfaceOf(`${id}/head`, 'Head of the shaft', [rectangle(0, 0, width, head)]),
    surfaceOf(`${id}/foot`, 'Foot of the shaft', [rectangle(0, 0, width, foot)]),
    surfaceOf(`${id}/left`, 'Left side of the shaft', side(left)),
    surfaceOf(`${id}/right`, 'Right side of the shaft', side(right)),
  ];
}

function around(id: string, name: string, width: number, length: number): Run {
  const pieces = [width, length, width, length].map(lengthOf);
  const [across, up] = pieces.map(printLength);
  return { id, name, length: lengthOf(2 * (width + length)), pieces, why: `two of ${across} and two of ${up}` };
}

function factsOf({ width, length, depth, head, foot }: Skylight, { slope, shaft }: Seat): FeatureMeasure['facts'] {
  const opening = `${printLength(width)} × ${printLength(lengthOf(shaft.to - shaft.from))}`;
  return [
    {
      label: 'Clear size',
      text: `${printLength(width)} × ${printLength(length)}${slope === 0 ? '' : ' up the slope'}`,
    },
    { label: 'Shaft', text: `${printLength(depth)} deep, head ${head}, foot ${foot}` },
    ...(head === 'square' && foot === 'square' ? [] : [{ label: 'Opening in the ceiling', text: opening }]),
  ];
}

function shaftProblems(
  { head, foot }: Skylight,
  { slope, shaft }: Seat,
  feature: FeatureRecord,
  { origin }: RoomSpace,
): readonly Problem[] {
  if (slope === 0 && head === 'level') {
    const message = `${feature.name} has a shaft with a level head, which never meets the flat ceiling`;
    const fix = 'write head: square, or leave it out';
    return [problemAt(origin, [...feature.path, 'head'], 'skylight-shaft', message, { fix })];
  }
  if (shaft.to > shaft.from) return [];
  const message = `the shaft of ${feature.name}, head ${head} and foot ${foot}, closes before it comes down to the ceiling`;
  return [
    problemAt(origin, [...feature.path, 'depth'], 'skylight-shaft', message, {
      fix: 'make it less deep, or its head square or level',
    }),
  ];
}

function seatProblems({ share, patch }: Seat, feature: FeatureRecord, space: RoomSpace): readonly Problem[] {
  const area = patchArea(patch);
  const tolerance = slackAround(patch);
  const out = (1 - share) * area;
  if (out <= tolerance) return [];
  const under = space.ceiling.reduce((sum, piece) => sum + areaOf(intersect([piece.patch], patch)), 0);
  const outside = area - under;
  const at = [...feature.path, 'x'];
  if (outside > tolerance) {
    const message = `${printArea(outside as Area)} of the ${printArea(area as Area)} that ${feature.name} takes of the plan lie outside the ceiling`;
    const fix = 'x and y are from the south-west corner of the room to its lower left corner, looking up the slope';
    return [problemAt(space.origin, at, 'skylight-outside-ceiling', message, { fix })];
  }
  const message = `${feature.name} runs over an edge of its plane: ${printArea(out as Area)} of the ${printArea(area as Area)} that it takes of the plan lie under another`;
  const fix = 'move it clear of the ridge, hip or valley, or record one skylight for each plane';
  return [problemAt(space.origin, at, 'skylight-across-planes', message, { fix })];
}
