import {
  direction,
  distance,
  faceBetween,
  faceUnder,
  lengthOf,
  nearFeet,
  patchFrom,
  pointOf,
  rectangle,
  regionOf,
  slopeFactor,
  straightened,
  topOf,
  weld,
  type Patch,
  type Plane,
  type PointAlong,
  type Profile,
  type Xy,
} from '../../base/geometry/index.js';
import { surfaceOf, type Cut } from '../feature/index.js';
import type { Facet } from './ceiling.js';
import type {
  FeatureMeasure,
  MeasuredArc,
  MeasuredLean,
  OpeningMeasure,
  Point,
  WallLean,
  WallMeasure,
  WallPoint,
} from '../model/index.js';
import { outlineOf, type OpeningForm } from '../opening/index.js';
import { feet, type Length } from '../../base/units/index.js';
import { isGround, type Level } from './floor.js';
import type { Bow, Plan } from './plan.js';
import { topAlong, type Vault } from './vault.js';

/** A wall before anything is taken off it. */
export interface WallShape {
  readonly name: string;
  readonly openTo?: string;
  readonly beside?: readonly string[];
  readonly from: Point;
  readonly to: Point;
  readonly run: Length;
  readonly arc?: MeasuredArc;
  readonly lean?: MeasuredLean;
  /** In feet, from the left end. */
  readonly top: Profile;
  /** Heights of the floor along it, where it is not level with the rest of the room's. */
  readonly foot?: Profile;
  /** From the floor up to the top. */
  readonly face: readonly Patch[];
}

export function wallShapes({ sides }: Plan, { vaults, levels, overhead }: Enclosure): readonly WallShape[] {
  const floors = levels.every(isGround) ? undefined : levels.map(asVault);
  return sides.map(({ name, openTo, beside, line, bow, plane, leans }) => {
    const [from, to] = [line[0], line.at(-1)] as [PointAlong, PointAlong];
    const open = { ...(openTo !== undefined && { openTo }), ...(beside && { beside }) };
    const side = { name, ...open, from: pointOf(from), to: pointOf(to), run: lengthOf(to.along) };
    if (plane && leans) return { ...side, ...leaningFace([from, to], plane, leans, overhead) };
    const arc = bow && measuredArc(bow, line);
    const top = profileOver(vaults, line);
    const foot = floors && profileOver(floors, line);
    if (!foot?.some(({ height }) => Math.abs(height) > nearFeet))
      return { ...side, ...(arc && { arc }), top, face: faceUnder(top) };
    return { ...side, ...(arc && { arc }), top, foot, face: faceBetween(foot, top) };
  });
}

/** What is under and over a room. */
interface Enclosure {
  readonly vaults: readonly Vault[];
  readonly levels: readonly Level[];
  /** All that is overhead: the ceiling, and walls that lean. */
  readonly overhead: readonly Facet[];
}

/** A wall that leans, in its own plane: along its foot from the left, and up its slope. */
function leaningFace(
  [from, to]: readonly [PointAlong, PointAlong],
  plane: Plane,
  leans: WallLean,
  overhead: readonly Facet[],
): Required<Pick<WallShape, 'lean' | 'top' | 'face'>> {
  const ahead = direction(from, to);
  const factor = slopeFactor(plane);
  const unfolded = ({ x, y }: Xy): Xy => ({
    x: (x - from.x) * ahead.x + (y - from.y) * ahead.y,
    y: ((x - from.x) * ahead.y - (y - from.y) * ahead.x) * factor,
  });
  const own = overhead.filter((facet) => facet.plane === plane);
  const face = weld(
    own.map(({ patch }) =>
      patchFrom(
        patch.outline.map(unfolded),
        patch.holes.map((hole) => hole.map(unfolded)),
      ),
    ),
  );
  const lean = { ...leans, plan: own.map(({ patch }) => regionOf(patch)) };
  return { lean, top: upperEdge(face, to.along), face };
}

