import { ringInFeet } from '../../../base/geometry/index.js';
import { feet, type Length } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import { standing, type SolidFace } from '../solid.js';
import type { BuiltIn } from './read.js';

export function solids({ height }: BuiltIn, { id, floor, footprint }: FeatureMeasure): readonly SolidFace[] {
  const foot = feet(floor ?? (0 as Length));
  return footprint ? standing(ringInFeet(footprint), foot, foot + feet(height), [`${id}/front`, id]) : [];
}
