import { bounds, lengthOf, patchFrom, pointOf, ringInFeet } from '../../base/geometry/index.js';
import { takeOff, type Cut } from '../feature/index.js';
import type { FeatureMeasure, Polygon, Room, RoomMeasure } from '../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import { printLength, type Area, type Length, type Volume } from '../../base/units/index.js';
import { facetsOf, heightsUnder, measureCeiling, spaceUnder } from './ceiling.js';
import { featuresOf } from './feature.js';
import { headProblems, levelsOf, measureFloor, overLevels } from './floor.js';
import { openingsOf } from './opening.js';
import { planOf, type Plan } from './plan.js';
import { risersOf, stepsOf } from './step.js';
import { vaultsOf } from './vault.js';
import { voidsOf } from './void.js';
import { measureWall, wallShapes } from './wall.js';

/**
 * Measures a room: plan, floor, ceiling, walls, openings, features, volume. A measure is absent when the plan or the ceiling
 * cannot be; an opening or feature that does not fit is left out and reported.
 */
export function measureRoom(room: Room, house: { readonly rooms: ReadonlyMap<string, Room> }): Outcome<RoomMeasure> {
  const { value: plan, problems: planProblems } = planOf(room);
  if (!plan) return { problems: planProblems };
  const { value: vaults, problems: ceilingProblems } = vaultsOf(room, plan);
  const { value: voids, problems: voidProblems } = voidsOf(room, plan);
  const { value: levels, problems: floorProblems } = levelsOf(room, plan);
  const problems: Problem[] = [...ceilingProblems, ...voidProblems, ...floorProblems];
  if (!vaults || !voids || !levels) return { problems };
  const leaning = new Set(plan.sides.flatMap(({ plane }) => plane ?? []));
  const overhead = facetsOf(vaults, takeOff([plan.patch], voids.through).rest);
  const under = headProblems(overhead, levels, room);
  if (under.length > 0) return { problems: [...problems, ...under] };
  const space = spaceUnder(overLevels(overhead, levels));
  const ceiling = overhead.filter(({ plane }) => !leaning.has(plane));
  const heights = leaning.size === 0 || ceiling.length === 0 ? space : heightsUnder(overLevels(ceiling, levels));
  const isSame = voids.through.length === voids.cuts.length;
  const overFloor = isSame ? space : spaceUnder(overLevels(facetsOf(vaults, voids.floor), levels));
  if (!Number.isFinite(overFloor.lowest)) {
    const message = `${room.name} has no floor left: its voids take all of it`;
    const whole = problemAt(room.origin, ['voids'], 'void-takes-room', message, { fix: 'make the voids smaller' });
    return { problems: [...problems, whole] };
  }

  const shapes = wallShapes(plan, { vaults, levels, overhead });
  const { value: openings = [], problems: openingProblems } = openingsOf(room, house, shapes);
  const { value: features = [], problems: featureProblems } = featuresOf(room, plan, {
    vaults,
    walls: shapes,
    levels,
    voids: voids.measured,
    ceiling,
  });
  problems.push(...openingProblems, ...featureProblems, ...sectionProblems(room, plan));

  const standing = features.flatMap((feature) => featureCut(feature, feature.footprint));
  const high = features.flatMap((feature) => [...featureCut(feature, feature.overhead), ...skyCut(feature)]);
  const walls = shapes.map((shape) => measureWall(shape, openings, features));
  const steps = stepsOf(vaults);
  // Over a hole there is no floor to step up to.
  const risers = risersOf(levels.map((level) => ({ ...level, patches: takeOff(level.patches, voids.cuts).rest })));
  const value: RoomMeasure = {
    room: room.slug,
    plan: plan.outline.map(pointOf),
    voids: voids.measured,
    perimeter: total(walls.map(({ run }) => run)),
    wallRun: total(walls.filter(({ openTo }) => openTo === undefined).map(({ run }) => run)),
    floor: measureFloor(levels, plan.patch, [...voids.cuts, ...standing]),
    ceiling: measureCeiling(vaults, [plan.patch], [...voids.through, ...high], leaning),
    ...(steps.length > 0 && { steps }),
    ...(risers.length > 0 && { risers }),
    walls,
    openings,
    features,
    volume: space.volume as Volume,
    lowest: lengthOf(heights.lowest),
    highest: lengthOf(heights.highest),
    headroom: { fiveFeet: overFloor.areaFrom(5) as Area, sevenFeet: overFloor.areaFrom(7) as Area },
  };
  return { value, problems };
}

/** A section cuts the room: it lies between two opposite sides of its plan's bounding box. */
function sectionProblems({ sections = [], origin }: Room, { outline }: Plan): readonly Problem[] {
  const { west, east, south, north } = bounds(outline);
  return sections.flatMap(({ name, at, looks }, index) => {
    const isAcross = looks === 'north' || looks === 'south';
    const extent = lengthOf(isAcross ? north - south : east - west);
    if (at > 0 && at < extent) return [];
    const message = `section '${name}' lies at ${printLength(at)}, and the room is ${printLength(extent)} from ${isAcross ? 'south to north' : 'west to east'}`;
    const fix = 'put the cut between the two walls';
    return [problemAt(origin, ['sections', index, 'at'], 'section-outside-room', message, { fix })];
  });
}

function featureCut({ id, name, kind }: FeatureMeasure, outline: Polygon | undefined): readonly Cut[] {
  return outline ? [{ what: name, of: id, kind: 'feature', by: kind, patch: patchFrom(ringInFeet(outline)) }] : [];
}

/** Nothing lies behind a hole: it is deducted as openings are. */
function skyCut({ id, name, opensCeiling }: FeatureMeasure): readonly Cut[] {
  return opensCeiling ? [{ what: name, of: id, kind: 'opening', patch: patchFrom(ringInFeet(opensCeiling)) }] : [];
}

function total(lengths: readonly Length[]): Length {
  return lengths.reduce((sum, length) => sum + length, 0) as Length;
}
