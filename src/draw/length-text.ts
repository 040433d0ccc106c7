import { printLength, type Length } from '../base/units/index.js';

/** A distance on a drawing, in nanometres, as written beside it: `14'-6 1/2"`. */
export function lengthText(distance: number): string {
  return printLength(distance as Length);
}
