import { isMetric } from './locale.js';
import { parseLength } from './length.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import type { Length } from './quantity.js';

/** A room's size: east-west, then north-south. */
interface Size {
  readonly eastWest: Length;
  readonly northSouth: Length;
}

/** Reads `24'-0" x 18'-6"`, with x or ×. Both lengths must be more than nothing. */
export function parseSize(text: string): Reading<Size> {
  const parts = plainText(text).split(/ ?[x×X] ?/u);
  const [first, second] = parts;
  if (first === undefined || second === undefined || parts.length !== 2) {
    return unread(
      `'${text}' is not a size`,
      `write east-west x north-south, such as ${isMetric() ? '7.2 m x 5.6 m' : `24'-0" x 18'-6"`}`,
    );
  }
  const [eastWest, northSouth] = [parseLength(first), parseLength(second)];
  if (!eastWest.ok) return eastWest;
  if (!northSouth.ok) return northSouth;
  if (eastWest.value <= 0 || northSouth.value <= 0)
    return unread(`'${text}' is no size`, 'write two lengths of more than 0');
  return read({ eastWest: eastWest.value, northSouth: northSouth.value });
}
