import { feet } from '../../base/units/index.js';
import type { Level } from '../model/index.js';

/** Feet of each level's floor over the lowest level's, by id, as far as the record says: by `floor`, or where that is missing by how
 *  high both lie above the ground. */
export function elevationsOf(levels: readonly Level[]): ReadonlyMap<string, number> {
  const [lowest] = levels;
  const found = new Map<string, number>();
  for (const level of levels) {
    const { id, floor, aboveGround } = level;
    if (level === lowest) found.set(id, floor === undefined ? 0 : feet(floor));
    else if (floor !== undefined) found.set(id, feet(floor));
    else if (aboveGround !== undefined && lowest?.aboveGround !== undefined)
      found.set(id, feet(aboveGround) - feet(lowest.aboveGround));
  }
  return found;
}
