import { areaOf, intersect, patchFrom, patchInFeet, regionOf, type Patch } from '../../base/geometry/index.js';
import { feet, type Area } from '../../base/units/index.js';
import {
  wallFoot,
  type Deduction,
  type OpeningMeasure,
  type Region,
  type Surface,
  type WallMeasure,
} from '../model/index.js';

/** A wall's whole face in its own plane, in feet, before anything is taken off. */
export function wallShape(wall: WallMeasure): Patch {
  const line = (points: WallMeasure['top']) => points.map(({ along, height }) => ({ x: feet(along), y: feet(height) }));
  return patchFrom([...line(wallFoot(wall)), ...line(wall.top).toReversed()]);
}

/** As much of a wall's surface as lies within some shapes in its plane, with the openings that belong to this part. */
export function wallWithin(
  wall: WallMeasure,
  patches: readonly Patch[],
  openings: readonly Pick<OpeningMeasure, 'mark'>[],
): Surface {
  const clip = (region: Region): readonly Patch[] =>
    patches.flatMap((patch) => intersect([patchInFeet(region)], patch));
  const deductions = wall.deductions.flatMap((deduction): readonly Deduction[] => {
    if (deduction.kind === 'opening') return openings.some(({ mark }) => mark === deduction.of) ? [deduction] : [];
    const { hidden } = deduction;
    if (!hidden) return [];
    const pieces = hidden.pieces.flatMap(({ region }) => clip(region).map((patch) => ({ region: regionOf(patch) })));
    const area = areaOf(pieces.map(({ region }) => patchInFeet(region)));
    return area > 0 ? [{ ...deduction, area: area as Area, hidden: { by: hidden.by, pieces } }] : [];
  });
  const gross = areaOf(patches);
  const net = deductions.reduce((sum, { area }) => sum - area, gross);
  const regions = wall.regions.flatMap(clip).map(regionOf);
  return { id: wall.id, name: wall.name, gross: gross as Area, deductions, net: Math.max(0, net) as Area, regions };
}
