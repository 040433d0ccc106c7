import type { Xy } from '../../base/geometry/index.js';
import { between, isFacing } from './joint.js';
import type { LayRoom, Side } from './laid-room.js';

/** Two walls that stand against each other, or two outside faces in one line: what rooms say of each other beside their joints. */
export interface Pair {
  readonly kind: 'facing' | 'in-line';
  readonly a: SideOf;
  readonly b: SideOf;
  readonly way: Xy;
  /** What `way` times the way from `a`'s room to `b`'s is when they stand as they should, in feet. */
  readonly is: number;
  /** What lies between them as placed, and what should, in feet. */
  readonly gap: number;
  readonly should: number;
  /** Along each other, in feet, and where that begins from the left end of each. */
  readonly overlap: number;
  readonly start: { readonly a: number; readonly b: number };
  readonly sigma: number;
}

export interface SideOf {
  readonly room: number;
  readonly side: Side;
}

/** Walls of two rooms face each other when they overlap by so much, and when so much at most lies between, in feet. */
const leastOverlap = 8 / 12;
export const reach = { behind: -24 / 12, before: 26 / 12 };

/** Faces of walls that no door joins: each is built for itself, so they say less than a tape. In feet. */
const pairSigma = 0.5 / 12;

/** Outside faces go on from one another when no more than this lies between them along the wall, and stand out from each other by no more
 *  than that, in feet. */
const goesOn = { along: 30 / 12, off: 14 / 12 };

/** Faces of outside walls in one line: weaker than walls that face each other, since a house may step. In feet. */
const inLineSigma = 1 / 12;

/** So much of a room must rise above an upper floor that walls up there stand against it, in feet. */
const leastAbove = 7;

/** All pairs of walls that face each other within reach, as placed. */
export function facingPairs(rooms: readonly LayRoom[], at: readonly Xy[], within: Within): readonly Pair[] {
  const pairs: Pair[] = [];
  for (let i = 0; i < rooms.length; i += 1) {
    for (let j = i + 1; j < rooms.length; j += 1) {
      const [a, b] = [rooms[i] as LayRoom, rooms[j] as LayRoom];
      if (!within.together(i, j) || !standTogether(a, b)) continue;
      const [from, to] = [at[i] as Xy, at[j] as Xy];
      const [dx, dy] = [to.x - from.x, to.y - from.y];
      if (!areNear(a, b, dx, dy)) continue;
      for (const side of a.sides) {
        for (const other of b.sides) {
          const pair = pairOf(a, side, b, other, dx, dy);
          if (pair && Math.abs(pair.gap - pair.should) < within.tolerance) pairs.push(pair);
        }
      }
    }
  }
  return pairs;
}

export interface Within {
  /** How far from the thickness that should stand there, in feet. */
  readonly tolerance: number;
  /** Whether joints hold two rooms together, by index. */
  readonly together: (a: number, b: number) => boolean;
}

function pairOf(a: LayRoom, side: Side, b: LayRoom, other: Side, dx: number, dy: number): Pair | undefined {
  if (!isFacing(side.out, other.out) || !stands(side) || !stands(other)) return undefined;
  const [px, py] = [other.from.x + dx - side.from.x, other.from.y + dy - side.from.y];
  const gap = side.out.x * px + side.out.y * py;
  if (gap < reach.behind || gap > reach.before) return undefined;
  const start = side.along.x * px + side.along.y * py;
  const overlap = Math.min(side.run, start) - Math.max(0, start - other.run);
  if (overlap < leastOverlap) return undefined;
  const should = between(side, other);
  return {
    kind: 'facing',
    a: { room: a.index, side },
    b: { room: b.index, side: other },
    way: side.out,
    is: side.out.x * dx + side.out.y * dy + should - gap,
    gap,
    should,
    overlap,
    start: { a: Math.max(0, start - other.run), b: Math.max(0, start - side.run) },
    sigma: pairSigma,
  };
}

/** A wall that is there, and is straight. */
function stands({ wall }: Side): boolean {
  return wall.openTo === undefined && wall.arc === undefined;
}

/** Whether neither wall is meant to stand otherwise than walls do. */
export function isUsual({ a, b }: Pick<Pair, 'a' | 'b'>): boolean {
  return !a.side.isJog && !b.side.isJog;
}

/** Floors that lie no farther apart than this, in feet, are of a split level, where rooms stand against each other by part of their height, at
 *  least by that. */
const split = { apart: 7, least: 2 };

/** Rooms whose walls may stand against each other: on one level, on split levels, or the one tall enough to go up past the other. */
export function standTogether(a: LayRoom, b: LayRoom): boolean {
  if (a.level === b.level) return true;
  const [low, high] = a.level < b.level ? [a, b] : [b, a];
  if (low.top === undefined || low.floor === undefined || high.floor === undefined) return false;
  return low.top > high.floor + (high.floor - low.floor < split.apart ? split.least : leastAbove);
}

function areNear(a: LayRoom, b: LayRoom, dx: number, dy: number): boolean {
  const { box } = a;
  const other = b.box;
  const far = reach.before;
  return (
    box.west - far < other.east + dx &&
    other.west + dx < box.east + far &&
    box.south - far < other.north + dy &&
    other.south + dy < box.north + far
  );
}

/** Outside faces that look the same way and go on from one another, on a level beside each other or one above the other, as placed.
 *  What faces another room within reach is not outside, and rooms that nothing joins are in no line. */
export function inLinePairs(
  rooms: readonly LayRoom[],
  at: readonly Xy[],
  { facing, together }: Pick<Within, 'together'> & { readonly facing: readonly Pair[] },
): readonly Pair[] {
  const inside = new Set(facing.flatMap(({ a, b }) => [keyOf(a), keyOf(b)]));
  const free = rooms.flatMap(({ index, sides }) =>
    sides.flatMap((side) => (stands(side) && !inside.has(keyOf({ room: index, side })) ? [{ room: index, side }] : [])),
  );
  return free.flatMap((a, index) =>
    free
      .slice(index + 1)
      .filter((b) => a.room !== b.room && together(a.room, b.room) && isUsual({ a, b }))
      .flatMap((b) => inLine(rooms, at, a, b) ?? []),
  );
}

function inLine(rooms: readonly LayRoom[], at: readonly Xy[], a: SideOf, b: SideOf): Pair | undefined {
  const { out, along, run, from, thickness } = a.side;
  const other = b.side;
  if (!isFacing(out, { x: -other.out.x, y: -other.out.y })) return undefined;
  const [here, there] = [at[a.room] as Xy, at[b.room] as Xy];
  const [dx, dy] = [there.x - here.x, there.y - here.y];
  const [px, py] = [other.from.x + dx - from.x, other.from.y + dy - from.y];
  // Between the outsides of the framing.
  const gap = out.x * px + out.y * py + other.thickness.outside - thickness.outside;
  if (Math.abs(gap) > goesOn.off) return undefined;
  const start = along.x * px + along.y * py;
  const overlap = Math.min(run, start + other.run) - Math.max(0, start);
  const apart = (rooms[a.room] as LayRoom).level === (rooms[b.room] as LayRoom).level ? -goesOn.along : leastOverlap;
  if (overlap < apart) return undefined;
  return {
    kind: 'in-line',
    a,
    b,
    way: out,
    is: out.x * dx + out.y * dy - gap,
    gap,
    should: 0,
    overlap,
    start: { a: Math.max(0, start), b: Math.max(0, -start) },
    sigma: inLineSigma,
  };
}

function keyOf({ room, side }: SideOf): string {
  return `${room}/${side.index}`;
}
