import type { Book } from '../core/book/index.js';
import type { Problem } from '../base/problem/index.js';
import { parseDay } from '../base/units/index.js';
import { loadBook } from '../disk/load/index.js';

export interface ReadBook {
  /** Absent when there is an error among the problems. */
  readonly book?: Book;
  /** All of them, in order of file and line. */
  readonly problems: readonly Problem[];
}

/** Reads a house folder, the one that holds `content/`, and makes its Book as it stands on a day, written `2026-04-20`: what
 *  `bookmatch build --json` prints. What is wrong in the records is told in `problems` and does not reject; a day that is none rejects with a
 *  RangeError, and so does a disk that fails, with its own error. One house at a time: wait for the one before. */
export async function readBook(houseDir: string, on: string): Promise<ReadBook> {
  const day = parseDay(on);
  if (!day.ok) throw new RangeError(`${on}: ${day.why}`);
  const { book, problems } = await loadBook(houseDir, day.value);
  return { problems, ...(book && { book }) };
}
