import { along, faceThrough, placeOn } from '../../../base/geometry/index.js';
import { feet } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import { planeBefore, type SolidFace, type SolidSpace } from '../solid.js';
import type { Niche } from './read.js';

/** Back, sill, head and sides, let into the wall. */
export function solids(data: Niche, { id }: FeatureMeasure, space: SolidSpace): readonly SolidFace[] {
  const frame = space.wall(data.wall);
  if (!frame) return [];
  const [at, width, sill, height, depth] = [data.at, data.width, data.sill, data.height, data.depth].map(feet) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const wall = planeBefore(frame, { x: at, y: 0 }, { x: at + width, y: 0 }, sill);
  const corner = (x: number, y: number, back: number) => along(placeOn(wall, { x, y }), wall.faces, -back);
  const ring = (back: number) =>
    [corner(0, 0, back), corner(width, 0, back), corner(width, height, back), corner(0, height, back)] as const;
  const [front, back] = [ring(0), ring(depth)];
  const sides = [
    faceThrough([front[0], front[1], back[1], back[0]]),
    faceThrough([back[3], back[2], front[2], front[3]]),
    faceThrough([front[0], back[0], back[3], front[3]]),
    faceThrough([back[1], front[1], front[2], back[2]]),
  ];
  const behind = faceThrough(back);
  return [
    ...(behind ? [{ ...behind, places: [`${id}/back`, id] }] : []),
    ...sides.flatMap((side) => (side ? [{ ...side, places: [`${id}/sides`, id] }] : [])),
  ];
}
