import { patchFrom, type Patch, type Xy } from '../../base/geometry/index.js';
import type { Side } from './laid-room.js';

/** How deep along a wall it is looked whether a room stands over it, in feet. */
export const stripDepth = 0.25;

/** A thin strip along a stretch of a side, just inside the room that begins at `at`. */
export function stripInside({ from, along, out }: Side, start: number, end: number, at: Xy): Patch {
  const place = (by: number, inward: number): Xy => ({
    x: at.x + from.x + along.x * by - out.x * inward,
    y: at.y + from.y + along.y * by - out.y * inward,
  });
  return patchFrom([place(start, 0), place(end, 0), place(end, stripDepth), place(start, stripDepth)]);
}
