import {
  areaOf,
  intersect,
  patchFrom,
  pointInFeet,
  pointOf,
  ringInFeet,
  slackAround,
} from '../../base/geometry/index.js';
import { featureKinds, type RoomSpace } from '../feature/index.js';
import type { FeatureMeasure, FeatureRecord, FloorVoid, Room } from '../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import type { Facet } from './ceiling.js';
import { outsideWords } from './fit.js';
import type { Level } from './floor.js';
import type { Plan } from './plan.js';
import { printArea } from './tape.js';
import { topAlong, type Vault } from './vault.js';
import type { WallShape } from './wall.js';

/** Measures each feature by its kind and checks that it stands in the room. */
export function featuresOf(room: Room, plan: Plan, shell: RoomShell): Outcome<readonly FeatureMeasure[]> {
  const space = roomSpace(room, plan, shell);
  const problems: Problem[] = [];
  const value: FeatureMeasure[] = [];
  for (const feature of room.features) {
    const kind = featureKinds.find((candidate) => candidate.kind === feature.kind);
    const measured = kind?.measure(feature.data, feature, space);
    if (!measured) continue;
    problems.push(...measured.problems);
    if (!measured.value) continue;
    const outside = outsideProblems(measured.value, feature, room, plan);
    problems.push(...outside, ...meetingProblems(measured.value, value, feature, room));
    value.push({ ...measured.value, data: feature.data });
  }
  return { value, problems };
}

/** What encloses a room, and the holes in its floor. */
interface RoomShell {
  readonly vaults: readonly Vault[];
  readonly walls: readonly WallShape[];
  readonly levels: readonly Level[];
  readonly voids: readonly FloorVoid[];
  /** Plane by plane, without holes that it has in common with the floor. */
  readonly ceiling: readonly Facet[];
}

/** What features may know of a room. */
function roomSpace(room: Room, plan: Plan, { vaults, walls, levels, voids, ceiling }: RoomShell): RoomSpace {
  return {
    plan: plan.outline.map(pointOf),
    corner: pointOf(plan.origin),
    walls: walls.map(({ name, from, to, run, arc, lean, foot, openTo }) => ({
      name,
      from,
      to,
      run,
      ...(arc && { arc }),
      ...(lean && { lean }),
      ...(foot && { foot }),
      ...(openTo ? { openTo } : {}),
    })),
    floor: levels,
    voids,
    topAlong: (from, to) => topAlong(vaults, pointInFeet(from), pointInFeet(to)),
    ceiling,
    origin: room.origin,
  };
}

/** A hole in the ceiling is where nothing else reaches it. */
function meetingProblems(
  { name, opensCeiling, overhead }: FeatureMeasure,
  earlier: readonly FeatureMeasure[],
  feature: FeatureRecord,
  room: Room,
): readonly Problem[] {
  const own = opensCeiling ?? overhead;
  if (!own) return [];
  const patch = patchFrom(ringInFeet(own));
  return earlier.flatMap((other) => {
    const taken = opensCeiling ? (other.opensCeiling ?? other.overhead) : other.opensCeiling;
    const shared = taken ? areaOf(intersect([patchFrom(ringInFeet(taken))], patch)) : 0;
    if (shared <= slackAround(patch)) return [];
    const message = `${name} and ${other.name} take the same ${printArea(shared)} of the ceiling, in plan`;
    const at = [...feature.path, opensCeiling ? 'x' : 'at'];
    return [problemAt(room.origin, at, 'skylight-overlap', message, { fix: 'move one of them' })];
  });
}

function outsideProblems(
  { name, footprint, overhead, outline }: FeatureMeasure,
  feature: FeatureRecord,
  room: Room,
  plan: Plan,
): readonly Problem[] {
  const place = footprint ?? outline ?? overhead;
  if (!place) return [];
  const patch = patchFrom(ringInFeet(place));
  const message = outsideWords(patch, `that ${name} ${place === overhead ? 'hangs over' : 'stands on'}`, plan);
  if (message === undefined) return [];
  const fix = 'check its place and sizes against the room';
  return [problemAt(room.origin, feature.path, 'feature-outside-room', message, { fix })];
}
