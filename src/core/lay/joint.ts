import { distance, pointInFeet, type Xy } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import { wallLine, type CeilingPart, type OpeningMeasure } from '../model/index.js';
import type { LayRoom, Side } from './laid-room.js';

/** What one tape does not tell better than, in feet: 1/4", of a room's size as of the place of an opening in it. From memory of tapes read to
 *  the eighth; common practice, no source. */
export const tapeSigma = 0.25 / 12;

/** A place of a room that two rooms have in common: on a side, so far from its left end, the middle of a side, or a point of its own. */
export type End =
  | { readonly room: number; readonly side: number; readonly offset: number }
  | { readonly room: number; readonly side: number; readonly isMiddle: true }
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
  /** A side is open to a room of another level, whose ceiling is not open to it; or the other way round. */
  | { readonly kind: 'well-one-sided'; readonly room: LayRoom; readonly side: Side; readonly other: LayRoom }
  | { readonly kind: 'well-unseen'; readonly room: LayRoom; readonly part: CeilingPart; readonly other: LayRoom }
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
  return pointOnSide(side, 'offset' in end ? end.offset : side.run / 2).at;
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

/** Both sides' tapes. */
export const twoTapes = { along: tapeSigma * Math.SQRT2, across: tapeSigma };

/** Open places of two lengths: the middles agree as well as the lengths do. */
function openSigma(difference: number): Joint['sigma'] {
  return { along: Math.max(twoTapes.along, difference / 2), across: tapeSigma };
}

/** Of a wall that two rooms share: what either record says of its own, else what stands between rooms. */
export function between(a: Side, b: Side): number {
  return (b.thickness.isOwn && !a.thickness.isOwn ? b : a).thickness.inside;
}

/** Rooms that run on into each other: no wall stands between, and both say how long that is. */
export function joinOpen(
  joint: Omit<Joint, 'thickness' | 'sigma'>,
  told: Omit<Extract<Misfit, { readonly kind: 'open-lengths' }>, 'kind'>,
  joints: Joint[],
  misfits: Misfit[],
): void {
  const off = Math.abs(told.lengths[0] - told.lengths[1]);
  if (off > playAlong) misfits.push({ kind: 'open-lengths', ...told });
  joints.push({ ...joint, thickness: 0, sigma: openSigma(off) });
}
