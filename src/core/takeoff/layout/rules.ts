import type { Length } from '../../../base/units/index.js';
import type { LayoutRules } from './layout.js';

const inch = 25_400_000;

/** Width of a saw cut, 1/8", where none is given. Common practice, no source. */
export const usualKerf = (inch / 8) as Length;

/** Matched boards: end courses equal and at least half a face, end joints 2'-0" apart in neighbouring courses, no piece
 *  under 1'-4". Common practice, no source. */
export const boardRules: LayoutRules = {
  grid: 'each',
  endCourses: 'balanced',
  leastEndShare: 0.5,
  stagger: (24 * inch) as Length,
  leastPiece: (16 * inch) as Length,
  reuseOffcuts: true,
  reuseRips: false,
  joints: 'any-span',
};

/** Sheets: the first course full where the last is then at least a quarter sheet wide, end joints 4'-0" apart, no piece
 *  under 2'-0", strips used. Common practice, no source. */
export const sheetRules: LayoutRules = {
  grid: 'each',
  endCourses: 'full-first',
  leastEndShare: 0.25,
  stagger: (48 * inch) as Length,
  leastPiece: (24 * inch) as Length,
  reuseOffcuts: true,
  reuseRips: true,
  joints: 'any-span',
};
