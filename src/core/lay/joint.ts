import { counterClockwise, direction, distance, pointInFeet, type Ring, type Xy } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import { wallLine, type OpeningMeasure } from '../model/index.js';
import type { LayRoom, Side } from './laid-room.js';

/** What one tape does not tell better than, in feet: 1/4", of a room's size as of the place of an opening in it. From memory of tapes read to
 *  the eighth; common practice, no source. */
export const tapeSigma = 0.25 / 12;

/** A place of a room that two rooms have in common: on a side, so far from its left end, or a point of its own. */
export type End =
  | { readonly room: number; readonly side: number; readonly offset: number }
  | { readonly room: number; readonly point: Xy };

/** Two rooms that fix each other. From `a`'s place it is `thickness` out of `a`'s side to `b`'s. */
export interface Joint {
  readonly kind: 'opening' | 'open-side' | 'well' | 'place';
  /** The opening's mark, or the names of both sides. */
  readonly name: string;
  readonly a: End;
  readonly b: End;
  /** The line that the ends are compared along, and the one across it. */
  readonly along: Xy;
  readonly out: Xy;
  readonly thickness: number;
  readonly sigma: { readonly along: number; readonly across: number };
}

/** Rooms that can't stand as they say. */
export type Misfit =
  | {
      readonly kind: 'not-facing';
      readonly opening: OpeningMeasure;
      readonly seen: OpeningMeasure;
      readonly room: LayRoom;
      readonly other: LayRoom;
      /** Walls of each that would face the other's. */
      readonly would: { readonly room: readonly string[]; readonly other: readonly string[] };
    }
  | { readonly kind: 'open-one-sided'; readonly room: LayRoom; readonly side: Side; readonly other: LayRoom }
  | {
      readonly kind: 'open-lengths';
      readonly room: LayRoom;
      readonly side: Side;
      readonly other: LayRoom;
      /** What is open there: a side's name, an opening's mark, a part of the ceiling. */
      readonly what: string;
      readonly lengths: readonly [own: number, others: number];
    };

/** What two lengths that are to be the same may differ by: 1/2", in feet. */
export const playAlong = 0.5 / 12;

/** Opposite, within half a degree. */
export function isFacing(a: Xy, b: Xy): boolean {
  return a.x * b.x + a.y * b.y < -0.99996;
}

/** Where an end is, in its room's own coordinates. */
export function pointOfEnd(end: End, rooms: readonly LayRoom[]): Xy {
  if ('point' in end) return end.point;
  const side = (rooms[end.room] as LayRoom).sides[end.side] as Side;
  return pointOnSide(side, end.offset).at;
}

/** A place so far along a side, and the way out of the room there. */
export function pointOnSide(side: Side, offset: number): { readonly at: Xy; readonly along: Xy; readonly out: Xy } {
  const { from, along, out, wall } = side;
  if (!wall.arc) return { at: { x: from.x + along.x * offset, y: from.y + along.y * offset }, along, out };
  const line = wallLine(wall).map(({ at, along: there }) => ({ ...pointInFeet(at), along: feet(there) }));
  const index = Math.max(
    1,
    line.findIndex((point) => point.along >= offset - 1e-9),
  );
  const [a, b] = [line[index - 1], line[index]] as [Xy & { along: number }, Xy & { along: number }];
  const span = distance(a, b);
  const way = { x: (b.x - a.x) / span, y: (b.y - a.y) / span };
  const t = offset - a.along;
  return {
    at: { x: a.x + way.x * t, y: a.y + way.y * t },
    along: way,
    out: { x: -way.y, y: way.x },
  };
}

/** Every pair of rooms that shares an opening, an open side or a well, or whose record says where it stands. */
export function jointsOf(rooms: readonly LayRoom[]): {
  readonly joints: readonly Joint[];
  readonly misfits: readonly Misfit[];
} {
  const bySlug = new Map(rooms.map((room) => [room.slug, room]));
  const joints: Joint[] = [];
  const misfits: Misfit[] = [];
  for (const room of rooms) {
    for (const opening of room.measure.openings) {
      const other = opening.own ? bySlug.get(opening.to) : undefined;
      if (other) joinOpening(room, other, opening, joints, misfits);
    }
    for (const side of room.sides) {
      const other = bySlug.get(side.wall.openTo ?? '');
      if (other?.level === room.level) joinOpenSides(room, side, other, joints, misfits);
    }
    for (const below of rooms.filter(({ level }) => level !== room.level)) {
      const open = room.sides.filter(({ wall }) => wall.openTo === below.slug);
      if (open.length > 0) joinWell(room, open, below, joints, misfits);
    }
    const placed = joinPlace(room, bySlug);
    if (placed) joints.push(placed);
  }
  return { joints, misfits };
}

