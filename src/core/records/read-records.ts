import { byText, inLocale, keepSame } from '../../base/units/index.js';
import { featureKinds, type FeatureKind } from '../feature/index.js';
import type { Category, Records, Source } from '../model/index.js';
import { hasErrors, problemIn, sortProblems, type Outcome, type Problem } from '../../base/problem/index.js';
import type { Draft } from './draft.js';
import { notations } from './formats.js';
import { unknownMarks } from './marks.js';
import { byNumber } from './order.js';
import { draftReader, type RecordShelves } from './read-draft.js';
import { references } from './reference/index.js';
import { withPrintedNames } from './reference/printed-name.js';

/** Reads the files of a house into records: taken apart, checked against the schemas and each other. Everything that is wrong
 *  is reported at once, in order of place; there is a value only when nothing is an error. */
export type ReadRecords = (files: readonly Source[]) => Outcome<Records>;

/** Reads one house after another. A record that several of them have is read once, and is the same object in each. */
export function recordReader(
  kinds: readonly FeatureKind<unknown>[] = featureKinds,
  shelves: RecordShelves = {},
): ReadRecords {
  const readers = { readDraft: draftReader(kinds, shelves), marksOf: keepSame(unknownMarks) };
  return (files) => checkReferences(files, readers);
}

/** Reads one house. */
export function readRecords(files: readonly Source[], kinds?: readonly FeatureKind<unknown>[]): Outcome<Records> {
  return recordReader(kinds)(files);
}

interface Readers {
  readonly readDraft: ReturnType<typeof draftReader>;
  readonly marksOf: typeof unknownMarks;
}

function checkReferences(files: readonly Source[], { readDraft, marksOf }: Readers): Outcome<Records> {
  const sources = files.toSorted((a, b) => byText(a.path, b.path));
  const { draft, problems, locale } = readDraft(sources);
  return inLocale(locale, () =>
    checkDraft(sources, draft, [...problems, ...sources.flatMap((source) => marksOf(source))]),
  );
}

/** `own`: what is wrong in each record by itself. */
function checkDraft(sources: readonly Source[], draft: Draft, own: readonly Problem[]): Outcome<Records> {
  const hasHouse = sources.some(({ path }) => path === 'content/house.md');
  const problems = sortProblems([
    ...withPrintedNames(hasHouse ? own : own.filter(({ code }) => !readings.has(code)), draft),
    ...(hasHouse ? [] : [houseMissing()]),
    ...references.flatMap((check) => check(draft)),
  ]);
  const value = hasErrors(problems) ? undefined : wholeRecords(draft, sources);
  return { problems, ...(value && { value }) };
}

/** What cannot be said of a record while nobody knows in which units and which currency it is written. */
const readings: ReadonlySet<string> = new Set(Object.values(notations).map(({ code }) => code));

function houseMissing(): Problem {
  const fix = 'a house folder holds content/house.md';
  return problemIn(
    { file: 'content/house.md', text: '' },
    { line: 1, column: 1 },
    'house-missing',
    'there is no content/house.md',
    { fix },
  );
}

function wholeRecords(draft: Draft, sources: readonly Source[]): Records | undefined {
  if (!draft.house?.whole) return undefined;
  const whole = <T>({ whole }: { readonly whole?: T }): readonly T[] => (whole === undefined ? [] : [whole]);
  const categories = draft.categories
    .flatMap(whole)
    .toSorted((a, b) => a.sequence - b.sequence || byText(a.slug, b.slug));
  const place = new Map(categories.map(({ slug }, index) => [slug, index]));
  const options = draft.options.flatMap(whole);
  return {
    house: draft.house.whole,
    rooms: draft.rooms.flatMap(whole).toSorted((a, b) => byNumber(a.number, b.number) || byText(a.slug, b.slug)),
    options: options.toSorted(
      (a, b) => (place.get(a.category) ?? 0) - (place.get(b.category) ?? 0) || byText(a.slug, b.slug),
    ),
    categories,
    trades: draft.trades
      .flatMap(whole)
      .toSorted((a, b) => firstWork(a.slug, categories) - firstWork(b.slug, categories) || byText(a.slug, b.slug)),
    alternatives: draft.alternatives.flatMap(whole).toSorted((a, b) => byText(a.slug, b.slug)),
    priceLists: draft.priceLists.flatMap(whole).toSorted((a, b) => byText(a.slug, b.slug)),
    changes: draft.changes.flatMap(whole).toSorted((a, b) => a.number - b.number),
    issues: draft.issues.flatMap(whole).toSorted((a, b) => a.number - b.number),
    sources,
  };
}

/** Place of a trade's first category in the working order; last when it has none. */
function firstWork(trade: string, categories: readonly Category[]): number {
  const first = categories.findIndex((category) => category.trade === trade);
  return first < 0 ? categories.length : first;
}
