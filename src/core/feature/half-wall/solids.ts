import { pointOf } from '../../../base/geometry/index.js';
import { feet, type Length } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import { footprint } from '../wall-frame.js';
import { levelFace, sidesOf, type SolidFace, type SolidSpace } from '../solid.js';
import type { HalfWall } from './read.js';

/** Both faces, its ends and its cap. */
export function solids(data: HalfWall, { id, floor }: FeatureMeasure, { corner }: SolidSpace): readonly SolidFace[] {
  const foot = feet(floor ?? (0 as Length));
  const top = foot + feet(data.height);
  const { ring } = footprint({ corner: pointOf(corner) }, { ...data, width: data.thickness });
  // From its start: across it, along its right face, across its end, back along its left face.
  const names = ['ends', 'right', 'ends', 'left'];
  return [
    ...sidesOf(ring, foot, top, (edge) => [`${id}/${names[edge] ?? 'ends'}`, id]),
    levelFace(ring, top, 'up', [`${id}/cap`, id]),
  ];
}
