import type { FeatureMeasure } from '../../model/index.js';
import type { PlanMark } from '../mark.js';
import type { WetPlace } from './read.js';

export function plan(_data: WetPlace, { outline }: FeatureMeasure): readonly PlanMark[] {
  return outline ? [{ role: 'body', outline }] : [];
}
