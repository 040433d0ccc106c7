import type { Length } from '../../../base/units/index.js';
import type { FaceMark, PlanMark } from '../mark.js';
import type { DropEdge } from './read.js';

export function plan({ wall, at, run, drop }: DropEdge): readonly PlanMark[] {
  return [{ role: 'guard', wall, from: at, to: (at + run) as Length, fall: drop }];
}

export function face({ at, run }: DropEdge): readonly FaceMark[] {
  return [{ role: 'guard', from: at, to: (at + run) as Length }];
}
