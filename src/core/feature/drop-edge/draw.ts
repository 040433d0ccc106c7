import type { Length } from '../../../base/units/index.js';
import type { FeatureMeasure } from '../../model/index.js';
import type { FaceMark, PlanMark } from '../mark.js';
import type { DropEdge } from './read.js';

export function plan(data: DropEdge, measure: FeatureMeasure): readonly PlanMark[] {
  const { wall, void: hole, side, drop } = data;
  const along = wall === undefined ? { void: hole ?? '', side: side ?? '' } : { wall };
  return [{ role: 'guard', along, ...stretch(data, measure), fall: drop }];
}

export function face(data: DropEdge, measure: FeatureMeasure): readonly FaceMark[] {
  return [{ role: 'guard', ...stretch(data, measure) }];
}

function stretch({ at }: DropEdge, { runs }: FeatureMeasure): { readonly from: Length; readonly to: Length } {
  return { from: at, to: (at + (runs[0]?.length ?? 0)) as Length };
}
