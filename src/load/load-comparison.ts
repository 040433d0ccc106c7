import type { Book } from '../book/index.js';
import { compare, matchOptions } from '../compare/index.js';
import type { Between, Comparison } from '../compare/index.js';
import { diffTexts, readVersion } from '../history/index.js';
import type { Source } from '../model/index.js';
import type { Problem } from '../problem/index.js';
import type { IsoDate } from '../units/index.js';
import { composeBook } from './load-book.js';
import type { LoadedBook } from './load-book.js';
import { loadHouse, measureFiles } from './load-house.js';
import type { LoadedHouse } from './load-house.js';
import { loadSigning } from './load-signing.js';
import { readSnapshot } from './read-snapshot.js';

/** The name of the records as they lie on disk, beside git versions. */
export const onDisk = 'working tree';

export type LoadedComparison =
  | {
      readonly ok: true;
      readonly comparison: Comparison;
      readonly from: LoadedBook & { readonly book: Book };
      readonly to: LoadedBook & { readonly book: Book };
    }
  /** A version that cannot be had, in words; or one whose records have errors. */
  | { readonly ok: false; readonly why: string; readonly problems: readonly Problem[] };

/** Compares two versions of a house (git versions, issues as `issue-2`, or `working tree`) on one day, so that only records differ. */
export async function loadComparison(
  houseDir: string,
  from: string,
  to: string,
  on: IsoDate,
): Promise<LoadedComparison> {
  const [older, newer] = await Promise.all([loadSide(houseDir, from), loadSide(houseDir, to)]);
  if ('why' in older) return { ok: false, why: older.why, problems: [] };
  if ('why' in newer) return { ok: false, why: newer.why, problems: [] };
  const books = { from: composeBook(older, on), to: composeBook(newer, on) };
  if (!books.from.book)
    return { ok: false, why: `the records of '${from}' have errors`, problems: books.from.problems };
  if (!books.to.book) return { ok: false, why: `the records of '${to}' have errors`, problems: books.to.problems };
  const comparison = compare({
    from: books.from.book,
    to: books.to.book,
    labels: { from, to },
    commits: { from: older.commit, to: newer.commit },
    between: composeBetween(books.from.book, books.to.book),
  });
  return {
    ok: true,
    comparison,
    from: { ...books.from, book: books.from.book },
    to: { ...books.to, book: books.to.book },
  };
}

/** Compares two Books that are at hand, such as the snapshot of an issue and today's. */
export function compareBooks(from: Book, to: Book, labels: { readonly from: string; readonly to: string }): Comparison {
  return compare({ from, to, labels, between: composeBetween(from, to) });
}

/** The comparison with the text of each changed record set beside itself, or why git could not be asked for it. */
export async function withTextDiffs(
  comparison: Comparison,
  from: Book,
  to: Book,
): Promise<{ readonly comparison: Comparison; readonly why?: string }> {
  const pairs = comparison.records.map(({ path, renamedFrom }) => {
    const [before, after] = [textOf(from, renamedFrom ?? path), textOf(to, path)];
    return { ...(before !== undefined && { from: before }), ...(after !== undefined && { to: after }) };
  });
  const told = await diffTexts(pairs);
  if (!told.ok) return { comparison, why: told.why };
  const records = comparison.records.map((record, index) => ({ ...record, diff: told.diffs[index] ?? '' }));
  return { comparison: { ...comparison, records } };
}

function textOf(book: Book, path: string): string | undefined {
  return book.sources.find((source) => source.path === path)?.text;
}

type Side = LoadedHouse & { readonly commit?: string };

async function loadSide(houseDir: string, version: string): Promise<Side | { readonly why: string }> {
  if (version === onDisk) return loadHouse(houseDir);
  const issued = await loadIssued(houseDir, version);
  if (issued) return issued;
  const read = await readVersion(houseDir, version);
  return read.ok ? { ...measureFiles(read.files), commit: read.commit } : { why: read.why };
}

/** The records of an issue, out of its snapshot; undefined when no issue has that name. */
async function loadIssued(houseDir: string, version: string): Promise<Side | { readonly why: string } | undefined> {
  const [, number] = /^issue-([1-9]\d*)$/u.exec(version) ?? [];
  if (number === undefined) return undefined;
  const signing = await loadSigning(houseDir);
  const issue = signing?.issues.find((one) => one.number === Number(number));
  if (!issue) return undefined;
  const snapshot = await readSnapshot(houseDir, issue);
  return snapshot.ok ? { ...measureFiles(snapshot.sources), commit: issue.commit } : snapshot;
}

/** Houses of the newer rooms with records of the older side, as far as they hold together. Categories are tried as they
 *  were, and as they are now when an option needs what only the newer ones know. */
function composeBetween(from: Book, to: Book): Between {
  const compose = (isNew: (path: string) => boolean): Book | undefined =>
    composeBook(measureFiles(mix(from, to, isNew)), to.on).book;
  const rooms = (path: string) => path.startsWith('content/rooms/');
  const house = (path: string) => path === 'content/house.md';
  const rules = (path: string) => /^content\/(categories|trades)\//.test(path);
  const choices = compose(rooms) ?? compose((path) => rooms(path) || rules(path));
  const bothNew = (path: string) => rooms(path) || house(path);
  const sameHouse = textOf(from, 'content/house.md') === textOf(to, 'content/house.md');
  const terms = sameHouse && choices ? choices : (compose(bothNew) ?? compose((path) => bothNew(path) || rules(path)));
  return { ...(choices && { choices }), ...(terms && { terms }) };
}

/** The newer records, each as it was before where it was there and is not asked for new. An option that was renamed is as
 *  it was under its newer name. */
function mix(from: Book, to: Book, isNew: (path: string) => boolean): Source[] {
  const before = new Map(from.sources.map((source) => [source.path, source.text]));
  for (const { from: old, to: now } of matchOptions(from, to)) {
    const text = old && before.get(old.source);
    if (now && text !== undefined && !before.has(now.source)) before.set(now.source, text);
  }
  return to.sources.map(({ path, text }) => ({ path, text: isNew(path) ? text : (before.get(path) ?? text) }));
}
