import { along, spaceDistance, stickFaces, unitOf, upward, type Xyz } from '../../../base/geometry/index.js';
import { feet } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import type { SolidFace, SolidSpace } from '../solid.js';
import { timberPieces, type TimberPiece } from './pieces.js';
import type { Timber } from './read.js';

/** Each piece with its four sides and its ends; none where the record does not say where they are. */
export function solids(data: Timber, { id }: FeatureMeasure, { room }: SolidSpace): readonly SolidFace[] {
  return timberPieces(data, room).flatMap((piece) => barFaces(piece, data, [id]));
}

function barFaces(
  { from, to }: TimberPiece,
  { width, depth }: Timber,
  places: readonly string[],
): readonly SolidFace[] {
  const [start, end] = [spot(from), spot(to)];
  const ahead = unitOf(along(end, start, -1));
  const level = Math.hypot(ahead.x, ahead.y);
  const isUpright = level < 1e-6;
  // A post stands in its frame, which runs east-west; what lies is plumb, and so are its ends.
  const side: Xyz = isUpright ? { x: 0, y: 1, z: 0 } : { x: -ahead.y / level, y: ahead.x / level, z: 0 };
  const up: Xyz = isUpright ? { x: 1, y: 0, z: 0 } : upward;
  const half = feet(width) / 2;
  const rise = feet(depth) / 2 / (isUpright ? 1 : level);
  const corner = (place: Xyz, across: number, high: number): Xyz =>
    along(along(place, side, across * half), up, high * rise);
  const section = (place: Xyz) => [
    corner(place, 1, -1),
    corner(place, -1, -1),
    corner(place, -1, 1),
    corner(place, 1, 1),
  ];
  return spaceDistance(start, end) < 1e-6 ? [] : stickFaces(section, start, end).map((face) => ({ ...face, places }));
}

function spot([x, y, z]: TimberPiece['from']): Xyz {
  return { x, y, z };
}
