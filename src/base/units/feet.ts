import type { Length } from './quantity.js';

const nanometresPerFoot = 304_800_000;

/** A length in feet, as a float: whole inches and halves come out clean. Source: 1 ft = 0.3048 m exactly, NIST SP 811 B.8. */
export function feet(length: Length): number {
  return length / nanometresPerFoot;
}

/** Feet as the nearest whole nanometre. */
export function fromFeet(feet: number): Length {
  return Math.round(feet * nanometresPerFoot) as Length;
}
