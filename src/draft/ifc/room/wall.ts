import {
  bounds,
  cross,
  direction,
  distance,
  edges,
  minus,
  nearestHeading,
  type Stretch,
  type Xy,
} from '../../../base/geometry/index.js';
import { untaken } from '../name.js';
import { wallsAround } from './shape.js';
import type { Space } from './space.js';

/** A wall of a space, or a side where none stands; in feet on the turned plan, clockwise from above. */
export interface Wall {
  readonly name: string;
  readonly from: Xy;
  readonly to: Xy;
  /** The space that this side is open to. */
  readonly openTo?: Space;
}

/** Sides of two spaces that are no further apart than this, in feet, are one: a centimetre. */
const oneLine = 0.01 / 0.3048;
/** A side that is shorter, in feet, is no way from room to room. */
const leastOpen = 0.05 / 0.3048;
/** Ends that are nearer, in feet, are one corner. */
const oneCorner = 0.002 / 0.3048;

/** The walls of each space: where outlines of two on one level coincide, nothing stands between them, unless `stands` knows of something
 *  in that line. Sides are named by the way they look out. */
export function wallsOf(
  spaces: readonly Space[],
  stands: (from: Xy, to: Xy, space: Space) => boolean,
): ReadonlyMap<Space, readonly Wall[]> {
  return new Map(
    spaces.map((space) => {
      const others = spaces.filter((other) => other !== space && areBeside(space, other));
      const pieces = wallsAround(space.shape.floor.outline).flatMap(([from, to]) =>
        piecesOf(from, to, others).map((piece) =>
          piece.openTo && stands(piece.from, piece.to, space) ? { from: piece.from, to: piece.to } : piece,
        ),
      );
      return [space, named(northFirst(joined(pieces)))];
    }),
  );
}

type Piece = Omit<Wall, 'name'>;

/** On one level, and beside each other over half a metre of height. */
function areBeside({ storey, shape }: Space, other: Space): boolean {
  const shared = Math.min(shape.top, other.shape.top) - Math.max(shape.height, other.shape.height);
  return storey.id === other.storey.id && shared > 0.5 / 0.3048;
}

function piecesOf(from: Xy, to: Xy, others: readonly Space[]): readonly Piece[] {
  const length = distance(from, to);
  const ahead = direction(from, to);
  const at = (along: number): Xy => ({ x: from.x + ahead.x * along, y: from.y + ahead.y * along });
  const pieces: Piece[] = [];
  let done = 0;
  for (const { stretch, space } of openStretches(from, to, others)) {
    const start = stretch.from < oneCorner ? 0 : stretch.from;
    const end = length - stretch.to < oneCorner ? length : stretch.to;
    if (start < done - oneCorner) continue;
    if (start - done > oneCorner) pieces.push({ from: at(done), to: at(start) });
    pieces.push({ from: start - done > oneCorner ? at(start) : at(done), to: at(end), openTo: space });
    done = end;
  }
  return length - done > oneCorner || pieces.length === 0 ? [...pieces, { from: at(done), to }] : pieces;
}

/** Where other spaces' outlines run back along a line, in order. */
function openStretches(
  from: Xy,
  to: Xy,
  others: readonly Space[],
): readonly { readonly stretch: Stretch; readonly space: Space }[] {
  const length = distance(from, to);
  const ahead = direction(from, to);
  const [along, off] = [
    (point: Xy): number => minus(point, from).x * ahead.x + minus(point, from).y * ahead.y,
    (point: Xy): number => Math.abs(cross(ahead, minus(point, from))),
  ];
  const found = others.flatMap((space) =>
    wallsAround(space.shape.floor.outline).flatMap(([a, b]) => {
      if (off(a) > oneLine || off(b) > oneLine || along(a) <= along(b)) return [];
      const stretch = { from: Math.max(0, along(b)), to: Math.min(length, along(a)) };
      return stretch.to - stretch.from > leastOpen ? [{ stretch, space }] : [];
    }),
  );
  return found.toSorted((a, b) => a.stretch.from - b.stretch.from);
}

/** Neighbours on one line that are both walls are one wall: what stands between rooms was taken for open first. */
function joined(pieces: readonly Piece[]): readonly Piece[] {
  const whole: Piece[] = [];
  for (const piece of pieces) {
    const before = whole.at(-1);
    if (before && isOneWall(before, piece)) whole[whole.length - 1] = { from: before.from, to: piece.to };
    else whole.push(piece);
  }
  return whole;
}

function isOneWall(before: Piece, after: Piece): boolean {
  const turn = cross(direction(before.from, before.to), direction(after.from, after.to));
  return !before.openTo && !after.openTo && Math.abs(turn) < 1e-4;
}

/** The walk begins with a wall that looks north, the northernmost of them. */
function northFirst(pieces: readonly Piece[]): readonly Piece[] {
  const corners = edges(pieces.map(({ from }) => from));
  const { north } = bounds(pieces.map(({ from }) => from));
  const rank = ([from, to]: readonly [Xy, Xy]): number => {
    const ahead = direction(from, to);
    return nearestHeading({ x: -ahead.y, y: ahead.x }) === 'north' ? north - Math.max(from.y, to.y) : Infinity;
  };
  const ranks = corners.map(rank);
  const first = ranks.indexOf(Math.min(...ranks));
  return [...pieces.slice(first), ...pieces.slice(0, first)];
}

function named(pieces: readonly Piece[]): readonly Wall[] {
  const taken = new Set<string>();
  return pieces.map((piece) => {
    const ahead = direction(piece.from, piece.to);
    return { ...piece, name: untaken(nearestHeading({ x: -ahead.y, y: ahead.x }), taken) };
  });
}

/** Out of the room, square to a wall. */
export function outward({ from, to }: Pick<Wall, 'from' | 'to'>): Xy {
  const ahead = direction(from, to);
  return { x: -ahead.y, y: ahead.x };
}
