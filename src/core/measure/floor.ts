import {
  bounds,
  direction,
  edges,
  findCrossing,
  intersect,
  lengthOf,
  minus,
  nearFeet,
  patchArea,
  patchFrom,
  planeFrom,
  rectangle,
  ringInFeet,
  sharedStretch,
  type Patch,
  type Plane,
  type Xy,
  slackAround,
} from '../../base/geometry/index.js';
import { surfaceOf, takeOff, type Cut } from '../feature/index.js';
import type { FloorMeasure, FloorPart, Room } from '../model/index.js';
import { problemAt, type Outcome, type Path, type Problem } from '../../base/problem/index.js';
import { feet, printLength, type Length } from '../../base/units/index.js';
import { heightsUnder, surfaceOfFacets, type Facet } from './ceiling.js';
import type { Plan } from './plan.js';
import { outsideWords, overlappingParts } from './fit.js';
import { crossingWords } from './tape.js';

/** A part of the floor, and what it covers of the plan. Heights are above the rest of the floor, which is the last of the levels. */
export interface Level {
  readonly name: string;
  readonly height: Length;
  readonly plane: Plane;
  readonly patches: readonly Patch[];
}

/** The parts of a room's floor and the rest of it: one level where all of it is level. */
export function levelsOf(room: Room, plan: Plan): Outcome<readonly Level[]> {
  const parts = room.floor ?? [];
  const crossings = parts.flatMap((part) => crossingProblems(part, room));
  if (crossings.length > 0) return { problems: crossings };
  const levels = parts.map((part) => levelOf(part, plan));
  const problems = [
    ...parts.flatMap((part) => outsideProblems(part, room, plan)),
    ...overlapProblems(levels, room),
    ...levels.flatMap((level, index) => leanProblems(level, parts[index]?.path ?? [], room, plan)),
  ];
  if (problems.length > 0) return { problems };
  const cuts = levels.flatMap(({ patches }) => patches.map((patch) => ({ patch })));
  // A strip that no tape tells, as between a part and the wall that it was to reach, is no floor with a riser along it.
  const rest = takeOff([plan.patch], cuts).rest.filter((patch) => patchArea(patch) > slackAround(patch));
  const main = { name: 'Floor', height: 0 as Length, plane: { a: 0, b: 0, c: 0 }, patches: rest };
  return { value: [...levels, ...(rest.length > 0 ? [main] : [])], problems };
}

function levelOf({ name, height, over, ramp }: FloorPart, plan: Plan): Level {
  const patch = patchFrom(ringInFeet(over));
  const level = { name, height, patches: intersect([plan.patch], patch) };
  if (!ramp) return { ...level, plane: { a: 0, b: 0, c: feet(height) } };
  const { low, pitch } = ramp;
  const reach = ({ x, y }: { readonly x: number; readonly y: number }): number => low.x * x + low.y * y;
  const foot = patch.outline.reduce((best, point) => (reach(point) > reach(best) ? point : best));
  return { ...level, plane: planeFrom(foot, feet(height), { x: -low.x, y: -low.y }, pitch.rise / pitch.run) };
}

/** True areas, level by level; what holes and what stands on it take off. A level floor is one surface. */
export function measureFloor(levels: readonly Level[], whole: Patch, cuts: readonly Cut[]): FloorMeasure {
  const [only, ...more] = levels;
  if (more.length === 0 && only && isGround(only)) return surfaceOf('floor', 'Floor', [whole], cuts);
  const cut = levels.map((level) => ({ level, ...takeOff(level.patches, cuts) }));
  const pieces = ({ name, plane }: Level, patches: readonly Patch[] = []): readonly Facet[] =>
    patches.map((patch) => ({ name, plane, patch }));
  const { surface, facets } = surfaceOfFacets(
    { id: 'floor', name: 'Floor' },
    cut.flatMap(({ level, rest }) => pieces(level, rest)),
    cuts,
    cuts.map((_, index) => cut.flatMap(({ level, taken }) => pieces(level, taken[index]))),
  );
  const heights = cut.flatMap(({ level, rest }) => rest.map(() => level.height));
  return { ...surface, levels: facets.map((facet, index) => ({ ...facet, height: heights[index] ?? (0 as Length) })) };
}

/** The ceiling with its heights above the floor that is under it. */
export function overLevels(list: readonly Facet[], levels: readonly Level[]): readonly Facet[] {
  if (levels.every(isGround)) return list;
  return list.flatMap(({ name, plane, patch }) =>
    levels.flatMap(({ plane: floor, patches }) => {
      const above = { a: plane.a - floor.a, b: plane.b - floor.b, c: plane.c - floor.c };
      return patches.flatMap((one) => intersect([patch], one)).map((piece) => ({ name, plane: above, patch: piece }));
    }),
  );
}

