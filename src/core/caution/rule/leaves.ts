import { minus, patchFrom, type Patch, type Xy } from '../../../base/geometry/index.js';
import { feet } from '../../../base/units/index.js';
import { isDownToFloor, type OpeningMeasure } from '../../model/index.js';
import type { RoomView } from '../view.js';
import { openingLine } from './glazing.js';

/** A leaf of a door where it swings: about its hinge, from closed to square with the wall, in feet of its room's own plan. */
export interface Leaf {
  readonly mark: string;
  readonly hinge: Xy;
  readonly width: number;
  readonly sweep: Patch;
}

/** Straight pieces that stand for a quarter circle: of a leaf of 3 ft within 1/32". */
const pieces = 24;

/** Leaves that swing into a room, as far as their records say about which side. */
export function leavesIn(room: RoomView): readonly Leaf[] {
  return room.measure.openings.filter((opening) => swingsInto(room, opening)).flatMap((door) => leavesOf(room, door));
}

function swingsInto({ slug }: RoomView, opening: OpeningMeasure): boolean {
  const { kind, operation, swing, own } = opening;
  if (kind !== 'door' || !isDownToFloor(opening)) return false;
  return (operation === 'swing' || operation === 'double') && (swing === undefined ? own : swing === slug);
}

function leavesOf(room: RoomView, { mark, wall, at, width, operation, hinge }: OpeningMeasure): readonly Leaf[] {
  const line = openingLine(room, { wall, at, width });
  if (!line) return [];
  const half = feet(width) / 2;
  if (operation === 'double') return [leafOf(mark, line, 'left', half), leafOf(mark, line, 'right', half)];
  return hinge === undefined ? [] : [leafOf(mark, line, hinge, feet(width))];
}

/** The room is to the right of the way from an opening's left side to its right one. */
function leafOf(mark: string, [left, right]: readonly [Xy, Xy], side: 'left' | 'right', width: number): Leaf {
  const [hinge, latch, turn] = side === 'left' ? [left, right, -1] : [right, left, 1];
  const closed = minus(latch, hinge);
  const start = Math.atan2(closed.y, closed.x);
  const arc = Array.from({ length: pieces + 1 }, (_, index): Xy => {
    const angle = start + (turn * index * Math.PI) / (2 * pieces);
    return { x: hinge.x + width * Math.cos(angle), y: hinge.y + width * Math.sin(angle) };
  });
  return { mark, hinge, width, sweep: patchFrom([hinge, ...arc]) };
}
