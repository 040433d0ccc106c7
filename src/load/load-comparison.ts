import { compare } from '../compare/index.js';
import type { Comparison } from '../compare/index.js';
import { readVersion } from '../history/index.js';
import type { Source } from '../model/index.js';
import type { Problem } from '../problem/index.js';
import type { IsoDate } from '../units/index.js';
import { composeBook } from './load-book.js';
import type { LoadedBook } from './load-book.js';
import { loadHouse, measureFiles } from './load-house.js';
import type { LoadedHouse } from './load-house.js';
import { readSnapshot } from './read-snapshot.js';

/** The name of the records as they lie on disk, beside git versions. */
export const onDisk = 'working tree';

export type LoadedComparison =
  | { readonly ok: true; readonly comparison: Comparison; readonly from: LoadedBook; readonly to: LoadedBook }
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
  for (const side of [older, newer]) if ('why' in side) return { ok: false, why: side.why, problems: [] };
  if ('why' in older || 'why' in newer) return { ok: false, why: '', problems: [] };
  const books = { from: composeBook(older, on), to: composeBook(newer, on) };
  if (!books.from.book)
    return { ok: false, why: `the records of '${from}' have errors`, problems: books.from.problems };
  if (!books.to.book) return { ok: false, why: `the records of '${to}' have errors`, problems: books.to.problems };
  const mixed = composeBook(measureFiles(newRoomsAtOldPrices(older.sources, newer.sources)), on).book;
  const comparison = compare({
    from: books.from.book,
    to: books.to.book,
    labels: { from, to },
    ...(mixed && { newRoomsAtOldPrices: mixed }),
  });
  return { ok: true, comparison, ...books };
}

async function loadSide(houseDir: string, version: string): Promise<LoadedHouse | { readonly why: string }> {
  if (version === onDisk) return loadHouse(houseDir);
  const issued = /^issue-([1-9]\d*)$/u.exec(version);
  if (issued) return loadIssued(houseDir, Number(issued[1]));
  const read = await readVersion(houseDir, version);
  return read.ok ? measureFiles(read.files) : { why: read.why };
}

/** The records of an issue, out of its snapshot. */
async function loadIssued(houseDir: string, number: number): Promise<LoadedHouse | { readonly why: string }> {
  const { house } = await loadHouse(houseDir);
  const issues = house?.records.issues ?? [];
  const issue = issues.find((one) => one.number === number);
  if (!issue) {
    const last = issues.at(-1);
    return {
      why: `there is no issue ${number}: ${last ? `the last is issue-${last.number}` : 'nothing was issued yet'}`,
    };
  }
  const snapshot = await readSnapshot(houseDir, issue);
  return snapshot.ok ? measureFiles(snapshot.sources) : snapshot;
}

/** The newer rooms, with every other record as it was before where it was there: what the choices alone do. */
function newRoomsAtOldPrices(older: readonly Source[], newer: readonly Source[]): Source[] {
  const before = new Map(older.map((source) => [source.path, source]));
  return newer.map((source) => {
    if (source.path.startsWith('content/rooms/')) return source;
    return before.get(source.path) ?? source;
  });
}
