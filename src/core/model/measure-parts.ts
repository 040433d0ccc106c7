import type { Unit } from '../../base/units/index.js';

/** The parts of an option that each way of measuring yields, each with its unit; the first is the main one. The loader
 *  checks prices against it, the take-off's conventions yield what it says. */
export const measureParts = {
  area: { main: 'sq ft' },
  run: { main: 'lin ft' },
  each: { main: 'each' },
  stone: { flats: 'sq ft', corners: 'lin ft' },
  railing: { rail: 'lin ft', post: 'each', handrail: 'lin ft', bracket: 'each' },
  stair: { tread: 'each', riser: 'each' },
  lump: { main: 'lump' },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Unit>>>>;

/** Parts that an option may leave without a price of their own: they are counted, and paid with its first part. */
export const partsInTheFirst: readonly string[] = ['handrail', 'bracket'];
