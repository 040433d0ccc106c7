import type { LayRoom, Side } from './laid-room.js';
import type { Pair } from './pair.js';

/** A stretch of a wall from its left end, in feet, and the wall behind it. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly behind?: Behind;
}

export interface Behind {
  readonly room: LayRoom;
  readonly side: Side;
  readonly gap: number;
}

/** What lies on an outside wall outside its framing, at most, in feet. Common practice, no source. */
const cladding = 3 / 12;

/** A stretch that is no longer than this is the end of a wall across it, in feet, inside or outside: as thick as this one would be there. */
export function crossing({ thickness: { inside, outside } }: Side): number {
  return Math.max(inside, outside + cladding) + 1e-6;
}

/** A side with a wall, and all that stands behind it. */
export interface StandingSide {
  readonly side: Side;
  readonly behind: readonly Stretch[];
}

/** `pairs`: those with a wall of the room. */
export function standingSides(
  room: LayRoom,
  pairs: readonly Pair[],
  rooms: readonly LayRoom[],
): readonly StandingSide[] {
  return room.sides
    .filter(({ wall }) => wall.openTo === undefined)
    .map((side) => ({ side, behind: behindSide(room, side, pairs, rooms) }));
}

/** Pairs by the index of each room that has a wall in them. */
export function pairsByRoom(pairs: readonly Pair[]): ReadonlyMap<number, readonly Pair[]> {
  const found = new Map<number, Pair[]>();
  for (const pair of pairs)
    for (const room of new Set([pair.a.room, pair.b.room])) {
      const known = found.get(room);
      if (known) known.push(pair);
      else found.set(room, [pair]);
    }
  return found;
}

/** All that stands behind a side, as placed: each other wall over its stretch. */
function behindSide(room: LayRoom, side: Side, pairs: readonly Pair[], rooms: readonly LayRoom[]): readonly Stretch[] {
  return pairs.flatMap((pair): readonly Stretch[] => {
    const isFirst = pair.a.room === room.index && pair.a.side === side;
    const isSecond = pair.b.room === room.index && pair.b.side === side;
    if (!isFirst && !isSecond) return [];
    const other = isFirst ? pair.b : pair.a;
    const from = isFirst ? pair.start.a : pair.start.b;
    const there = rooms[other.room] as LayRoom;
    return [{ from, to: from + pair.overlap, behind: { room: there, side: other.side, gap: pair.gap } }];
  });
}

/** The whole of a side, end to end: what is nearest behind each stretch, on the room's own level before another. Short ends where a wall crosses go with what is
 *  beside them. */
export function alongSide(side: Side, level: number, behind: readonly Stretch[]): readonly Stretch[] {
  const stops = [...new Set([0, side.run, ...behind.flatMap(({ from, to }) => [from, to])])].toSorted((a, b) => a - b);
  const pieces = stops.slice(1).map((to, index): Stretch => {
    const from = stops[index] as number;
    const middle = (from + to) / 2;
    const [nearest] = behind
      .filter((one) => one.from < middle && middle < one.to)
      .toSorted((a, b) => rank(a, level) - rank(b, level));
    return nearest?.behind ? { from, to, behind: nearest.behind } : { from, to };
  });
  return joined(
    pieces.filter(({ from, to }) => to - from > 1e-6),
    crossing(side),
  );
}

function rank({ behind }: Stretch, level: number): number {
  if (!behind) return Infinity;
  return behind.gap + (behind.room.level === level ? 0 : 100);
}

/** Neighbours with the same behind them are one, and a short one with nothing behind it goes with its neighbour. */
function joined(pieces: readonly Stretch[], shortest: number): readonly Stretch[] {
  const found: Stretch[] = [];
  for (const piece of pieces) {
    const before = found.at(-1);
    const isShort = !piece.behind && piece.to - piece.from < shortest;
    const isSame = before?.behind?.side === piece.behind?.side;
    if (before && (isSame || isShort)) found[found.length - 1] = { ...before, to: piece.to };
    else if (before && !before.behind && before.to - before.from < shortest)
      found[found.length - 1] = { ...piece, from: before.from };
    else found.push(piece);
  }
  return found;
}
