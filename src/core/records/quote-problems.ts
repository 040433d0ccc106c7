import { problemAt, type Origin, type Path, type Problem } from '../../base/problem/index.js';
import type { RawOption } from './raw/option.js';

/** A price is good until a day after it was quoted. */
export function quoteProblems(quoted: RawOption['quoted'], path: Path, origin: Origin): readonly Problem[] {
  if (quoted === undefined || quoted === 'none' || quoted.until === undefined || quoted.on <= quoted.until) return [];
  const message = `${quoted.until} is before ${quoted.on}, when it was quoted`;
  const fix = 'it is good from the day it was quoted';
  return [problemAt(origin, [...path, 'until'], 'date-order', message, { fix })];
}
