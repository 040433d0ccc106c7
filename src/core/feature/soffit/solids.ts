import { ringInFeet } from '../../../base/geometry/index.js';
import { feet } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import { levelFace, sidesOf, type SolidFace } from '../solid.js';
import type { Soffit } from './read.js';

/** Its bottom and its upright sides; those that stand against a wall lie in it and are not seen. */
export function solids(_data: Soffit, { id, overhead, covers }: FeatureMeasure): readonly SolidFace[] {
  const [cover] = covers;
  if (!overhead || cover?.sill === undefined) return [];
  const [ring, bottom, top] = [ringInFeet(overhead), feet(cover.sill), feet(cover.height)];
  return [
    levelFace(ring, bottom, 'down', [`${id}/bottom`, id]),
    ...sidesOf(ring, bottom, top, () => [`${id}/front`, id]),
  ];
}
