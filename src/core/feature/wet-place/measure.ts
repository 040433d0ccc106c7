import { pointInFeet, pointsOf, rectangle } from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import type { WetPlace } from './read.js';

/** Where it lies, and nothing taken off: tile goes on beneath a shower, and a wall behind a tub is somebody's work. */
export function measure(
  { x, y, width, depth }: WetPlace,
  { id, name }: FeatureRecord,
  space: Pick<RoomSpace, 'corner'>,
): Outcome<FeatureMeasure> {
  const corner = pointInFeet(space.corner);
  const { outline } = rectangle(corner.x + feet(x), corner.y + feet(y), feet(width), feet(depth));
  const value: FeatureMeasure = {
    kind: 'wet-place',
    id,
    name,
    faces: [],
    runs: [],
    counts: [],
    outline: pointsOf(outline),
    covers: [],
    facts: [{ label: 'Width by depth', text: `${printLength(width)} × ${printLength(depth)}` }],
  };
  return { value, problems: [] };
}
