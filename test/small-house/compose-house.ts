import { makeBook, type Book } from '../../src/core/book/index.js';
import { measureHouse } from '../../src/core/measure/index.js';
import type { Problem } from '../../src/base/problem/index.js';
import { readRecords } from '../../src/core/records/index.js';

/** The text of records by their path, such as `content/rooms/study.md`. */
export type RecordTexts = Readonly<Record<string, string>>;

/** Extras and choices without a day are no faults of a house that is made for a test. */
const never = ['all-added', 'chosen-without-day'];

/** The Book of records as text on a day, by the program itself; every problem fails the test unless `allow` passes it. */
export function composeHouse(texts: RecordTexts, on: string, allow: (problem: Problem) => boolean = () => false): Book {
  const records = readRecords(Object.entries(texts).map(([path, text]) => ({ path, text })));
  const measures = records.value && measureHouse(records.value);
  const book = records.value && measures?.value && makeBook(records.value, measures.value, on);
  const problems = [...records.problems, ...(measures?.problems ?? []), ...(book?.problems ?? [])].filter(
    (problem) => !never.includes(problem.code) && !allow(problem),
  );
  if (problems.length > 0 || !book?.value) throw new Error(JSON.stringify(problems, null, 2));
  return book.value;
}
