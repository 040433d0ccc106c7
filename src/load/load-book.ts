import { makeBook } from '../book/index.js';
import type { Book } from '../book/index.js';
import type { Slips } from '../calendar/index.js';
import { sortProblems } from '../problem/index.js';
import type { Problem } from '../problem/index.js';
import type { IsoDate } from '../units/index.js';
import { loadHouse } from './load-house.js';
import type { LoadedHouse } from './load-house.js';

export interface LoadedBook {
  /** Absent when there is an error among the problems. */
  readonly book?: Book;
  /** All of them, in order of file and line. */
  readonly problems: readonly Problem[];
  /** How many record files were read. */
  readonly files: number;
}

/** Reads a house folder and composes its Book for a day. */
export async function loadBook(houseDir: string, on: IsoDate): Promise<LoadedBook> {
  return composeBook(await loadHouse(houseDir), on);
}

/** The Book of a loaded house for a day, with milestones slipped if asked. */
export function composeBook({ house, problems, files }: LoadedHouse, on: IsoDate, slips?: Slips): LoadedBook {
  const made = house ? makeBook(house.records, house.measures, on, slips) : { problems: [] };
  const all = sortProblems([...problems, ...made.problems]);
  const broken = all.some((problem) => problem.severity === 'error');
  return { problems: all, files, ...(made.value && !broken && { book: made.value }) };
}
