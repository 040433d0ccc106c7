import { problemAt, type Problem } from '../../../base/problem/index.js';
import { counted } from '../../../base/units/index.js';
import type { FeatureRecord } from '../../model/index.js';
import type { RoomSpace } from '../kind.js';
import { slopesAt } from './pieces.js';
import type { Timber, TimberPlace } from './read.js';

/** A place that says how high its pieces lie, and as many stations as there are pieces. Whether they fit into the room is a caution's. */
export function placeProblems({ place, count }: Timber, feature: FeatureRecord, space: RoomSpace): readonly Problem[] {
  if (!place) return [];
  const height = heightProblem(place, feature, space);
  if (height) return [height];
  return place.follows ? slopeProblems(place, count, feature, space) : spacingProblems(place, count, feature, space);
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
