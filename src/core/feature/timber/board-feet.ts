import { feet, type Length } from '../../../base/units/index.js';

/** Nominal inches of a dressed side: the next whole inch, and never under 1. Source: PS 20, whose dressed sizes lie 1/4" to
 *  3/4" under the nominal ones; 1x6 is 3/4" × 5-1/2". */
export function nominalInches(dressed: Length): number {
  return Math.max(1, Math.ceil(feet(dressed) * 12 - 1e-6));
}

/** Board feet of one piece: nominal thickness × width in inches × length in feet / 12, stock under 1" counted as 1".
 *  Source: Griffith, Carpentry (1916), section 77. */
export function boardFeet(thickness: number, width: number, lengthFeet: number): number {
  return (Math.max(1, thickness) * width * lengthFeet) / 12;
}
