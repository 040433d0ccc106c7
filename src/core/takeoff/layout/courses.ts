import type { Length } from '../../../base/units/index.js';
import type { LayoutRules } from './layout.js';

/** Under this, 0.1 mm, nothing is ripped and no course is added. */
const hairline = 100_000;

/** Widths of the courses that cover `extent`, in order. As few as can be; only the first and last are narrower than
 *  `face`. Two equal end courses come out between half a face and a face: with n courses they share extent − (n − 2) faces,
 *  which is more than one face and at most two. */
export function courseWidths(
  extent: number,
  face: number,
  rules: Pick<LayoutRules, 'endCourses' | 'leastEndShare'>,
): readonly number[] {
  if (extent <= 0) return [];
  const count = Math.max(1, Math.ceil((extent - hairline) / face));
  if (count === 1) return [extent];
  const rest = extent - (count - 1) * face;
  const middle = Array.from({ length: count - 2 }, () => face);
  const fullFirst =
    rest >= face - hairline || (rules.endCourses === 'full-first' && rest >= rules.leastEndShare * face);
  if (fullFirst) return [face, ...middle, rest];
  const first = Math.floor((face + rest) / 2);
  return [first, ...middle, face + rest - first];
}

export function isRipped(width: number, face: number): boolean {
  return width < face - hairline;
}

const sixteenth = 25_400_000 / 16;

/** As a tape shows it. */
export function inSixteenths(length: number): Length {
  return (Math.round(length / sixteenth) * sixteenth) as Length;
}
