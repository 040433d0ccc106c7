import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { printLength } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { wallProblems } from '../place.js';
import type { DropEdge } from './read.js';

/** One straight run of rail, and the fall below it. */
export function measure(
  { wall, at, run, drop }: DropEdge,
  feature: FeatureRecord,
  space: RoomSpace,
): Outcome<FeatureMeasure> {
  const problems = wallProblems(feature, space, { wall, at, width: run, key: 'run' });
  if (problems.length > 0) return { problems };
  const value: FeatureMeasure = {
    kind: 'drop-edge',
    id: feature.id,
    name: feature.name,
    faces: [],
    runs: [{ id: `${feature.id}/rail`, name: 'Rail', length: run, pieces: [run] }],
    counts: [],
    covers: [],
    drop,
    facts: [
      { label: 'Run', text: printLength(run) },
      { label: 'Drop', text: printLength(drop) },
    ],
  };
  return { value, problems };
}
