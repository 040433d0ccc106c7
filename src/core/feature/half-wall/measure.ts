import {
  between,
  counterClockwise,
  pointOf,
  pointsOf,
  rectangle,
  type Ring,
  type Xy,
} from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { floorUnder, standingAt, touchesWall } from '../place.js';
import { footprint } from '../wall-frame.js';
import { surfaceOf } from '../surface.js';
import type { HalfWall } from './read.js';

/** Both long faces, the ends that stand free and the cap; left and right as one walks the way it goes. It is as high over the floor that it stands on. */
export function measure(data: HalfWall, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { run, height, thickness } = data;
  const face = [rectangle(0, 0, feet(run), feet(height))];
  const { ring } = footprint(space, { ...data, width: thickness });
  const { value: floor, problems } = floorUnder(ring, feature, space);
  if (floor === undefined) return { problems };
  const [a, b, c, d] = ring as readonly [Xy, Xy, Xy, Xy];
  const middle = { from: pointOf(between(a, b, 1 / 2)), to: pointOf(between(c, d, 1 / 2)) };
  const ends = freeEnds(ring, space).map((_, index) =>
    rectangle(index * feet(thickness), 0, feet(thickness), feet(height)),
  );
  const value: FeatureMeasure = {
    kind: 'half-wall',
    id: feature.id,
    name: feature.name,
    faces: [
      surfaceOf(`${feature.id}/left`, 'Left face', face),
      surfaceOf(`${feature.id}/right`, 'Right face', face),
      ...(ends.length === 0 ? [] : [surfaceOf(`${feature.id}/ends`, ends.length === 1 ? 'Free end' : 'Ends', ends)]),
    ],
    runs: [{ id: `${feature.id}/cap`, name: 'Cap', length: run, pieces: [run], lines: [middle] }],
    counts: [],
    footprint: pointsOf(counterClockwise(ring)),
    ...standingAt(floor),
    covers: [],
    facts: [
      { label: 'Run', text: printLength(run) },
      { label: 'Height', text: printLength(height) },
      { label: 'Thickness', text: printLength(thickness) },
    ],
  };
  return { value, problems: [] };
}

/** Middles of the two ends that touch no wall. */
function freeEnds(ring: Ring, space: RoomSpace): readonly Xy[] {
  const [a, b, c, d] = ring as readonly [Xy, Xy, Xy, Xy];
  return [between(a, b, 1 / 2), between(c, d, 1 / 2)].filter((end) => !touchesWall(end, space));
}
