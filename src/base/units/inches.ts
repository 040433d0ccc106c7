import type { Length } from './quantity.js';

const nanometresPerInch = 25_400_000;

/** A length in inches, as a float. Source: 1 in = 25.4 mm exactly, NIST SP 811 B.8. */
export function inches(length: Length): number {
  return length / nanometresPerInch;
}

/** Inches as the nearest whole nanometre. */
export function fromInches(inches: number): Length {
  return Math.round(inches * nanometresPerInch) as Length;
}
