import {
  direction,
  heightAlong,
  planeOf,
  pointInFeet,
  uprightPlane,
  type SpacePlane,
  type Xy,
} from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import {
  wallFoot,
  wallLine,
  wallThickness,
  type RoomMeasure,
  type WallMeasure,
  type WallPoint,
} from '../../core/model/index.js';

/** A straight piece of a room's outline: a wall, a piece of an arc, or a side that is open. */
export interface Side {
  readonly wall: WallMeasure;
  /** Left and right ends as seen from inside, on the inner face. */
  readonly a: Xy;
  readonly b: Xy;
  /** The same on the outer face, mitred at corners; on an open side the same places. */
  readonly outerA: Xy;
  readonly outerB: Xy;
  /** Where it begins and ends along its wall, in feet. */
  readonly from: number;
  readonly to: number;
  /** Unit vectors along it to the right, and out of the room. */
  readonly ahead: Xy;
  readonly out: Xy;
  readonly thickness: number;
  readonly isOpen: boolean;
}

/** Feet from face to face, where nothing says more. As drawn. */
const usualThickness = 0.5;
/** How many thicknesses a sharp corner may reach out. */
const mitreLimit = 3;

/** A room's sides in the order of the walk, with the thickness of their walls. */
export function sidesOf(measure: RoomMeasure): readonly Side[] {
  const { walls } = measure;
  const pieces = walls.flatMap((wall) => {
    const line = wallLine(wall).map(({ at, along }) => ({ at: pointInFeet(at), along: feet(along) }));
    const isOpen = wall.openTo !== undefined;
    return line.slice(1).map((end, i) => {
      const start = line[i]!;
      const ahead = direction(start.at, end.at);
      const thickness = isOpen ? 0 : thicknessOf(wall.id, measure);
      const out = { x: -ahead.y, y: ahead.x };
      return { wall, a: start.at, b: end.at, from: start.along, to: end.along, ahead, out, thickness, isOpen };
    });
  });
  return pieces.map((piece, i) => {
    const [before, after] = [pieces.at(i - 1)!, pieces[(i + 1) % pieces.length]!];
    return { ...piece, outerA: corner(piece.a, before, piece, piece), outerB: corner(piece.b, piece, after, piece) };
  });
}

/** As laid out; what lies far behind a wall, or is too thin to draw, is no thickness. */
function thicknessOf(wall: string, measure: RoomMeasure): number {
  const known = wallThickness(measure, wall);
  return known === undefined ? usualThickness : Math.min(1.5, Math.max(0.2, feet(known)));
}

type Piece = Pick<Side, 'ahead' | 'out' | 'thickness'>;

/** Where the outer faces of two sides meet that have a place in common; in one line each ends square. */
function corner(at: Xy, before: Piece, after: Piece, own: Piece): Xy {
  const square = { x: at.x + own.out.x * own.thickness, y: at.y + own.out.y * own.thickness };
  const turn = before.ahead.x * after.ahead.y - before.ahead.y * after.ahead.x;
  if (Math.abs(turn) < 1e-6) return square;
  // Both outer lines: out·p = thickness, from the place.
  const x = (before.thickness * after.out.y - after.thickness * before.out.y) / turn;
  const y = (after.thickness * before.out.x - before.thickness * after.out.x) / turn;
  const far = Math.hypot(x, y) > mitreLimit * Math.max(before.thickness, after.thickness);
  return far ? square : { x: at.x + x, y: at.y + y };
}

/** A wall's plane from its own left end, so that what is measured along the wall lies in it; of a piece of an arc, as if it went on. */
export function sidePlane({ wall, a, b, from, ahead }: Side): SpacePlane {
  const plane = uprightPlane({ x: a.x - ahead.x * from, y: a.y - ahead.y * from }, b);
  if (!wall.lean) return plane;
  const [by, at] = [feet(wall.lean.by), feet(wall.lean.at)];
  const length = Math.hypot(by, at);
  const inward = plane.faces;
  return planeOf(plane.at, plane.u, { x: (inward.x * by) / length, y: (inward.y * by) / length, z: at / length });
}

export interface Height {
  readonly along: number;
  readonly height: number;
}

/** A profile's points over a side, with its ends. */
function over(profile: readonly WallPoint[], from: number, to: number): readonly Height[] {
  const points = profile.map(({ along, height }) => ({ along: feet(along), height: feet(height) }));
  const at = (along: number): number => heightAlong(points, along);
  const inner = points.filter(({ along }) => along > from + 1e-6 && along < to - 1e-6);
  return [{ along: from, height: at(from) }, ...inner, { along: to, height: at(to) }];
}

export function topOver({ wall, from, to }: Side): readonly Height[] {
  return over(wall.top, from, to);
}

export function footOver({ wall, from, to }: Side): readonly Height[] {
  return over(wallFoot(wall), from, to);
}

/** A place on a side's inner face, or on its outer one, where its ends are mitred. */
export function onSide(
  { a, from, to, ahead, out, thickness, outerA, outerB }: Side,
  along: number,
  isOuter: boolean,
): Xy {
  const inner = { x: a.x + ahead.x * (along - from), y: a.y + ahead.y * (along - from) };
  if (!isOuter) return inner;
  if (along <= from + 1e-6) return outerA;
  if (along >= to - 1e-6) return outerB;
  return { x: inner.x + out.x * thickness, y: inner.y + out.y * thickness };
}
