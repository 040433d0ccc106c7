import {
  areaOf,
  bounds,
  cross,
  distance,
  edges,
  heightOn,
  minus,
  patchArea,
  patchFrom,
  perimeter,
  unite,
  type Patch,
  type Plane,
  type Ring,
  type Xy,
} from '../../../base/geometry/index.js';
import { printAmount } from '../../../base/units/index.js';
import { normalOf, type Body, type Face } from '../body/face.js';
import { PartRefused } from '../refused.js';
import { size, type Xyz } from '../xyz.js';
import { turnedBackInSpace, type Turn } from './turn.js';

/** A space as a room's record can tell it: one level floor and what lies over it. In feet, on the turned plan. */
export interface SpaceShape {
  /** Its outline and what stands in it. */
  readonly floor: Patch;
  /** Of the floor, in the model. */
  readonly height: number;
  /** Of what lies highest over it, in the model. */
  readonly top: number;
  readonly ceiling: readonly CeilingPlane[];
  readonly volume: number;
}

/** A plane of the ceiling, in feet above the floor, and where it is the ceiling. */
export interface CeilingPlane {
  readonly plane: Plane;
  readonly patches: readonly Patch[];
}

const millimetre = 1 / 304.8;

/** What cannot be told from nothing along an edge. */
const hair = 0.1 * millimetre;

/** Throws PartRefused where the body is no such room. */
export function shapeOf({ faces, volume }: Body, turn: Turn): SpaceShape {
  const placed = faces.map((face) => face.map((loop) => loop.map((corner) => turnedBackInSpace(corner, turn))));
  const heights = placed.flat(2).map(({ z }) => z);
  const [height, top] = [least(heights), -least(heights.map((z) => -z))];
  const floor = floorOf(placed, height);
  const ceiling = ceilingOf(placed, height);
  const share = areaOf(ceiling.flatMap(({ patches }) => patches)) / patchArea(floor);
  if (Math.abs(share - 1) > 0.001) {
    const covered = printAmount(share * 100, 1);
    throw new PartRefused(`its ceiling is ${covered} % of its floor: its floor is not level, or a wall of it leans`);
  }
  return { floor, height, top, ceiling, volume };
}

function least(figures: readonly number[]): number {
  return figures.reduce((low, figure) => Math.min(low, figure), Infinity);
}

/** A face from above. */
function flatPatches(face: Face): readonly Patch[] {
  const [outline, ...holes] = face.map((loop): Ring => loop.map(({ x, y }) => ({ x, y })));
  return outline ? [patchFrom(outline, holes)] : [];
}

function floorOf(faces: readonly Face[], height: number): Patch {
  const lowest = faces.filter(
    (face) => normalOf(face).z < 0 && face.every((loop) => loop.every(({ z }) => z - height < 2 * millimetre)),
  );
  const [floor, ...more] = tidyPatches(unite(lowest.flatMap(flatPatches)));
  if (!floor) throw new PartRefused('it has no level floor');
  if (more.length > 0) throw new PartRefused('its floor is in several parts');
  return floor;
}

/** Without what is no wider than a hair, and without corners on a straight line. */
export function tidyPatches(patches: readonly Patch[]): readonly Patch[] {
  const isWide = (ring: Ring): boolean => Math.abs(patchArea({ outline: ring, holes: [] })) > perimeter(ring) * hair;
  return patches.flatMap(({ outline, holes }) => {
    const ring = straight(outline);
    return ring.length > 2 && isWide(ring)
      ? [{ outline: ring, holes: holes.map(straight).filter((hole) => hole.length > 2 && isWide(hole)) }]
      : [];
  });
}

/** Without corners that stand off the line between their neighbours by no more than a hair. */
function straight(ring: Ring): Ring {
  let kept = ring;
  for (;;) {
    const index = kept.findIndex((corner, at) => {
      const before = kept[(at + kept.length - 1) % kept.length] as Xy;
      const after = kept[(at + 1) % kept.length] as Xy;
      const span = distance(before, after);
      if (distance(before, corner) <= hair || span <= hair) return true;
      return Math.abs(cross(minus(corner, before), minus(after, before))) <= hair * span;
    });
    if (index < 0 || kept.length < 3) return kept;
    kept = kept.toSpliced(index, 1);
  }
}

/** Faces that look up, those of one plane together, the largest first. */
function ceilingOf(faces: readonly Face[], floor: number): readonly CeilingPlane[] {
  const looking = faces
    .map((face) => ({ face, normal: normalOf(face) }))
    .filter(({ normal }) => normal.z > 5e-4 * size(normal))
    .toSorted((a, b) => b.normal.z - a.normal.z);
  const planes: { plane: Plane; patches: Patch[] }[] = [];
  for (const { face, normal } of looking) {
    const corners = face.flat();
    const known = planes.find(({ plane }) => corners.every((corner) => liesOn(plane, corner, floor)));
    const patches = flatPatches(face);
    if (known) known.patches.push(...patches);
    else planes.push({ plane: planeOf(normal, corners, floor), patches: [...patches] });
  }
  return planes.map(({ plane, patches }) => ({ plane, patches: tidyPatches(unite(patches)) }));
}

function liesOn(plane: Plane, corner: Xyz, floor: number): boolean {
  return Math.abs(heightOn(plane, corner) - (corner.z - floor)) < 0.5 * millimetre;
}

/** Slopes below this are level: a millimetre in ten metres. */
const level = 1e-4;

function planeOf(normal: Xyz, corners: readonly Xyz[], floor: number): Plane {
  const isLevel = Math.hypot(normal.x, normal.y) < level * normal.z;
  const [a, b] = isLevel ? [0, 0] : [-normal.x / normal.z, -normal.y / normal.z];
  const rests = corners.map(({ x, y, z }) => z - floor - a * x - b * y);
  return { a, b, c: rests.reduce((sum, rest) => sum + rest, 0) / rests.length };
}

/** A shape on the plan that has its south-west corner at 0. */
export function standingAtZero({ floor, ceiling }: SpaceShape): Pick<SpaceShape, 'floor' | 'ceiling'> {
  const { west, south } = bounds(floor.outline);
  const moved = (ring: Ring): Ring => ring.map(({ x, y }) => ({ x: x - west, y: y - south }));
  const patch = ({ outline, holes }: Patch): Patch => ({ outline: moved(outline), holes: holes.map(moved) });
  return {
    floor: patch(floor),
    ceiling: ceiling.map(({ plane, patches }) => ({
      plane: { ...plane, c: plane.c + plane.a * west + plane.b * south },
      patches: patches.map(patch),
    })),
  };
}

/** Walls of an outline as one walks them, clockwise from above. */
export function wallsAround(outline: Ring): readonly (readonly [Xy, Xy])[] {
  return edges(outline.toReversed());
}
