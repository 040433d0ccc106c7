import type { Book } from '../../core/book/index.js';
import { isSigned, type Issue } from '../../core/model/index.js';
import { problemAt, sortProblems, type Outcome, type Problem } from '../../base/problem/index.js';
import { markSigned } from '../../signoff/index.js';
import type { IsoDate } from '../../base/units/index.js';
import type { ComposedBook } from './compose-book.js';
import { openHouse, type OpenHouse } from './open-house.js';
import { firstContract } from './first-contract.js';

export interface LoadedBook extends ComposedBook {
  /** The last issue, to compare with; absent while nothing was issued. */
  readonly since?: SinceIssue;
  /** The issue before the last one. */
  readonly before?: SinceIssue;
  /** The last issue that owner and builder signed. */
  readonly signed?: SinceIssue;
}

export interface SinceIssue {
  readonly issue: number;
  readonly date: IsoDate;
  /** Of its snapshot, which has it. */
  readonly digest: string;
  /** The Book of the records that were issued, or why it cannot be made any more. Most commands never ask for it. */
  readonly read: () => Outcome<Book>;
}

/** Reads a house folder and composes its Book for a day, marked with what is signed. */
export function loadBook(houseDir: string, on: IsoDate): Promise<LoadedBook> {
  return bookOf(openHouse(houseDir), on);
}

/** The Book of a house's records on disk for a day, marked with what is signed, unless nobody asks for that. */
export async function bookOf(open: OpenHouse, on: IsoDate, { marked = true } = {}): Promise<LoadedBook> {
  await open.shelves.fetch();
  const current = await open.current();
  const issues = (current.house?.records.issues ?? []).filter((issue) => !issue.void);
  const first = await firstContract(open, issues);
  const loaded = open.compose(current, on, undefined, first && 'sum' in first ? first.sum : undefined);
  await open.shelves.store();
  if (!loaded.book || issues.length === 0) return loaded;
  const issued = await withIssues(open, loaded, loaded.book, issues, first?.issue);
  return marked ? markLoaded(issued, loaded.book) : issued;
}

async function withIssues(
  open: OpenHouse,
  loaded: ComposedBook,
  book: Book,
  issues: readonly Issue[],
  first: Issue | undefined,
): Promise<LoadedBook> {
  const [before, last] = [issues.at(-2), issues.at(-1)];
  const signed = issues.findLast(isSigned);
  const problems: Problem[] = [];
  const readers = new Map<Issue, () => Outcome<Book>>();
  for (const issue of new Set([first, signed, before, last])) {
    if (!issue) continue;
    const snapshot = await open.snapshot(issue);
    if (snapshot.ok) readers.set(issue, () => issuedBook(issue, open.compose(open.read(snapshot.sources), book.on)));
    else problems.push(snapshotProblem(issue, snapshot.why));
  }
  const since = (issue: Issue | undefined): SinceIssue | undefined => {
    const read = issue && readers.get(issue);
    return issue && read && { issue: issue.number, date: issue.date, digest: issue.digest, read };
  };
  const [sinceLast, sinceBefore, sinceSigned] = [since(last), since(before), since(signed)];
  return {
    ...loaded,
    book,
    problems: sortProblems([...loaded.problems, ...problems]),
    ...(sinceLast && { since: sinceLast }),
    ...(sinceBefore && { before: sinceBefore }),
    ...(sinceSigned && { signed: sinceSigned }),
  };
}

function markLoaded(loaded: LoadedBook, book: Book): LoadedBook {
  const { signed } = loaded;
  if (!signed) return loaded;
  const then = signed.read();
  return {
    ...loaded,
    problems: sortProblems([...loaded.problems, ...then.problems]),
    ...(then.value && { book: markSigned(book, then.value, signed.issue) }),
  };
}

function issuedBook(issue: Issue, { book }: ComposedBook): Outcome<Book> {
  if (book) return { value: book, problems: [] };
  return { problems: [snapshotProblem(issue, `the records of issue ${issue.number} cannot be read any more`)] };
}

function snapshotProblem({ origin }: Issue, why: string): Problem {
  const fix = 'bring the file back from git; what was issued is proven by it';
  return problemAt(origin, ['digest'], 'snapshot-missing', why, { fix, severity: 'warning' });
}
