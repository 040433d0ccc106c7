import type { FeatureKind } from '../feature/index.js';
import type { AttributeRule, Source } from '../model/index.js';
import type { Outcome, Problem } from '../problem/index.js';
import { checkRecord } from './checked-record.js';
import type { Checked } from './checked-record.js';
import type { Draft } from './draft.js';
import { readFrontMatter } from './front-matter.js';
import type { FrontMatter } from './front-matter.js';
import type { RawCategory } from './raw/category.js';
import type { RawChangeOrder } from './raw/change-order.js';
import type { RawHouse } from './raw/house.js';
import type { RawIssue } from './raw/issue.js';
import type { RawOption } from './raw/option.js';
import type { RawRoom } from './raw/room.js';
import type { RawTrade } from './raw/trade.js';
import { readCategory } from './read-category.js';
import { readChangeOrder } from './read-change-order.js';
import { featureFindings } from './read-features.js';
import { readHouse } from './read-house.js';
import { readIssue } from './read-issue.js';
import { readOption } from './read-option.js';
import { readRoom } from './read-room.js';
import { readTrade } from './read-trade.js';
import { oncePerFolder, readPath } from './record-path.js';
import type { RecordKind, RecordPath } from './record-path.js';
import { findings } from './schema-problems.js';
import type { Finding } from './schema-problems.js';
import { attributeValidator } from './validators.js';

interface Found extends RecordPath {
  /** Absent when the file cannot be taken apart. */
  readonly front?: FrontMatter;
}

/** Reads every file as far as it can be read. */
export function readDraft(
  files: readonly Source[],
  kinds: readonly FeatureKind<unknown>[],
): { readonly draft: Draft; readonly problems: readonly Problem[] } {
  const { found, hasStrays, problems } = takeApart(files);
  const of = (kind: RecordKind): readonly Found[] => found.filter((one) => one.kind === kind);
  const checked = <Raw>(
    kind: RecordKind,
    schema: string,
    more?: (front: FrontMatter, one: Found) => readonly Finding[],
  ) =>
    of(kind).flatMap((one): { readonly record: Checked<Raw>; readonly category: string }[] => {
      const { front, slug, category = '' } = one;
      return front ? [{ record: checkRecord<Raw>(schema, slug, front, more?.(front, one)), category }] : [];
    });
  const categories = checked<RawCategory>('categories', 'category').map(({ record }) => readCategory(record));
  const rulesOf = (category: string | undefined): readonly AttributeRule[] | undefined =>
    categories.find(({ slug }) => slug === category)?.rules;
  const [house] = checked<RawHouse>('house', 'house').map(({ record }) => readHouse(record));
  const rooms = checked<RawRoom>('rooms', 'room', ({ data }) => featureFindings(data, kinds)).map(({ record }) =>
    readRoom(record, kinds),
  );
  const options = checked<RawOption>('options', 'option', ({ data }, { category }) =>
    attributeFindings(data, rulesOf(category)),
  ).map(({ record, category }) => readOption(record, category, rulesOf(category)));
  const trades = checked<RawTrade>('trades', 'trade').map(({ record }) => readTrade(record));
  const changes = checked<RawChangeOrder>('changes', 'change-order').map(({ record }) => readChangeOrder(record));
  const issues = checked<RawIssue>('issues', 'issue').map(({ record }) => readIssue(record));
  const names = (kind: RecordKind): ReadonlySet<string> => new Set(of(kind).map(({ slug }) => slug));
  const slugs = {
    rooms: names('rooms'),
    categories: names('categories'),
    trades: names('trades'),
    changes: names('changes'),
    issues: names('issues'),
    options: optionSlugs(of('options')),
  };
  const own = [
    ...(house ? [house] : []),
    ...rooms,
    ...options,
    ...categories,
    ...trades,
    ...changes,
    ...issues,
  ].flatMap((one) => one.problems);
  return {
    draft: { rooms, options, categories, trades, changes, issues, slugs, hasStrays, ...(house && { house }) },
    problems: [...problems, ...own],
  };
}

function takeApart(files: readonly Source[]): {
  readonly found: readonly Found[];
  readonly hasStrays: boolean;
  readonly problems: readonly Problem[];
} {
  const found: Found[] = [];
  const misplaced: Problem[] = [];
  const broken: Problem[] = [];
  for (const file of files) {
    const path = readPath(file);
    misplaced.push(...path.problems);
    if (!path.value) continue;
    const front: Outcome<FrontMatter> = readFrontMatter(file);
    broken.push(...front.problems);
    found.push({ ...path.value, ...(front.value && { front: front.value }) });
  }
  return { found, hasStrays: misplaced.length > 0, problems: [...oncePerFolder(misplaced), ...broken] };
}

function attributeFindings(
  option: Readonly<Record<string, unknown>>,
  rules: readonly AttributeRule[] | undefined,
): readonly Finding[] {
  const attributes = option['attributes'] ?? {};
  if (!rules || typeof attributes !== 'object') return [];
  return findings(attributeValidator(rules), attributes, ['attributes']);
}

function optionSlugs(options: readonly RecordPath[]): ReadonlyMap<string, ReadonlySet<string>> {
  const byCategory = new Map<string, Set<string>>();
  for (const { slug, category = '' } of options) {
    byCategory.set(category, (byCategory.get(category) ?? new Set()).add(slug));
  }
  return byCategory;
}
