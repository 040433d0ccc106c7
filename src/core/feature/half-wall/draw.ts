import type { FeatureMeasure } from '../../model/index.js';
import type { PlanMark } from '../mark.js';
import type { HalfWall } from './read.js';

export function plan(_data: HalfWall, { footprint }: FeatureMeasure): readonly PlanMark[] {
  return footprint ? [{ role: 'low-wall', outline: footprint }] : [];
}
