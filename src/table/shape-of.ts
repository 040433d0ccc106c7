import type { DoorRow } from '../core/book/index.js';
import { shapeWords } from '../core/opening/index.js';
import { capital } from '../base/units/index.js';

/** `Arched, rise 8"`; nothing for a rectangle. */
export function shapeOf({ shape }: Pick<DoorRow, 'shape'>): string | undefined {
  const words = shape && shapeWords({ shape });
  return words && capital(words);
}
