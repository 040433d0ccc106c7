import {
  counterClockwise,
  faceUnder,
  heightRange,
  lengthOf,
  nearFeet,
  pointInFeet,
  pointOf,
  pointsOf,
  rectangle,
  weld,
  type Patch,
  type Profile,
} from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord, Point, Polygon, Run, Surface } from '../../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../../base/problem/index.js';
import { feet, printLength, type Length } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { floorUnder, standingAt, wallProblems } from '../place.js';
import { wallFrame, type WallFrame } from '../wall-frame.js';
import { surfaceOf } from '../surface.js';
import type { ChimneyBreast } from './read.js';

/** Front less the firebox and what a raised hearth hides, two sides, hearth top and riser, outside corners; what it takes off wall, floor and, when it reaches it, ceiling. */
export function measure(data: ChimneyBreast, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { width } = data;
  const problems = [...wallProblems(feature, space, data)];
  const frame = wallFrame(space, data.wall);
  if (!frame || problems.length > 0) return { problems };
  const footprint = footprintOf(data, frame);
  const { value: floor, problems: floorProblems } = floorUnder(footprint.map(pointInFeet), feature, space);
  if (floor === undefined) return { problems: floorProblems };
  const tops = topsOf(data, frame, space, floor);
  problems.push(...heightProblems(data, tops, feature, space), ...fireboxProblems(data, tops, feature, space));
  if (problems.length > 0) return { problems };
  const value: FeatureMeasure = {
    kind: 'chimney-breast',
    id: feature.id,
    name: feature.name,
    faces: facesOf(data, tops, feature.id),
    runs: runsOf(data, tops, feature.id),
    counts: [],
    footprint,
    ...standingAt(floor),
    ...(reachesCeiling(data, tops) ? { overhead: planOf([breastPatch(data)], frame) } : {}),
    covers: [
      {
        wall: data.wall,
        from: data.at,
        to: (data.at + width) as Length,
        ...(floor !== 0 && { sill: floor }),
        height: (floor + lengthOf(highest(tops.back))) as Length,
      },
    ],
    facts: factsOf(data, tops),
  };
  return { value, problems };
}

/** Heights along the edges of the breast's top, over the floor that it stands on. */
interface Tops {
  readonly front: Profile;
  readonly left: Profile;
  readonly right: Profile;
  readonly back: Profile;
  readonly ceiling: { readonly least: number; readonly greatest: number };
}

function topsOf(data: ChimneyBreast, frame: WallFrame, space: RoomSpace, floor: Length): Tops {
  const [at, width, depth] = [feet(data.at), feet(data.width), feet(data.depth)];
  const corner = (along: number, out: number) => pointOf(frame.place(at + along, out));
  const [backLeft, backRight] = [corner(0, 0), corner(width, 0)];
  const [frontLeft, frontRight] = [corner(0, depth), corner(width, depth)];
  const topAlong = (from: Point, to: Point): Profile =>
    space.topAlong(from, to).map(({ along, height }) => ({ along, height: height - feet(floor) }));
  const above = {
    front: topAlong(frontLeft, frontRight),
    left: topAlong(backLeft, frontLeft),
    right: topAlong(frontRight, backRight),
    back: topAlong(backLeft, backRight),
  };
  const ceiling = heightRangeOf([above.front, above.left, above.right, above.back]);
  const { height } = data;
  if (height === undefined) return { ...above, ceiling };
  const level = (run: number): Profile => [
    { along: 0, height: feet(height) },
    { along: run, height: feet(height) },
  ];
  return { front: level(width), left: level(depth), right: level(depth), back: level(width), ceiling };
}

function heightProblems(
  { height }: ChimneyBreast,
  { ceiling }: Tops,
  feature: FeatureRecord,
  space: RoomSpace,
): readonly Problem[] {
  if (height === undefined || feet(height) <= ceiling.least + nearFeet) return [];
  const least = printLength(lengthOf(ceiling.least));
  const message = `${feature.name} is ${printLength(height)} high, but the ceiling above it comes down to ${least}`;
  const fix = 'leave height out to let the breast follow the ceiling';
  return [problemAt(space.origin, [...feature.path, 'height'], 'feature-above-ceiling', message, { fix })];
}

function fireboxProblems(
  { firebox, width }: ChimneyBreast,
  tops: Tops,
  feature: FeatureRecord,
  space: RoomSpace,
): readonly Problem[] {
  if (!firebox) return [];
  const path = [...feature.path, 'firebox'];
  if (firebox.width > width) {
    const message = `the firebox is ${printLength(firebox.width)} wide, but ${feature.name} only ${printLength(width)}`;
    return [
      problemAt(space.origin, [...path, 'width'], 'firebox-too-large', message, {
        fix: 'give the clear opening of the firebox',
      }),
    ];
  }
  const [head, top] = [feet(firebox.sill) + feet(firebox.height), heightRangeOf([tops.front]).least];
  if (head <= top + nearFeet) return [];
  const message = `the firebox ends ${printLength(lengthOf(head))} above the floor, but ${feature.name} at ${printLength(lengthOf(top))}`;
  return [
    problemAt(space.origin, [...path, 'height'], 'firebox-too-large', message, {
      fix: 'give the clear opening of the firebox',
    }),
  ];
}

