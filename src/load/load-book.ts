import { makeBook } from '../book/index.js';
import type { Book } from '../book/index.js';
import type { Slips } from '../calendar/index.js';
import type { Issue, Source } from '../model/index.js';
import { problemAt, sortProblems } from '../problem/index.js';
import type { Outcome, Problem } from '../problem/index.js';
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
  /** The Book of the records that were issued, or why it cannot be made any more. Made once. */
  readonly read: () => Outcome<Book>;
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
  const readers = new Map<Issue, () => Outcome<Book>>();
  for (const issue of new Set([signed, before, last])) {
    if (!issue) continue;
    const snapshot = await readSnapshot(houseDir, issue);
    if (snapshot.ok) readers.set(issue, issuedBook(issue, snapshot.sources, book.on));
    else problems.push(snapshotProblem(issue, snapshot.why));
  }
  const then = signed && readers.get(signed)?.();
  problems.push(...(then?.problems ?? []));
  const since = (issue: Issue | undefined): SinceIssue | undefined => {
    const read = issue && readers.get(issue);
    return issue && read && { issue: issue.number, date: issue.date, read };
  };
  const [sinceLast, sinceBefore] = [since(last), since(before)];
  return {
    ...loaded,
    book: signed && then?.value ? markSigned(book, then.value, signed.number) : book,
    problems: sortProblems([...loaded.problems, ...problems]),
    ...(sinceLast && { since: sinceLast }),
    ...(sinceBefore && { before: sinceBefore }),
  };
}

/** Makes the Book of an issue's own records when it is first asked for: most commands never do. */
function issuedBook(issue: Issue, sources: readonly Source[], on: IsoDate): () => Outcome<Book> {
  let made: Outcome<Book> | undefined;
  return () => {
    made ??= makeIssuedBook(issue, sources, on);
    return made;
  };
}

function makeIssuedBook(issue: Issue, sources: readonly Source[], on: IsoDate): Outcome<Book> {
  const { book } = composeBook(measureFiles(sources), on);
  if (book) return { value: book, problems: [] };
  return { problems: [snapshotProblem(issue, `the records of issue ${issue.number} cannot be read any more`)] };
}

/** An issue counts as signed when owner and builder both signed it. */
function isSigned({ signatures }: Issue): boolean {
  return (['owner', 'builder'] as const).every((role) => signatures.some((signature) => signature.role === role));
}

function snapshotProblem({ origin }: Issue, why: string): Problem {
  const fix = 'bring the file back from git; what was issued is proven by it';
  return problemAt(origin, ['digest'], 'snapshot-missing', why, { fix, severity: 'warning' });
}
