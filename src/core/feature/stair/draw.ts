import type { Length } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import type { PlanMark } from '../mark.js';
import { flightOf } from './measure.js';
import type { Stair } from './read.js';

/** The footprint starts with the two corners at the foot. */
export function plan(data: Stair, { footprint, floor = 0 as Length }: FeatureMeasure): readonly PlanMark[] {
  if (!footprint) return [];
  const { treads, riser } = flightOf(data);
  return [{ role: 'flight', outline: footprint, treads, risers: data.risers, riser, foot: floor }];
}
