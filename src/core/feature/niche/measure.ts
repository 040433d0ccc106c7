import { rectangle } from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength, type Length } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { ceilingProblems, sillProblems, wallProblems } from '../place.js';
import { surfaceOf } from '../surface.js';
import type { Niche } from './read.js';

/** The back, and the four sides unfolded into one strip; its opening comes off the wall. */
export function measure(data: Niche, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { wall, at, width, height, sill, depth } = data;
  const head = (sill + height) as Length;
  const problems = [...wallProblems(feature, space, data)];
  if (problems.length === 0) {
    problems.push(
      ...ceilingProblems(feature, space, { wall, at, width, height: head }),
      ...sillProblems(feature, space, { wall, at, width, sill }),
    );
  }
  if (problems.length > 0) return { problems };
  const [w, h] = [feet(width), feet(height)];
  const value: FeatureMeasure = {
    kind: 'niche',
    id: feature.id,
    name: feature.name,
    faces: [
      surfaceOf(`${feature.id}/back`, 'Back', [rectangle(0, 0, w, h)]),
      surfaceOf(`${feature.id}/sides`, 'Sides, head and sill', [rectangle(0, 0, 2 * (w + h), feet(depth))]),
    ],
    runs: [],
    counts: [],
    covers: [{ wall, from: at, to: (at + width) as Length, sill, height: head }],
    facts: [
      { label: 'Opening', text: `${printLength(width)} × ${printLength(height)}` },
      { label: 'Depth', text: printLength(depth) },
      { label: 'Sill above the floor', text: printLength(sill) },
    ],
  };
  return { value, problems };
}