function joinOpening(room: LayRoom, other: LayRoom, opening: OpeningMeasure, joints: Joint[], misfits: Misfit[]): void {
  const side = room.sides.find(({ wall }) => wall.id === opening.wall);
  if (!side) return;
  const offset = feet(opening.at) + feet(opening.width) / 2;
  const a = { room: room.index, side: side.index, offset };
  const { along, out } = pointOnSide(side, offset);
  const seen = other.measure.openings.find(({ mark, own }) => mark === opening.mark && !own);
  if (!seen) {
    const facing = other.sides.find(({ wall, out: theirs }) => wall.openTo === room.slug && isFacing(out, theirs));
    if (!facing) return;
    const b = { room: other.index, side: facing.index, offset: facing.run / 2 };
    const lengths = [facing.run, feet(opening.width)] as const;
    const told = { room: other, side: facing, other: room, what: opening.mark, lengths };
    joinOpen({ kind: 'opening', name: opening.mark, a, b, along, out }, told, joints, misfits);
    return;
  }
  const theirs = other.sides.find(({ wall }) => wall.id === seen.wall);
  if (!theirs) return;
  const there = feet(seen.at) + feet(seen.width) / 2;
  const b = { room: other.index, side: theirs.index, offset: there };
  if (!isFacing(out, pointOnSide(theirs, there).out)) {
    const would = {
      room: sidesFacing(room, theirs, feet(opening.width)),
      other: sidesFacing(other, side, feet(opening.width)),
    };
    misfits.push({ kind: 'not-facing', opening, seen, room, other, would });
    return;
  }
  const thickness = between(side, theirs);
  joints.push({ kind: 'opening', name: opening.mark, a, b, along, out, thickness, sigma: twoTapes });
}

/** Both sides' tapes. */
const twoTapes = { along: tapeSigma * Math.SQRT2, across: tapeSigma };

/** Open places of two lengths: the middles agree as well as the lengths do. */
function openSigma(difference: number): Joint['sigma'] {
  return { along: Math.max(twoTapes.along, difference / 2), across: tapeSigma };
}

/** Of a wall that two rooms share: what either record says of its own, else what stands between rooms. */
export function between(a: Side, b: Side): number {
  return (b.thickness.isOwn && !a.thickness.isOwn ? b : a).thickness.inside;
}

function sidesFacing({ sides }: LayRoom, { out }: Side, width: number): readonly string[] {
  return sides
    .filter((side) => side.wall.openTo === undefined && isFacing(side.out, out) && side.run > width - playAlong)
    .map(({ wall }) => wall.id);
}

function joinOpenSides(room: LayRoom, side: Side, other: LayRoom, joints: Joint[], misfits: Misfit[]): void {
  const theirs = other.sides
    .filter(({ wall, out }) => wall.openTo === room.slug && isFacing(out, side.out))
    .toSorted((a, b) => Math.abs(a.run - side.run) - Math.abs(b.run - side.run))[0];
  if (!theirs) {
    const isSeen = other.measure.openings.some(({ to, own }) => own && to === room.slug);
    if (!isSeen) misfits.push({ kind: 'open-one-sided', room, side, other });
    return;
  }
  // Once for the two.
  if (room.index > other.index) return;
  const joint = {
    kind: 'open-side',
    name: `${side.wall.id} | ${theirs.wall.id}`,
    a: { room: room.index, side: side.index, offset: side.run / 2 },
    b: { room: other.index, side: theirs.index, offset: theirs.run / 2 },
    along: side.along,
    out: side.out,
  } as const;
  const lengths = [side.run, theirs.run] as const;
  joinOpen(joint, { room, side, other, what: theirs.wall.id, lengths }, joints, misfits);
}

