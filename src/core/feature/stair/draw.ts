import type { FeatureMeasure } from '../../model/index.js';
import type { PlanMark } from '../mark.js';
import { flightOf } from './measure.js';
import type { Stair } from './read.js';

/** The footprint starts with the two corners at the foot. */
export function plan(data: Stair, { footprint }: FeatureMeasure): readonly PlanMark[] {
  if (!footprint) return [];
  return [{ role: 'flight', outline: footprint, treads: flightOf(data).treads, risers: data.risers }];
}
