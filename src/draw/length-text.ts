import { printLength } from '../units/index.js';
import type { Length } from '../units/index.js';

/** A distance on a drawing, in nanometres, as written beside it: `14'-6 1/2"`. */
export function lengthText(distance: number): string {
  return printLength(distance as Length);
}
