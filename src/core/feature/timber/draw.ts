import type { PlanMark } from '../mark.js';
import type { Timber } from './read.js';

export function plan({ count, length, width }: Timber): readonly PlanMark[] {
  return [{ role: 'overhead', count, length, width }];
}