/** Level, and no higher or lower than what heights are measured from. */
export function isGround({ plane: { a, b, c } }: Level): boolean {
  return a === 0 && b === 0 && c === 0;
}

function crossingProblems({ over, name, path }: FloorPart, { origin }: Room): readonly Problem[] {
  const ring = ringInFeet(over);
  const crossing = findCrossing(ring);
  if (!crossing) return [];
  const message = `the outline of floor part '${name}' crosses itself: ${crossingWords(ring, crossing, bounds(ring))}`;
  const fix = 'write its corners in order, all the way round';
  return [problemAt(origin, [...path, 'over'], 'floor-part-crosses', message, { fix })];
}

function outsideProblems({ over, name, path }: FloorPart, { origin }: Room, plan: Plan): readonly Problem[] {
  const patch = patchFrom(ringInFeet(over));
  // A part is written with straight sides: it may reach past an arc, which ends it.
  const pastArcs = plan.sides.flatMap(({ bow, line }) => (bow ? [boxAround(line)] : []));
  const message = outsideWords(patch, `of floor part '${name}'`, plan, pastArcs);
  if (message === undefined) return [];
  const fix = "x and y are from the south-west corner of the room's bounding box";
  return [problemAt(origin, [...path, 'over'], 'floor-part-outside', message, { fix })];
}

/** The box along a line's ends that its points just fill. */
function boxAround(line: readonly Xy[]): Patch {
  const [from, to] = [line[0], line.at(-1)] as [Xy, Xy];
  const ahead = direction(from, to);
  const turned = line.map((point) => {
    const { x, y } = minus(point, from);
    return { x: x * ahead.x + y * ahead.y, y: y * ahead.x - x * ahead.y };
  });
  const { west, east, south, north } = bounds(turned);
  const outline = rectangle(west, south, east - west, north - south).outline.map(({ x, y }) => ({
    x: from.x + x * ahead.x - y * ahead.y,
    y: from.y + x * ahead.y + y * ahead.x,
  }));
  return { outline, holes: [] };
}

/** A wall that leans is recorded from its foot at the height that the rest of the floor has. */
function leanProblems(level: Level, path: Path, { origin }: Room, { sides }: Plan): readonly Problem[] {
  if (isGround(level)) return [];
  const borders = level.patches.flatMap(({ outline }) => edges(outline));
  return sides.flatMap(({ name, plane, line }) => {
    const [from, to] = [line[0], line.at(-1)];
    if (!plane || !from || !to || !borders.some((border) => sharedStretch([from, to], border))) return [];
    const message = `floor part '${level.name}' reaches wall '${name}', which leans: what is between them is not measured`;
    const fix = 'end it before the foot of that wall, or record this part of the room as a room of its own';
    return [problemAt(origin, [...path, 'over'], 'wall-leans', message, { fix })];
  });
}

/** Somewhere the ceiling, or a wall that leans, lies under the floor: of a part of the floor it is told there. */
export function headProblems(
  overhead: readonly Facet[],
  levels: readonly Level[],
  { floor = [], ceiling, origin }: Room,
): readonly Problem[] {
  return levels.flatMap((level, index) => {
    const { lowest } = heightsUnder(overLevels(overhead, [level]));
    if (lowest > -nearFeet) return [];
    const part = floor[index];
    const far = printLength(lengthOf(-lowest));
    const message = part
      ? `floor part '${part.name}' rises up to ${far} through the ceiling, or a wall that leans, over it`
      : `the ceiling comes down to ${far} under the floor`;
    const fix = 'check its height and slope against those of what is over it';
    const [only] = ceiling;
    const at = part?.path ?? (ceiling.length === 1 && only ? only.path : ['ceiling']);
    return [problemAt(origin, at, 'ceiling-below-floor', message, { fix })];
  });
}

function overlapProblems(levels: readonly Level[], { floor = [], origin }: Room): readonly Problem[] {
  const fix = 'let each place of the floor be of one part';
  const slackOf = ({ patches }: Pick<Level, 'patches'>): number =>
    patches.reduce((sum, patch) => sum + slackAround(patch), 0);
  return overlappingParts('floor', levels, slackOf).map(({ index, message }) =>
    problemAt(origin, [...(floor[index]?.path ?? ['floor']), 'over'], 'floor-parts-overlap', message, { fix }),
  );
}