function facesOf({ width, firebox, hearth }: ChimneyBreast, tops: Tops, id: string): readonly Surface[] {
  const hole = firebox && {
    what: 'Firebox opening',
    of: id,
    kind: 'opening' as const,
    // The firebox is in the middle of the breast.
    patch: rectangle(
      (feet(width) - feet(firebox.width)) / 2,
      feet(firebox.sill),
      feet(firebox.width),
      feet(firebox.height),
    ),
  };
  const raised = hearth && riserHeight(hearth);
  const hidden =
    hearth && raised
      ? [
          {
            what: 'Raised hearth',
            of: id,
            kind: 'feature' as const,
            by: 'chimney-breast',
            patch: hearthAgainst(hearth, width),
          },
        ]
      : [];
  const faces = [
    surfaceOf(`${id}/front`, 'Front', faceUnder(tops.front), [...(hole ? [hole] : []), ...hidden]),
    surfaceOf(`${id}/left`, 'Left side', faceUnder(tops.left)),
    surfaceOf(`${id}/right`, 'Right side', faceUnder(tops.right)),
  ];
  if (hearth)
    faces.push(surfaceOf(`${id}/hearth`, 'Hearth', [rectangle(0, 0, feet(hearth.width), feet(hearth.depth))]));
  if (hearth && raised) faces.push(surfaceOf(`${id}/hearth-riser`, 'Hearth riser', riserFaces(hearth, feet(raised))));
  return faces;
}

type Hearth = NonNullable<ChimneyBreast['hearth']>;

/** From the floor to the underside of the slab; undefined for a hearth that lies on the floor. */
function riserHeight({ height, thickness }: Hearth): Length | undefined {
  return height > thickness ? ((height - thickness) as Length) : undefined;
}

/** What the hearth hides of the front: it stands against its middle, as high as its top. */
function hearthAgainst(hearth: Hearth, width: Length): Patch {
  const covered = Math.min(feet(hearth.width), feet(width));
  return rectangle((feet(width) - covered) / 2, 0, covered, feet(hearth.height));
}

/** Left side, front and right side, unfolded. */
function riserFaces({ width, depth }: Hearth, height: number): readonly Patch[] {
  return [rectangle(0, 0, 2 * feet(depth) + feet(width), height)];
}

/** The breast's corners start on top of a raised hearth that is as wide as it. */
function runsOf({ hearth, width }: ChimneyBreast, { front }: Tops, id: string): readonly Run[] {
  const raised = hearth && riserHeight(hearth);
  const foot = hearth && raised && hearth.width >= width ? hearth.height : (0 as Length);
  const corners = [front[0], front[front.length - 1]].map(
    (end) => Math.max(0, lengthOf(end?.height ?? 0) - foot) as Length,
  );
  const runs = [runOf(`${id}/corners`, 'Outside corners', corners)];
  if (hearth) runs.push(runOf(`${id}/hearth-edge`, 'Hearth edge', [hearth.depth, hearth.width, hearth.depth]));
  if (raised) runs.push(runOf(`${id}/hearth-corners`, 'Outside corners of the hearth', [raised, raised]));
  return runs;
}

function runOf(id: string, name: string, pieces: readonly Length[]): Run {
  return { id, name, length: pieces.reduce((sum, piece) => sum + piece, 0) as Length, pieces };
}

function reachesCeiling({ height }: ChimneyBreast, { ceiling }: Tops): boolean {
  return height === undefined || feet(height) >= ceiling.least - nearFeet;
}

/** The breast and its hearth, which is centred on it, as one outline. */
function footprintOf(data: ChimneyBreast, frame: WallFrame): Polygon {
  const { at, width, depth, hearth } = data;
  if (!hearth) return planOf([breastPatch(data)], frame);
  const left = feet(at) + (feet(width) - feet(hearth.width)) / 2;
  return planOf([breastPatch(data), rectangle(left, feet(depth), feet(hearth.width), feet(hearth.depth))], frame);
}

function breastPatch({ at, width, depth }: ChimneyBreast): Patch {
  return rectangle(feet(at), 0, feet(width), feet(depth));
}

/** Patches along the wall and out from it, welded and laid on the plan. */
function planOf(patches: readonly Patch[], frame: WallFrame): Polygon {
  const [whole] = weld(patches);
  return pointsOf(counterClockwise((whole?.outline ?? []).map(({ x, y }) => frame.place(x, y))));
}

function factsOf({ width, depth, firebox, hearth }: ChimneyBreast, { front }: Tops): FeatureMeasure['facts'] {
  const { least, greatest } = heightRangeOf([front]);
  const [low, high] = [printLength(lengthOf(least)), printLength(lengthOf(greatest))];
  const facts = [
    { label: 'Width by depth', text: `${printLength(width)} × ${printLength(depth)}` },
    { label: 'Height of the front', text: low === high ? low : `${low} to ${high}` },
  ];
  if (firebox)
    facts.push({ label: 'Firebox opening', text: `${printLength(firebox.width)} × ${printLength(firebox.height)}` });
  if (hearth) facts.push({ label: 'Hearth', text: `${printLength(hearth.width)} × ${printLength(hearth.depth)}` });
  return facts;
}

function heightRangeOf(profiles: readonly Profile[]): { least: number; greatest: number } {
  const ranges = profiles.map((profile) => heightRange(profile, -Infinity, Infinity));
  return {
    least: Math.min(...ranges.map(({ least }) => least)),
    greatest: Math.max(...ranges.map(({ greatest }) => greatest)),
  };
}

function highest(profile: Profile): number {
  return heightRangeOf([profile]).greatest;
}
