import { optionId, type Book, type PricedChoices } from '../../core/book/index.js';
import { compare, matchOptions, type Between, type Comparison } from '../../core/compare/index.js';
import { diffTexts } from '../history/index.js';
import { isShared, pathInHouse } from '../../core/records/index.js';
import type { Source } from '../../core/model/index.js';
import type { Problem } from '../../base/problem/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { makeComposer, type Composer } from './composer.js';
import type { OpenHouse } from './open-house.js';

export type LoadedComparison =
  | {
      readonly ok: true;
      readonly comparison: Comparison;
      readonly from: Book;
      readonly to: Book;
    }
  /** A version that cannot be had, in words; or one whose records have errors. */
  | { readonly ok: false; readonly why: string; readonly problems: readonly Problem[] };

/** Compares two versions of a house (git versions, issues as `issue-2`, or what is on disk) on one day, so that only records differ. */
export async function loadComparison(
  open: OpenHouse,
  from: string,
  to: string,
  on: IsoDate,
): Promise<LoadedComparison> {
  const [older, newer] = await Promise.all([open.version(from), open.version(to)]);
  if (!older.ok) return { ...older, problems: [] };
  if (!newer.ok) return { ...newer, problems: [] };
  const [then, now] = [open.compose(older.house, on), open.compose(newer.house, on)];
  if (!then.book) return { ok: false, why: `the records of '${from}' have errors`, problems: then.problems };
  if (!now.book) return { ok: false, why: `the records of '${to}' have errors`, problems: now.problems };
  const comparison = compare({
    from: then.book,
    to: now.book,
    labels: { from, to },
    commits: { from: older.commit, to: newer.commit },
    between: priceBetween(then.book, now.book, open),
  });
  return { ok: true, comparison, from: then.book, to: now.book };
}

/** Compares two Books that are at hand, such as the snapshot of an issue and today's. `composer` knows what else the run has
 *  read. */
export function compareBooks(
  from: Book,
  to: Book,
  labels: { readonly from: string; readonly to: string },
  composer: Composer = makeComposer(),
): Comparison {
  return compare({ from, to, labels, between: priceBetween(from, to, composer) });
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

/** Houses of the newer rooms with records of the older side, as far as they hold together. Categories are tried as they
 *  were, and as they are now when an option needs what only the newer ones know. */
function priceBetween(from: Book, to: Book, { read, price }: Composer): Between {
  const newer = new Set(to.sources);
  const mixed = (isNew: (path: string) => boolean): PricedChoices | undefined => {
    const sources = mix(from, to, isNew);
    return sources.every((source) => newer.has(source)) ? to : price(read(sources));
  };
  // Change orders are of the newer side with its rooms: they say what mark-up is on the net of already.
  const rooms = (path: string) => /^content\/(rooms|changes)\//.test(path);
  const house = (path: string) => path === 'content/house.md';
  const rules = (path: string) => /^content\/(categories|trades)\//.test(pathInHouse(path));
  // An option that nothing counted before has no older price: it may have been a draft then, which cannot be chosen.
  const fresh = freshOptions(from, to);
  const choices =
    mixed(rooms) ??
    mixed((path) => rooms(path) || rules(path)) ??
    mixed((path) => rooms(path) || rules(path) || fresh.has(path));
  const bothNew = (path: string) => rooms(path) || house(path);
  const sameHouse = textOf(from, 'content/house.md') === textOf(to, 'content/house.md');
  const terms =
    sameHouse && choices
      ? choices
      : (mixed(bothNew) ??
        mixed((path) => bothNew(path) || rules(path)) ??
        mixed((path) => bothNew(path) || rules(path) || fresh.has(path)));
  const isSame = sharedText(from) === sharedText(to);
  const ownRecords = isSame ? undefined : mixed((path) => !isShared(path));
  return { ...(choices && { choices }), ...(terms && { terms }), ...(ownRecords && { ownRecords }) };
}

/** Records of options that the newer house counts and the older one did not. */
function freshOptions(from: Book, to: Book): ReadonlySet<string> {
  const counted = ({ selections, options }: Book): ReadonlySet<string> => {
    const ids = new Set(
      selections.flatMap(({ category, counted: slug }) => (slug === undefined ? [] : optionId(category, slug))),
    );
    return new Set(options.filter(({ id }) => ids.has(id)).map(({ source }) => source));
  };
  const before = counted(from);
  return new Set([...counted(to)].filter((path) => !before.has(path)));
}

/** All that shared folders give a house. */
function sharedText({ sources }: Book): string {
  return JSON.stringify(sources.filter(({ path }) => isShared(path)));
}

/** The newer records, each as it was before where it was there and is not asked for new. An option that was renamed is as
 *  it was under its newer name. */
function mix(from: Book, to: Book, isNew: (path: string) => boolean): Source[] {
  const before = new Map(from.sources.map((source) => [source.path, source.text]));
  for (const { from: old, to: now } of matchOptions(from, to)) {
    const text = old && before.get(old.source);
    if (now && text !== undefined && !before.has(now.source)) before.set(now.source, text);
  }
  // An alternative chooses nothing, and may name what only its own side has.
  return to.sources
    .filter(({ path }) => !path.startsWith('content/alternatives/'))
    .map((source) => {
      const text = isNew(source.path) ? source.text : (before.get(source.path) ?? source.text);
      // The same object where it says the same: what was made of it is kept by it.
      return text === source.text ? source : { path: source.path, text };
    });
}
