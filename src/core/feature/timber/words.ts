import { feet, printLength, type Length } from '../../../base/units/index.js';
import type { Timber } from './read.js';

type Section = Pick<Timber, 'width' | 'depth' | 'isMetric'>;

/** `7 1/2" × 11 1/2"`, or `150 mm × 250 mm` as the record has it. */
export function sectionWords({ width, depth, isMetric }: Section): string {
  const side = (length: Length): string => (isMetric ? `${length / nanometresPerMillimetre} mm` : printLength(length));
  return `${side(width)} × ${side(depth)}`;
}

const nanometresPerMillimetre = 1_000_000;

/** `24'-0" clear, 6" and 6" at the ends`. */
export function lengthWords({ length, ends: [first, second] }: Pick<Timber, 'length' | 'ends'>): string {
  const clear = `${printLength(length)} clear`;
  return first + second === 0 ? clear : `${clear}, ${printLength(first)} and ${printLength(second)} at the ends`;
}

/** Pounds of one piece of so many pounds for each cubic foot. */
export function poundsByDensity({ width, depth }: Section, length: Length, density: number): number {
  return feet(width) * feet(depth) * feet(length) * density;
}
