import type { HouseAlternative } from '../model/index.js';
import { hasErrors, problemIn, type Problem } from '../../base/problem/index.js';
import type { Checked } from './checked-record.js';
import type { RawAlternative } from './raw/alternative.js';

/** An alternative's record, as far as it can be read. */
export interface AlternativeDraft {
  readonly record: Checked<RawAlternative>;
  readonly whole?: HouseAlternative;
  readonly problems: readonly Problem[];
}

export function readAlternative(record: Checked<RawAlternative>): AlternativeDraft {
  const { slug, raw, body, origin } = record;
  const { name, by, on, throughout = {}, choices = {} } = raw;
  const isEmpty = raw.choices === undefined && raw.throughout === undefined;
  const isTold = record.meant('choices') || record.meant('throughout');
  const problems = [...record.problems, ...(isEmpty && !isTold ? [emptyProblem(record)] : [])];
  if (hasErrors(problems)) return { record, problems };
  const whole: HouseAlternative = {
    slug,
    name,
    ...(by !== undefined && { by }),
    ...(on !== undefined && { on }),
    throughout: Object.entries(throughout).map(([category, option]) => ({ category, option })),
    choices: Object.entries(choices).map(([selection, option]) => ({ selection, option })),
    body,
    origin,
  };
  return { record, whole, problems };
}

function emptyProblem({ origin }: Checked<RawAlternative>): Problem {
  const fix = 'write choices, a map of room/category/place to an option; or throughout, a map of categories';
  return problemIn(origin, { line: 1, column: 1 }, 'alternative-empty', 'the alternative chooses nothing', { fix });
}
