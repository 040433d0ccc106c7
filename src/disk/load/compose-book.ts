import { makeBook, type Book, type Composing } from '../../core/book/index.js';
import { hasErrors, sortProblems, type Problem } from '../../base/problem/index.js';
import type { IsoDate } from '../../base/units/index.js';
import type { LoadedHouse } from './load-house.js';

export interface ComposedBook {
  /** Absent when there is an error among the problems. */
  readonly book?: Book;
  /** All of them, in order of file and line. */
  readonly problems: readonly Problem[];
  /** How many record files were read. */
  readonly files: number;
}

/** The Book of a loaded house for a day, with milestones slipped if asked. */
export function composeBook(
  { house, problems, files }: LoadedHouse,
  on: IsoDate,
  composing: Composing = {},
): ComposedBook {
  const made = house
    ? makeBook(house.records, house.measures, on, { ...composing, laid: house.laid })
    : { problems: [] };
  const all = sortProblems([...problems, ...made.problems]);
  return { problems: all, files, ...(made.value && !hasErrors(all) && { book: made.value }) };
}
