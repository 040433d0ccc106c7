import { counterClockwise, pointsOf, rectangle } from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength, type Length } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { ceilingProblems, floorUnder, standingAt, wallProblems } from '../place.js';
import { wallFrame } from '../wall-frame.js';
import { surfaceOf } from '../surface.js';
import type { BuiltIn } from './read.js';

/** Front and top edge, from the floor that it stands on; it hides its part of the wall and of the floor. */
export function measure(data: BuiltIn, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { wall, at, width, depth, height } = data;
  const problems = [...wallProblems(feature, space, data)];
  const frame = wallFrame(space, wall);
  if (!frame || problems.length > 0) return { problems };
  const plan = rectangle(feet(at), 0, feet(width), feet(depth)).outline.map(({ x, y }) => frame.place(x, y));
  const { value: floor, problems: floorProblems } = floorUnder(plan, feature, space);
  if (floor === undefined) return { problems: floorProblems };
  const top = (floor + height) as Length;
  problems.push(...ceilingProblems(feature, space, { wall, at, width, height: top }));
  if (problems.length > 0) return { problems };
  const value: FeatureMeasure = {
    kind: 'built-in',
    id: feature.id,
    name: feature.name,
    faces: [surfaceOf(`${feature.id}/front`, 'Front', [rectangle(0, 0, feet(width), feet(height))])],
    runs: [{ id: `${feature.id}/top`, name: 'Top', length: width, pieces: [width] }],
    counts: [],
    footprint: pointsOf(counterClockwise(plan)),
    ...standingAt(floor),
    covers: [{ wall, from: at, to: (at + width) as Length, ...(floor !== 0 && { sill: floor }), height: top }],
    facts: [
      { label: 'Width by depth', text: `${printLength(width)} × ${printLength(depth)}` },
      { label: 'Height', text: printLength(height) },
    ],
  };
  return { value, problems };
}
