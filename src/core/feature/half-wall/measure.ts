import {
  between,
  counterClockwise,
  cross,
  direction,
  distance,
  minus,
  pointInFeet,
  pointsOf,
  rectangle,
  type Ring,
  type Xy,
} from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { footprint } from '../place.js';
import { surfaceOf } from '../surface.js';
import type { HalfWall } from './read.js';

/** Both long faces, the ends that stand free and the cap; left and right as one walks the way it goes. */
export function measure(data: HalfWall, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { run, height, thickness } = data;
  const face = [rectangle(0, 0, feet(run), feet(height))];
  const { ring } = footprint(space, { ...data, width: thickness });
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
    runs: [{ id: `${feature.id}/cap`, name: 'Cap', length: run, pieces: [run] }],
    counts: [],
    footprint: pointsOf(counterClockwise(ring)),
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
function freeEnds(ring: Ring, { walls }: RoomSpace): readonly Xy[] {
  const [a, b, c, d] = ring as readonly [Xy, Xy, Xy, Xy];
  return [between(a, b, 1 / 2), between(c, d, 1 / 2)].filter(
    (end) =>
      !walls.some(({ from, to, openTo }) => openTo === undefined && touches(end, pointInFeet(from), pointInFeet(to))),
  );
}

/** Within a quarter of an inch of a wall is against it. */
const against = 0.25 / 12;

function touches(point: Xy, from: Xy, to: Xy): boolean {
  const ahead = direction(from, to);
  const off = minus(point, from);
  const along = off.x * ahead.x + off.y * ahead.y;
  return along > -against && along < distance(from, to) + against && Math.abs(cross(ahead, off)) < against;
}
