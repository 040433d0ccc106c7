import {
  arcBetween,
  arcPoints,
  bounds,
  direction,
  distance,
  findCrossing,
  headings,
  heightOn,
  lengthOf,
  nearArea,
  nearFeet,
  planeFrom,
  pointInFeet,
  reversed,
  riseOf,
  signedArea,
  straightPoints,
  type Arc,
  type Patch,
  type Plane,
  type PointAlong,
  type Ring,
  type Xy,
} from '../../base/geometry/index.js';
import type { Room, WalkedWall, WallArc, WallLean } from '../model/index.js';
import { problemAt, type Outcome, type Path, type Problem } from '../../base/problem/index.js';
import { feet, fromFeet, printLength } from '../../base/units/index.js';

/** A side of the plan: the wall that stands there, or the room it is open to. */
interface PlanSide {
  readonly name: string;
  readonly openTo?: string;
  readonly beside?: readonly string[];
  readonly arc?: WallArc;
  readonly leans?: WallLean;
  readonly path: Path;
}

/** A side with its line, from its left end to its right as seen from inside, and the arc that it stands for. */
interface LaidSide extends PlanSide {
  readonly line: readonly PointAlong[];
  readonly bow?: Bow;
  /** Of a wall that leans: height of its face over the plan. */
  readonly plane?: Plane;
}

export interface Bow extends Pick<Arc, 'center' | 'radius'> {
  readonly rise: number;
  readonly bows: 'out' | 'in';
}

/** A room's outline in feet, clockwise from above. */
export interface Plan {
  readonly sides: readonly LaidSide[];
  /** All of the sides' lines. */
  readonly outline: Ring;
  /** The same outline as a patch. */
  readonly patch: Patch;
  /** South-west corner of the bounding box. */
  readonly origin: Xy;
}

/** Makes the plan of any shape. Size and walk have their south-west corner at (0, 0); an outline keeps its own coordinates. */
export function planOf(room: Room): Outcome<Plan> {
  const { corners, sides } = outlineOf(room);
  const unlaid = [...lengthProblems(corners, sides, room), ...arcProblems(corners, sides, room)];
  if (unlaid.length > 0) return { problems: unlaid };
  const isClockwise = signedArea(corners) < 0;
  const recorded = laidSides(corners, sides, isClockwise);
  const problems = outlineProblems(ringOf(recorded), recorded, room);
  if (problems.length > 0) return { problems };
  const laid = (isClockwise ? recorded : turned(recorded)).map(withPlane);
  const outline = ringOf(laid);
  const leaning = laid.flatMap((one) => leanProblems(one, outline, room));
  if (leaning.length > 0) return { problems: leaning };
  const { west, south } = bounds(outline);
  const patch = { outline: reversed(outline), holes: [] };
  return { value: { sides: laid, outline, patch, origin: { x: west, y: south } }, problems: [] };
}

/** A wall that leans rises from its foot as a steep ceiling does. */
function withPlane(side: LaidSide): LaidSide {
  const { leans, line } = side;
  if (!leans) return side;
  const [from, to] = [line[0], line.at(-1)] as [PointAlong, PointAlong];
  const ahead = direction(from, to);
  // Sides go clockwise, so the room is to the right.
  return { ...side, plane: planeFrom(from, 0, { x: ahead.y, y: -ahead.x }, leans.at / leans.by) };
}

/** A wall leans where it is straight, and where all of the room lies before it. */
function leanProblems({ name, arc, plane, path }: LaidSide, outline: Ring, { origin }: Room): readonly Problem[] {
  if (!plane) return [];
  const at = [...path, 'leans'];
  if (arc) {
    const message = `wall '${name}' is an arc and leans: what it encloses is not measured`;
    return [problemAt(origin, at, 'wall-leans', message, { fix: 'leave one of the two out' })];
  }
  if (outline.every((point) => heightOn(plane, point) > -nearFeet)) return [];
  const message = `wall '${name}' leans into the room, but part of the room lies behind its line`;
  const fix =
    'a wall that leans is measured where all of the room lies before it: record the rest as a room of its own';
  return [problemAt(origin, at, 'wall-leans', message, { fix })];
}

function ringOf(sides: readonly LaidSide[]): Ring {
  return sides.flatMap(({ line }) => line.slice(0, -1).map(({ x, y }) => ({ x, y })));
}

/** Each side with its line, in the order and the direction of the record. What bows out of the room goes to the left of a clockwise way. */
function laidSides(corners: Ring, sides: readonly PlanSide[], isClockwise: boolean): readonly LaidSide[] {
  return sides.map((one, index) => {
    const [from, to] = endsOf(corners, index);
    if (!one.arc) return { ...one, line: straightPoints(from, to) };
    const rise = arcRise(one.arc, distance(from, to));
    const { bows } = one.arc;
    const arc = arcBetween(from, to, (bows === 'out') === isClockwise ? rise : -rise);
    const { center, radius } = arc;
    return { ...one, line: arcPoints(from, to, arc), bow: { center, radius, rise, bows } };
  });
}

/** In feet. */
function arcRise(arc: WallArc, chord: number): number {
  return 'rise' in arc ? feet(arc.rise) : riseOf(feet(arc.radius), chord);
}

function endsOf(corners: Ring, index: number): readonly [Xy, Xy] {
  return [corners[index] as Xy, corners[(index + 1) % corners.length] as Xy];
}

interface Outline {
  readonly corners: Ring;
  readonly sides: readonly PlanSide[];
}