/** Rooms that run on into each other: no wall stands between, and both say how long that is. */
function joinOpen(
  joint: Omit<Joint, 'thickness' | 'sigma'>,
  told: Omit<Extract<Misfit, { readonly kind: 'open-lengths' }>, 'kind'>,
  joints: Joint[],
  misfits: Misfit[],
): void {
  const off = Math.abs(told.lengths[0] - told.lengths[1]);
  if (off > playAlong) misfits.push({ kind: 'open-lengths', ...told });
  joints.push({ ...joint, thickness: 0, sigma: openSigma(off) });
}

/** Sides that look down into a room of another level stand over the edges of the part of that room's ceiling which is open to them. The part is
 *  what they look into, as a stair's well, or what they stand over, as the ceiling under a loft: the one that gives more of them an edge. */
function joinWell(room: LayRoom, sides: readonly Side[], below: LayRoom, joints: Joint[], misfits: Misfit[]): void {
  const edges = below.record.ceiling.flatMap(({ name, over, openAbove }) =>
    over && openAbove?.to === room.slug
      ? innerEdges(counterClockwise(over.map(pointInFeet)), below).map((edge) => ({ name, ...edge }))
      : [],
  );
  const [found] = ([-1, 1] as const)
    .map((turn) => sides.flatMap((side) => edgeOf(side, edges, turn) ?? []))
    .toSorted((a, b) => b.length - a.length);
  for (const { side, edge } of found ?? []) {
    const joint = {
      kind: 'well',
      name: `${side.wall.id} | ${edge.name}`,
      a: { room: room.index, side: side.index, offset: side.run / 2 },
      b: { room: below.index, point: { x: (edge.from.x + edge.to.x) / 2, y: (edge.from.y + edge.to.y) / 2 } },
      along: side.along,
      out: side.out,
    } as const;
    const lengths = [side.run, edge.run] as const;
    joinOpen(joint, { room, side, other: below, what: edge.name, lengths }, joints, misfits);
  }
}

interface WellEdge {
  readonly name: string;
  readonly from: Xy;
  readonly to: Xy;
  readonly run: number;
}

/** The edge whose way out of the part is a side's way out of its room (`turn` 1), or its opposite; of several, the one of the same length. */
function edgeOf(
  side: Side,
  edges: readonly WellEdge[],
  turn: 1 | -1,
): { readonly side: Side; readonly edge: WellEdge } | undefined {
  const [edge] = edges
    .filter(({ from, to }) => {
      const way = direction(from, to);
      // Counter-clockwise, so out of the part is to the right.
      return isFacing({ x: way.y * turn, y: -way.x * turn }, { x: -side.out.x, y: -side.out.y });
    })
    .toSorted((a, b) => Math.abs(a.run - side.run) - Math.abs(b.run - side.run));
  return edge && { side, edge };
}

/** Edges of a part of the ceiling that are not along a wall of its room. */
function innerEdges(over: Ring, { sides }: LayRoom): readonly { from: Xy; to: Xy; run: number }[] {
  return over.flatMap((from, index) => {
    const to = over[(index + 1) % over.length] as Xy;
    const isOnWall = sides.some(
      (side) => offLine(from, side) < playAlong && offLine(to, side) < playAlong && side.wall.openTo === undefined,
    );
    return isOnWall ? [] : [{ from, to, run: distance(from, to) }];
  });
}

function offLine(point: Xy, { from, out }: Side): number {
  return Math.abs((point.x - from.x) * out.x + (point.y - from.y) * out.y);
}

/** A room whose record says where it stands in another's coordinates. */
function joinPlace(room: LayRoom, bySlug: ReadonlyMap<string, LayRoom>): Joint | undefined {
  const { place } = room.record;
  const other = place && bySlug.get(place.from);
  if (!other) return undefined;
  return {
    kind: 'place',
    name: `place of ${room.slug}`,
    a: { room: other.index, point: pointInFeet(place.at) },
    b: { room: room.index, point: southWestOf(room) },
    along: { x: 1, y: 0 },
    out: { x: 0, y: 1 },
    thickness: 0,
    sigma: { along: tapeSigma, across: tapeSigma },
  };
}

function southWestOf({ outline }: LayRoom): Xy {
  return { x: Math.min(...outline.map(({ x }) => x)), y: Math.min(...outline.map(({ y }) => y)) };
}
