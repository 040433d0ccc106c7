import { plainText } from './plain-text.js';
import { read, unread } from './reading.js';
import type { Reading } from './reading.js';

/** The eight bearings of a walk, clockwise from north. */
export const compass = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;
export type CompassBearing = (typeof compass)[number];

const short: Readonly<Record<string, CompassBearing>> = {
  n: 'north',
  ne: 'north-east',
  e: 'east',
  se: 'south-east',
  s: 'south',
  sw: 'south-west',
  w: 'west',
  nw: 'north-west',
};

/** Reads `north`, `north-east` … Other spellings are refused with the one to write, so that records stay alike. */
export function parseBearing(text: string): Reading<CompassBearing> {
  const exact = compass.find((bearing) => bearing === text);
  if (exact) return read(exact);
  const word = plainText(text).toLowerCase().replace(/[ -]/gu, '');
  const meant = compass.find((bearing) => bearing.replace('-', '') === word) ?? short[word];
  return unread(`'${text}' is not a bearing`, meant ? `did you mean ${meant}?` : `write one of ${compass.join(', ')}`);
}
