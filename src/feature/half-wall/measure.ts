import { counterClockwise, pointsOf, rectangle } from '../../geometry/index.js';
import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../problem/index.js';
import { feet, printLength } from '../../units/index.js';
import type { RoomSpace } from '../kind.js';
import { footprint, sizeProblems } from '../place.js';
import { surfaceOf } from '../surface.js';
import type { HalfWall } from './read.js';

/** Both long faces and the cap; left and right as one walks the way it goes. */
export function measure(data: HalfWall, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { run, height, thickness } = data;
  const problems = sizeProblems(feature, space, { run, height, thickness });
  if (problems.length > 0) return { problems };
  const face = [rectangle(0, 0, feet(run), feet(height))];
  const value: FeatureMeasure = {
    kind: 'half-wall',
    id: feature.id,
    name: feature.name,
    faces: [surfaceOf(`${feature.id}/left`, 'Left face', face), surfaceOf(`${feature.id}/right`, 'Right face', face)],
    runs: [{ id: `${feature.id}/cap`, name: 'Cap', length: run, pieces: [run] }],
    counts: [],
    footprint: pointsOf(counterClockwise(footprint(space, { ...data, width: thickness }).ring)),
    covers: [],
    facts: [
      { label: 'Run', text: printLength(run) },
      { label: 'Height', text: printLength(height) },
      { label: 'Thickness', text: printLength(thickness) },
    ],
  };
  return { value, problems };
}
