import {
  bounds,
  findCrossing,
  headings,
  nearArea,
  nearFeet,
  pointInFeet,
  reversed,
  signedArea,
  type Patch,
  type Ring,
  type Xy,
} from '../../base/geometry/index.js';
import type { Room, WalkedWall } from '../model/index.js';
import { problemAt, type Outcome, type Path, type Problem } from '../../base/problem/index.js';
import { feet, fromFeet, printLength } from '../../base/units/index.js';

/** A side of the plan: the wall that stands there, or the room it is open to. */
interface PlanSide {
  readonly name: string;
  readonly openTo?: string;
  readonly beside?: readonly string[];
  readonly path: Path;
}

/** A room's outline in feet, clockwise from above; side `i` runs from corner `i` to the next, left to right seen from inside. */
export interface Plan {
  readonly corners: Ring;
  readonly sides: readonly PlanSide[];
  /** The same outline as a patch. */
  readonly patch: Patch;
  /** South-west corner of the bounding box. */
  readonly origin: Xy;
}

/** Makes the plan of any shape. Size and walk have their south-west corner at (0, 0); an outline keeps its own coordinates. */
export function planOf(room: Room): Outcome<Plan> {
  const { corners, sides } = outlineOf(room);
  const problems = outlineProblems(corners, sides, room);
  if (problems.length > 0) return { problems };
  const clockwise = signedArea(corners) < 0 ? { corners, sides } : turned(corners, sides);
  const { west, south } = bounds(corners);
  const patch = { outline: reversed(clockwise.corners), holes: [] };
  return { value: { ...clockwise, patch, origin: { x: west, y: south } }, problems: [] };
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
        sides: shape.walls.map(({ name, openTo, beside }, i) => side({ name, openTo, beside, path: ['walls', i] })),
      };
    case 'outline':
      return {
        corners: shape.corners.map(({ at }) => pointInFeet(at)),
        sides: shape.corners.map(({ wall, openTo, beside }, i) =>
          side({ name: wall, openTo, beside, path: ['outline', i] }),
        ),
      };
  }
}

function side({
  name,
  openTo,
  beside,
  path,
}: {
  readonly name: string;
  readonly openTo: string | undefined;
  readonly beside: readonly string[] | undefined;
  readonly path: Path;
}): PlanSide {
  return { name, ...(openTo !== undefined && { openTo }), ...(beside && { beside }), path };
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

/** The same outline the other way round, still starting with the first wall. */
function turned(corners: Ring, sides: readonly PlanSide[]): Outline {
  const [first, ...rest] = sides as [PlanSide, ...PlanSide[]];
  const [start, end, ...others] = corners as [Xy, Xy, ...Xy[]];
  return { corners: [end, start, ...others.reverse()], sides: [first, ...rest.reverse()] };
}

function outlineProblems(corners: Ring, sides: readonly PlanSide[], room: Room): readonly Problem[] {
  const shapePath = [room.shape.by === 'walk' ? 'walls' : room.shape.by];
  const short = sides.flatMap((one, i) => {
    const [from, to] = [corners[i] as Xy, corners[(i + 1) % corners.length] as Xy];
    if (Math.hypot(to.x - from.x, to.y - from.y) > nearFeet) return [];
    const message = `wall '${one.name}' has no length`;
    return [
      problemAt(room.origin, one.path, 'wall-no-length', message, { fix: 'give its run, or leave the wall out' }),
    ];
  });
  if (short.length > 0) return short;
  const crossing = findCrossing(corners);
  if (crossing) return [crossingProblem(crossing, corners, sides, room)];
  if (Math.abs(signedArea(corners)) > nearArea) return [];
  const fix = 'check the sizes and directions of its walls';
  return [problemAt(room.origin, shapePath, 'plan-no-area', `${room.name} encloses no floor (0 sq ft)`, { fix })];
}

function crossingProblem(
  { first, second, at }: { first: number; second: number; at: Xy },
  corners: Ring,
  sides: readonly PlanSide[],
  room: Room,
): Problem {
  const [one, other] = [sides[first] as PlanSide, sides[second] as PlanSide];
  const start = corners[first] as Xy;
  const along = printLength(fromFeet(Math.hypot(at.x - start.x, at.y - start.y)));
  const message = `walls '${one.name}' and '${other.name}' meet or cross ${along} from the start of '${one.name}'`;
  const fix = `check which way '${one.name}' and '${other.name}' go and how far`;
  return problemAt(room.origin, other.path, 'walls-cross', message, { fix });
}
