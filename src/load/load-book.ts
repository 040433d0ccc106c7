import { makeBook } from '../book/index.js';
import type { Book } from '../book/index.js';
import type { Slips } from '../calendar/index.js';
import type { Issue } from '../model/index.js';
import { problemAt, sortProblems } from '../problem/index.js';
import type { Problem } from '../problem/index.js';
import { markSigned } from '../signoff/index.js';
import type { IsoDate } from '../units/index.js';
import { loadHouse, measureFiles } from './load-house.js';
import type { LoadedHouse } from './load-house.js';
import { readSnapshot } from './read-snapshot.js';

export interface LoadedBook {
  /** Absent when there is an error among the problems. */
  readonly book?: Book;
  /** The last issue, to compare with; absent while nothing was issued. */
  readonly since?: SinceIssue;
  /** The issue before the last one. */
  readonly before?: SinceIssue;
  /** All of them, in order of file and line. */
  readonly problems: readonly Problem[];
  /** How many record files were read. */
  readonly files: number;
}

export interface SinceIssue {
  readonly issue: number;
  readonly date: IsoDate;
  /** The Book of the records that were issued. */
  readonly book: Book;
}

/** Reads a house folder and composes its Book for a day, marked with what is signed. */
export async function loadBook(houseDir: string, on: IsoDate): Promise<LoadedBook> {
  const house = await loadHouse(houseDir);
  const loaded = composeBook(house, on);
  const issues = house.house?.records.issues ?? [];
  if (!loaded.book || issues.length === 0) return loaded;
  return withIssues(houseDir, loaded, loaded.book, issues);
}

/** The Book of a loaded house for a day, with milestones slipped if asked. */
export function composeBook({ house, problems, files }: LoadedHouse, on: IsoDate, slips?: Slips): LoadedBook {
  const made = house ? makeBook(house.records, house.measures, on, slips) : { problems: [] };
  const all = sortProblems([...problems, ...made.problems]);
  const broken = all.some((problem) => problem.severity === 'error');
  return { problems: all, files, ...(made.value && !broken && { book: made.value }) };
}

async function withIssues(
  houseDir: string,
  loaded: LoadedBook,
  book: Book,
  issues: readonly Issue[],
): Promise<LoadedBook> {
  const [before, last] = [issues.at(-2), issues.at(-1)];
  const signed = issues.findLast(isSigned);
  const problems: Problem[] = [];
  const books = new Map<number, Book>();
  for (const issue of new Set([signed, before, last])) {
    if (!issue) continue;
    const snapshot = await readSnapshot(houseDir, issue);
    const then = snapshot.ok ? composeBook(measureFiles(snapshot.sources), book.on).book : undefined;
    if (then) books.set(issue.number, then);
    else problems.push(snapshotProblem(issue, snapshot.ok ? 'its records cannot be read any more' : snapshot.why));
  }
  const [thenSigned, thenBefore, thenLast] = [signed, before, last].map((issue) => books.get(issue?.number ?? 0));
  const marked = signed && thenSigned ? markSigned(book, thenSigned, signed.number) : book;
  return {
    ...loaded,
    book: marked,
    problems: sortProblems([...loaded.problems, ...problems]),
    ...(last && thenLast && { since: { issue: last.number, date: last.date, book: thenLast } }),
    ...(before && thenBefore && { before: { issue: before.number, date: before.date, book: thenBefore } }),
  };
}

/** An issue counts as signed when owner and builder both signed it. */
function isSigned({ signatures }: Issue): boolean {
  return (['owner', 'builder'] as const).every((role) => signatures.some((signature) => signature.role === role));
}

function snapshotProblem({ origin, number }: Issue, why: string): Problem {
  const fix = 'bring the file back from git; what was issued is proven by it';
  return problemAt(origin, ['digest'], 'snapshot-missing', `issue ${number}: ${why}`, { fix, severity: 'warning' });
}
