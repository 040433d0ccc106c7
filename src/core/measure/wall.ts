import {
  distance,
  faceUnder,
  lengthOf,
  pointOf,
  rectangle,
  straightened,
  type Patch,
  type PointAlong,
  type Profile,
} from '../../base/geometry/index.js';
import { surfaceOf, type Cut } from '../feature/index.js';
import type { FeatureMeasure, MeasuredArc, OpeningMeasure, Point, WallMeasure } from '../model/index.js';
import { feet, type Length } from '../../base/units/index.js';
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
  /** In feet, from the left end. */
  readonly top: Profile;
  /** From the floor up to the top. */
  readonly face: readonly Patch[];
}

export function wallShapes({ sides }: Plan, vaults: readonly Vault[]): readonly WallShape[] {
  return sides.map(({ name, openTo, beside, line, bow }) => {
    const [from, to] = [line[0], line.at(-1)] as [PointAlong, PointAlong];
    const top = topOver(vaults, line);
    const open = { ...(openTo !== undefined && { openTo }), ...(beside && { beside }) };
    const ends = { from: pointOf(from), to: pointOf(to), run: lengthOf(to.along) };
    return { name, ...open, ...ends, ...(bow && { arc: measuredArc(bow, line) }), top, face: faceUnder(top) };
  });
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

/** Ceiling height along a line of straight pieces, each stretched to its true length. */
function topOver(vaults: readonly Vault[], line: readonly PointAlong[]): Profile {
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
  const { name, from, to, run, arc, openTo, beside } = wall;
  const top = wall.top.map(({ along, height }) => ({ along: lengthOf(along), height: lengthOf(height) }));
  const cuts = [...openings.filter((one) => one.wall === name).map(openingCut), ...coverCuts(name, features)];
  const surface = surfaceOf(
    name,
    wallName(name),
    openTo === undefined ? wall.face : [],
    openTo === undefined ? cuts : [],
  );
  const open = { ...(openTo !== undefined && { openTo }), ...(beside && { beside }) };
  return { ...surface, from, to, run, ...(arc && { arc }), top, ...open };
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

/** The opening on its wall: x from the wall's left end, y up from the floor. */
export function openingPatch({
  at,
  sill,
  width,
  height,
}: Pick<OpeningMeasure, 'at' | 'sill' | 'width' | 'height'>): Patch {
  return rectangle(feet(at), feet(sill), feet(width), feet(height));
}
