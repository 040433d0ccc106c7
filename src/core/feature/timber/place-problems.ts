import { bounds, heightOn, nearTape, ringInFeet } from '../../../base/geometry/index.js';
import { problemAt, type Problem } from '../../../base/problem/index.js';
import { counted, feet, fromFeet, printLength } from '../../../base/units/index.js';
import type { FeatureRecord } from '../../model/index.js';
import type { RoomSpace } from '../kind.js';
import { acrossAt, slopesAt } from './pieces.js';
import type { Timber, TimberPlace } from './read.js';

/** A place that says how high its pieces lie, as many stations as there are pieces, and none that is all beyond the room. Whether they fit into it is a
 *  caution's. */
export function placeProblems({ place, count }: Timber, feature: FeatureRecord, space: RoomSpace): readonly Problem[] {
  if (!place) return [];
  const height = heightProblem(place, feature, space);
  if (height) return [height];
  if (place.follows) return slopeProblems(place, count, feature, space);
  const spacing = spacingProblems(place, count, feature, space);
  return spacing.length > 0 ? spacing : beyondProblems(place, count, feature, space);
}

/** The last station is the furthest, since all that is measured here is 0 or more. */
function beyondProblems(
  { underside, ...place }: TimberPlace,
  stations: number,
  { name, path }: FeatureRecord,
  { origin, plan, ceiling }: RoomSpace,
): readonly Problem[] {
  const { west, east, south, north } = bounds(ringInFeet(plan));
  const isNorthSouth = place.run === 'north-south';
  const [deep, wide] = [north - south, east - west];
  const found = (key: keyof TimberPlace, message: string, fix: string): Problem =>
    problemAt(origin, [...path, key], 'feature-outside-room', message, { fix });
  const last = acrossAt(place, stations - 1);
  const [across, way, along] = isNorthSouth ? [wide, 'west to east', deep] : [deep, 'south to north', wide];
  const length = (value: number): string => printLength(fromFeet(value));
  const top = Math.max(
    ...ceiling.flatMap(({ plane, patch }) => patch.outline.map((corner) => heightOn(plane, corner))),
  );
  return [
    ...(last > across + nearTape
      ? [
          found(
            feet(place.at) > across ? 'at' : 'spacing',
            `${name} stands ${length(last)} out at station ${stations}, and the room is ${length(across)} from ${way}`,
            'check at, spacing and count: they are measured from the south-west corner of the room',
          ),
        ]
      : []),
    ...(feet(place.from) > along - nearTape
      ? [
          found(
            'from',
            `${name} begins ${length(feet(place.from))} out, and the room is ${length(along)} that way`,
            'from: is where the clear length begins, from the south-west corner of the room',
          ),
        ]
      : []),
    ...(underside !== undefined && feet(underside) > top - nearTape
      ? [
          found(
            'underside',
            `${name} lies ${printLength(underside)} up, and the ceiling is at most ${length(top)} high`,
            "underside: is measured from the room's floor",
          ),
        ]
      : []),
  ];
}

function heightProblem(
  { run, underside, follows }: TimberPlace,
  { name, path }: FeatureRecord,
  { origin }: RoomSpace,
): Problem | undefined {
  if (follows && run === 'upright') {
    const fix = 'write underside: with the height of its foot above the floor';
    return problemAt(origin, [...path, 'follows'], 'timber-height', `${name} is upright, so it lies under no slope`, {
      fix,
    });
  }
  if ((underside === undefined) !== (follows === undefined)) return undefined;
  const both = follows !== undefined;
  const message = both
    ? `${name} lies at a height of its own and right under the ceiling: one of the two`
    : `${name} is placed, but at no height`;
  const fix = both
    ? 'keep underside: for level pieces and posts, or follows: ceiling for rafters'
    : 'write underside: with its height above the floor, or follows: ceiling under a slope';
  return problemAt(origin, [...path, both ? 'underside' : 'run'], 'timber-height', message, { fix });
}

function spacingProblems(
  { spacing }: TimberPlace,
  stations: number,
  { name, path }: FeatureRecord,
  { origin }: RoomSpace,
): readonly Problem[] {
  if (spacing !== undefined || stations < 2) return [];
  const message = `${name} stands at more than one station, and how far apart they are is not said`;
  const fix = 'write spacing: from the middle of one to the middle of the next';
  return [problemAt(origin, [...path, 'at'], 'timber-stations', message, { fix })];
}

/** Stations are used up one by one, each by the slopes over its own line. */
function slopeProblems(
  place: TimberPlace,
  count: number,
  feature: FeatureRecord,
  space: RoomSpace,
): readonly Problem[] {
  const { name, path } = feature;
  const problem = (key: string, message: string, fix: string): readonly Problem[] => [
    problemAt(space.origin, [...path, key], 'timber-stations', message, { fix }),
  ];
  let pieces = 0;
  for (let station = 0; pieces < count; station++) {
    const here = slopesAt(place, station, space).length;
    if (station === 1 && place.spacing === undefined) return spacingProblems(place, 2, feature, space);
    if (here === 0) {
      const message = `${name} follows the ceiling, which has no slope along the line of station ${station + 1}`;
      return problem('follows', message, 'check run, at and spacing; under a level ceiling write underside:');
    }
    pieces += here;
    if (pieces > count) {
      const message = `${name} is ${counted(count, 'piece')}, which is no whole number of stations: the ceiling has ${counted(here, 'slope')} over station ${station + 1}`;
      return problem('count', message, `count: ${pieces} is one under each slope at each station`);
    }
  }
  return [];
}
