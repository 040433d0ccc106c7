import { distance, pointInFeet } from '../../../base/geometry/index.js';
import { stairOf } from '../../feature/index.js';
import type { Category, FeatureMeasure, Point, Room, RoomMeasure, Run } from '../../model/index.js';
import { feet, fromInches } from '../../../base/units/index.js';
import { resolvePlaces } from '../resolve.js';
import { arrivalOf, sideOfRail, type Landing } from './arrival.js';
import type { RailJoints, SharedEnd } from './rail.js';
import { railOf, runKey } from './run.js';

/** A run with a railing on it. */
interface Railed {
  readonly key: string;
  readonly room: string;
  readonly feature: FeatureMeasure;
  readonly run: Run;
}

/** An end of a piece, in the coordinates of the room on whose floor it stands. */
interface End extends Pick<SharedEnd, 'piece' | 'side' | 'end'> {
  readonly railed: Railed;
  readonly room: string;
  readonly at: Point;
}

/** Ends nearer than this are one: half the thickness of a half wall, and less than two posts need. Common practice, no source. */
const near = feet(fromInches(3));

/** Finds where runs of railing end together. The post there is the level run's that is recorded first; a stair's only where no level
 *  run ends. */
export function railJoints(
  rooms: readonly Room[],
  measures: ReadonlyMap<string, RoomMeasure>,
  categories: readonly Category[],
): RailJoints {
  const railings = new Set(categories.filter(({ measure }) => measure.by === 'railing').map(({ slug }) => slug));
  const landings = rooms.flatMap(({ slug, level }): Landing[] => {
    const measure = measures.get(slug);
    return measure ? [{ room: slug, level, measure }] : [];
  });
  const railed = rooms.flatMap((room) => railedIn(room, measures.get(room.slug), railings));
  const unique = [...new Map(railed.map((each) => [each.key, each])).values()];
  const [level, sloped] = [unique.filter(({ run }) => !run.slope), unique.filter(({ run }) => run.slope)];
  return sharedBy([...level, ...sloped].flatMap((each) => endsOf(each, landings)));
}

function railedIn(room: Room, measure: RoomMeasure | undefined, railings: ReadonlySet<string>): readonly Railed[] {
  if (!measure) return [];
  return room.selections
    .filter(({ category, chosen }) => railings.has(category) && chosen !== 'none')
    .flatMap((selection) => resolvePlaces(selection, measure).places)
    .flatMap((place): Railed[] => {
      const run = railOf(place);
      const feature = measure.features.find(({ runs }) => runs.some(({ id }) => id === run?.id));
      return run && feature ? [{ key: runKey(room.slug, run), room: room.slug, feature, run }] : [];
    });
}

function endsOf(railed: Railed, landings: readonly Landing[]): readonly End[] {
  const { feature, run, room } = railed;
  const stair = stairOf(feature);
  const below = landings.find((landing) => landing.room === room);
  const arrival = stair && below && arrivalOf(stair, below, landings);
  return (run.lines ?? []).flatMap(({ from, to }, piece): End[] => {
    const [first, last] = endWords(feature);
    const foot: End = { railed, piece, side: 'from', end: first, room, at: from };
    if (!stair) return [foot, { railed, piece, side: 'to', end: last, room, at: to }];
    const side = sideOfRail(stair, feature, to);
    if (!arrival || !side) return [foot];
    return [foot, { railed, piece, side: 'to', end: last, room: arrival.room, at: arrival[side] }];
  });
}

function endWords({ kind }: FeatureMeasure): readonly [string, string] {
  if (kind === 'stair') return ['foot', 'top'];
  return kind === 'half-wall' ? ['near end', 'far end'] : ['left end', 'right end'];
}

/** The first end at a point has the post. */
function sharedBy(ends: readonly End[]): RailJoints {
  const corners: (readonly [End, ...End[]])[] = [];
  for (const end of ends) {
    const index = corners.findIndex(([owner]) => isSame(owner, end));
    const corner = corners[index];
    if (corner) corners[index] = [...corner, end];
    else corners.push([end]);
  }
  const shared = new Map<string, SharedEnd[]>();
  const add = ({ railed: { key }, piece, side, end }: End, other: End, isOwn: boolean): void => {
    const words = `${other.end} of ${other.railed.feature.name}`;
    shared.set(key, [...(shared.get(key) ?? []), { piece, side, end, other: words, isOwn }]);
  };
  for (const [owner, ...others] of corners) {
    for (const other of others) {
      add(owner, other, true);
      add(other, owner, false);
    }
  }
  return shared;
}

function isSame(a: End, b: End): boolean {
  return a.room === b.room && distance(pointInFeet(a.at), pointInFeet(b.at)) <= near;
}
