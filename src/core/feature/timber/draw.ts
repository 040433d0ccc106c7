import type { FeatureMeasure } from '../../model/index.js';
import type { PlanMark } from '../mark.js';
import type { Timber } from './read.js';

export function plan({ count, length, width }: Timber, { runs }: FeatureMeasure): readonly PlanMark[] {
  const lines = runs[0]?.lines;
  return [{ role: 'overhead', count, length, width, ...(lines && { lines }) }];
}