/** The upper edge of a face from its left end to its right. */
function upperEdge(face: readonly Patch[], run: number): Profile {
  const stops = [0, run, ...face.flatMap(({ outline }) => outline.map(({ x }) => x))].sort((a, b) => a - b);
  const heightOver = (along: number): number => Math.max(0, ...face.map(({ outline }) => topOf(outline, along)));
  return straightened(stops.map((along) => ({ along, height: heightOver(along) })));
}

function measuredArc({ center, radius, rise, bows }: Bow, line: readonly PointAlong[]): MeasuredArc {
  return {
    center: pointOf(center),
    radius: lengthOf(radius),
    rise: lengthOf(rise),
    bows,
    line: line.map((point) => ({ at: pointOf(point), along: lengthOf(point.along) })),
  };
}

/** A part of the floor as the ceiling of what is under it. */
function asVault({ name, plane, patches }: Level): Vault {
  return { name, planes: [plane], patches };
}

/** Height of a ceiling or a floor along a line of straight pieces, each stretched to its true length. */
function profileOver(vaults: readonly Vault[], line: readonly PointAlong[]): Profile {
  if (line.length === 2) return topAlong(vaults, ...(line as readonly [PointAlong, PointAlong]));
  const points = line.slice(1).flatMap((to, index) => {
    const from = line[index] as PointAlong;
    const stretch = (to.along - from.along) / distance(from, to);
    return topAlong(vaults, from, to).map(({ along, height }) => ({ along: from.along + along * stretch, height }));
  });
  return straightened(points);
}

/** Gross under the top's profile, less openings and what features hide. Where the room is open, nothing to finish. */
export function measureWall(
  wall: WallShape,
  openings: readonly OpeningMeasure[],
  features: readonly FeatureMeasure[],
): WallMeasure {
  const { name, from, to, run, arc, lean, foot, openTo, beside } = wall;
  const top = wallPoints(wall.top);
  const cuts = [...openings.filter((one) => one.wall === name).map(openingCut), ...coverCuts(name, features)];
  const surface = surfaceOf(
    name,
    wallName(name),
    openTo === undefined ? wall.face : [],
    openTo === undefined ? cuts : [],
  );
  const open = { ...(openTo !== undefined && { openTo }), ...(beside && { beside }) };
  const shape = { ...(arc && { arc }), ...(lean && { lean }), top, ...(foot && { foot: wallPoints(foot) }) };
  return { ...surface, from, to, run, ...shape, ...open };
}

function wallPoints(profile: Profile): readonly WallPoint[] {
  return profile.map(({ along, height }) => ({ along: lengthOf(along), height: lengthOf(height) }));
}

function openingCut(opening: OpeningMeasure): Cut {
  const kinds = { door: 'Door', window: 'Window', cased: 'Cased opening', open: 'Opening' };
  const { mark, kind } = opening;
  return { what: `${kinds[kind]} ${mark}`, of: mark, kind: 'opening', patch: openingPatch(opening) };
}

function coverCuts(wall: string, features: readonly FeatureMeasure[]): readonly Cut[] {
  return features.flatMap(({ id, name, kind: by, covers }) =>
    covers
      .filter((cover) => cover.wall === wall)
      .map(({ from, to, sill, height }) => {
        const bottom = feet(sill ?? (0 as Length));
        const patch = rectangle(feet(from), bottom, feet((to - from) as Length), feet(height) - bottom);
        return { what: name, of: id, kind: 'feature' as const, by, patch };
      }),
  );
}

/** `North wall`; a name that says wall already stays. */
function wallName(name: string): string {
  const words = name.replaceAll('-', ' ');
  const title = words.charAt(0).toUpperCase() + words.slice(1);
  return /wall/iu.test(title) ? title : `${title} wall`;
}

/** The opening on its wall in its true shape: x from the wall's left end, y up from the floor. */
export function openingPatch({ at, sill, ...form }: OpeningForm & Pick<OpeningMeasure, 'at' | 'sill'>): Patch {
  const [left, bottom] = [feet(at), feet(sill)];
  return { outline: outlineOf(form).map(({ x, y }) => ({ x: left + x, y: bottom + y })), holes: [] };
}