function outlineOf({ shape }: Room): Outline {
  switch (shape.by) {
    case 'size': {
      const [east, north] = [feet(shape.eastWest), feet(shape.northSouth)];
      const corners = [
        { x: 0, y: north },
        { x: east, y: north },
        { x: east, y: 0 },
        { x: 0, y: 0 },
      ];
      const sides = ['north', 'east', 'south', 'west'].map((name) =>
        side({
          name,
          openTo: shape.open.find(({ wall }) => wall === name)?.to,
          beside: shape.beside?.find(({ wall }) => wall === name)?.rooms,
          path: ['size'],
        }),
      );
      return { corners, sides };
    }
    case 'walk':
      return {
        corners: walked(shape.walls),
        sides: shape.walls.map(({ name, openTo, beside, arc, leans }, i) =>
          side({ name, openTo, beside, arc, leans, path: ['walls', i] }),
        ),
      };
    case 'outline':
      return {
        corners: shape.corners.map(({ at }) => pointInFeet(at)),
        sides: shape.corners.map(({ wall, openTo, beside, arc, leans }, i) =>
          side({ name: wall, openTo, beside, arc, leans, path: ['outline', i] }),
        ),
      };
  }
}

function side({
  name,
  openTo,
  beside,
  arc,
  leans,
  path,
}: {
  readonly name: string;
  readonly openTo: string | undefined;
  readonly beside: readonly string[] | undefined;
  readonly arc?: WallArc | undefined;
  readonly leans?: WallLean | undefined;
  readonly path: Path;
}): PlanSide {
  const open = { ...(openTo !== undefined && { openTo }), ...(beside && { beside }) };
  return { name, ...open, ...(arc && { arc }), ...(leans && { leans }), path };
}

/** Corners of a walk. The loader lets a walk miss its start by 1/16"; that rest is shared by the transit rule: the east-west
 *  miss among east-west components in proportion, likewise north-south, so that square walls stay square. */
function walked(walls: readonly WalkedWall[]): Ring {
  const steps = walls.map(({ go, run }) => ({ x: headings[go].x * feet(run), y: headings[go].y * feet(run) }));
  const sum = (of: (step: Xy) => number): number => steps.reduce((total, step) => total + of(step), 0);
  const miss = { x: sum(({ x }) => x), y: sum(({ y }) => y) };
  const share = {
    x: miss.x / (sum(({ x }) => Math.abs(x)) || 1),
    y: miss.y / (sum(({ y }) => Math.abs(y)) || 1),
  };
  const corners: Xy[] = [];
  let here = { x: 0, y: 0 };
  for (const { x, y } of steps) {
    corners.push(here);
    here = { x: here.x + x - share.x * Math.abs(x), y: here.y + y - share.y * Math.abs(y) };
  }
  const { west, south } = bounds(corners);
  return corners.map(({ x, y }) => ({ x: snapped(x - west), y: snapped(y - south) }));
}

/** Sums of feet back on the nanometre grid that lengths are on. */
function snapped(value: number): number {
  return feet(fromFeet(value));
}

/** The same sides the other way round, still starting with the first. */
function turned(sides: readonly LaidSide[]): readonly LaidSide[] {
  const [first, ...rest] = sides.map((side) => ({ ...side, line: reversedLine(side.line) }));
  return first ? [first, ...rest.reverse()] : [];
}

function reversedLine(line: readonly PointAlong[]): readonly PointAlong[] {
  const length = line.at(-1)?.along ?? 0;
  return line.map((point) => ({ ...point, along: length - point.along })).reverse();
}

function lengthProblems(corners: Ring, sides: readonly PlanSide[], room: Room): readonly Problem[] {
  return sides.flatMap((one, index) => {
    if (distance(...endsOf(corners, index)) > nearFeet) return [];
    const message = `wall '${one.name}' has no length`;
    return [
      problemAt(room.origin, one.path, 'wall-no-length', message, { fix: 'give its run, or leave the wall out' }),
    ];
  });
}

function arcProblems(corners: Ring, sides: readonly PlanSide[], room: Room): readonly Problem[] {
  return sides.flatMap(({ name, arc, path }, index) => {
    const chord = distance(...endsOf(corners, index));
    if (!arc || 'rise' in arc || feet(arc.radius) > chord / 2 - nearFeet) return [];
    const message = `an arc of ${printLength(arc.radius)} does not reach from end to end of wall '${name}', which is ${printLength(lengthOf(chord))}`;
    const fix = `${printLength(lengthOf(chord / 2))}, a half circle, is the least radius that does`;
    return [problemAt(room.origin, [...path, 'arc', 'radius'], 'arc-too-tight', message, { fix })];
  });
}

function outlineProblems(outline: Ring, sides: readonly LaidSide[], room: Room): readonly Problem[] {
  const shapePath = [room.shape.by === 'walk' ? 'walls' : room.shape.by];
  const crossing = findCrossing(outline);
  if (crossing) return [crossingProblem(crossing, sides, room)];
  if (Math.abs(signedArea(outline)) > nearArea) return [];
  const fix = 'check the sizes and directions of its walls';
  return [problemAt(room.origin, shapePath, 'plan-no-area', `${room.name} encloses no floor (0 sq ft)`, { fix })];
}

interface Piece {
  readonly side: LaidSide;
  readonly start: PointAlong;
}

function crossingProblem(
  { first, second, at }: { first: number; second: number; at: Xy },
  sides: readonly LaidSide[],
  room: Room,
): Problem {
  const pieces = sides.flatMap((side) => side.line.slice(0, -1).map((start) => ({ side, start })));
  const [{ side: one, start }, { side: other }] = [pieces[first], pieces[second]] as [Piece, Piece];
  const along = printLength(fromFeet(start.along + distance(start, at)));
  const message = `walls '${one.name}' and '${other.name}' meet or cross ${along} from the start of '${one.name}'`;
  const fix = `check which way '${one.name}' and '${other.name}' go and how far`;
  return problemAt(room.origin, other.path, 'walls-cross', message, { fix });
}
