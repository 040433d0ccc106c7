import type { FeatureKind } from '../feature/index.js';
import type { Source } from '../model/index.js';
import type { Outcome, Problem } from '../../base/problem/index.js';
import { inLocale, keepBy, keepEach, type Locale, type Shelf } from '../../base/units/index.js';
import { checkRecord } from './checked-record.js';
import type { Draft } from './draft.js';
import { readFrontMatter, type FrontMatter, type TakenApart } from './front-matter.js';
import type { RawAlternative } from './raw/alternative.js';
import type { RawCategory } from './raw/category.js';
import type { RawChangeOrder } from './raw/change-order.js';
import type { RawHouse } from './raw/house.js';
import type { RawIssue } from './raw/issue.js';
import type { RawOption } from './raw/option.js';
import type { RawPriceList } from './raw/price-list.js';
import type { RawRoom } from './raw/room.js';
import type { RawTrade } from './raw/trade.js';
import { readAlternative } from './read-alternative.js';
import { readCategory, type CategoryDraft } from './read-category.js';
import { readChangeOrder } from './read-change-order.js';
import { localeOfHouse } from './house-locale.js';
import { featureFindings } from './read-features.js';
import { finishSets, withSets } from './finish-sets.js';
import { readHouse, type HouseDraft } from './read-house.js';
import { readIssue } from './read-issue.js';
import { readOption } from './read-option.js';
import { readPriceList } from './read-price-list.js';
import { readRoom, type RoomDraft } from './read-room.js';
import { readTrade } from './read-trade.js';
import { oncePerFolder, readPath, type RecordKind, type RecordPath } from './record-path.js';
import { finder, type Find } from './schema-problems.js';
import type { Finding } from './finding.js';
import { attributeValidator } from './validators.js';

/** What may be kept of records for longer than a run: records taken apart, and what schemas have nothing against. */
export interface RecordShelves {
  readonly apart?: Shelf<Outcome<TakenApart>>;
  readonly sound?: Shelf<readonly Finding[]>;
}

/** A file that is a record by its path. */
interface Found extends RecordPath {
  /** Absent when the file cannot be taken apart. */
  readonly front?: FrontMatter;
}

interface Taken {
  readonly found?: Found;
  readonly misplaced: readonly Problem[];
  readonly broken: readonly Problem[];
}

type Readable = Found & { readonly front: FrontMatter };

/** Reads the files of houses, every file as far as it can be read. A record that several houses have is read once, and is
 *  the same object in each of them. */
export function draftReader(
  kinds: readonly FeatureKind<unknown>[],
  { apart, sound }: RecordShelves = {},
): (files: readonly Source[]) => {
  readonly draft: Draft;
  readonly problems: readonly Problem[];
  readonly locale: Locale;
} {
  const takeApart = keepBy(
    ({ path, text }: Source) => `${path}\n${text}`,
    (file) => takeFileApart(file, apart),
  );
  const readersFor = keepBy(
    (of: Locale) => JSON.stringify(of),
    () => recordReaders(kinds, finder(sound)),
  );
  return (files) => {
    const taken = files.map(takeApart);
    const found = taken.flatMap((file) => (file.found && !standsElsewhere(file, taken) ? file.found : []));
    const misplaced = taken.flatMap((file) => file.misplaced);
    const own = localeOfHouse(files.find(({ path }) => path === 'content/house.md'));
    const { draft, problems } = inLocale(own, () => draftOf(found, misplaced.length > 0, readersFor(own)));
    return {
      draft,
      locale: own,
      problems: [...oncePerFolder(misplaced), ...taken.flatMap((file) => file.broken), ...problems],
    };
  };
}

/** Is it a file of a wrong name, beside the record that its name would be if it were right? */
function standsElsewhere({ found, misplaced }: Taken, all: readonly Taken[]): boolean {
  if (!found || misplaced.length === 0) return false;
  const { kind, slug, category } = found;
  return all.some(
    ({ found: other, misplaced: wrong }) =>
      wrong.length === 0 && other?.kind === kind && other.slug === slug && other.category === category,
  );
}

function takeFileApart(file: Source, shelf: RecordShelves['apart']): Taken {
  const path = readPath(file);
  if (!path.value) return { misplaced: path.problems, broken: [] };
  // Of a record under a wrong name its name is what to mend; others may refer to it as it will be called.
  if (path.problems.length > 0) return { found: path.value, misplaced: path.problems, broken: [] };
  const front = readFrontMatter(file, shelf);
  return {
    found: { ...path.value, ...(front.value && { front: front.value }) },
    misplaced: path.problems,
    broken: front.problems,
  };
}

/** Each record is read once, an option once for each record of its category, a room that has finish sets once for each of the house. */
function recordReaders(kinds: readonly FeatureKind<unknown>[], find: Find) {
  const checked = <Raw>({ slug, front }: Readable, schema: string, more?: readonly Finding[]) =>
    checkRecord<Raw>(schema, slug, front, more, find);
  const optionBy = (category: CategoryDraft | undefined) =>
    keepEach((one: Readable) =>
      readOption(
        checked<RawOption>(one, 'option', attributeFindings(one.front.data, category, find)),
        one.category ?? '',
        category,
      ),
    );
  const room = (one: Readable): RoomDraft =>
    readRoom(checked<RawRoom>(one, 'room', featureFindings(one.front.data, kinds, find)), kinds);
  return {
    house: keepEach((one: Readable) => readHouse(checked<RawHouse>(one, 'house'))),
    room: keepEach((one: Readable) => {
      const alone = room(one);
      return keepBy(
        (house: HouseDraft | undefined) => house,
        (house) => {
          const front = withSets(one.front, alone, house ? finishSets(house.record) : []);
          return front === one.front ? alone : room({ ...one, front });
        },
      );
    }),
    category: keepEach((one: Readable) => readCategory(checked<RawCategory>(one, 'category'))),
    optionBy: keepBy((category: CategoryDraft | undefined) => category, optionBy),
    trade: keepEach((one: Readable) => readTrade(checked<RawTrade>(one, 'trade'))),
    alternative: keepEach((one: Readable) => readAlternative(checked<RawAlternative>(one, 'alternative'))),
    priceList: keepEach((one: Readable) => readPriceList(checked<RawPriceList>(one, 'price-list'))),
    change: keepEach((one: Readable) => readChangeOrder(checked<RawChangeOrder>(one, 'change-order'))),
    issue: keepEach((one: Readable) => readIssue(checked<RawIssue>(one, 'issue'))),
  };
}

function draftOf(
  found: readonly Found[],
  hasStrays: boolean,
  read: ReturnType<typeof recordReaders>,
): { readonly draft: Draft; readonly problems: readonly Problem[] } {
  const of = (kind: RecordKind): readonly Found[] => found.filter((one) => one.kind === kind);
  const readable = (kind: RecordKind): readonly Readable[] => of(kind).filter(isReadable);
  const categories = readable('categories').map(read.category);
  const bySlug = new Map(categories.map((category) => [category.slug, category]));
  const [house] = readable('house').map(read.house);
  const rooms = readable('rooms').map((one) => read.room(one)(house));
  const options = readable('options').map((one) => read.optionBy(bySlug.get(one.category ?? ''))(one));
  const trades = readable('trades').map(read.trade);
  const alternatives = readable('alternatives').map(read.alternative);
  const priceLists = readable('price-lists').map(read.priceList);
  const changes = readable('changes').map(read.change);
  const issues = readable('issues').map(read.issue);
  const names = (kind: RecordKind): ReadonlySet<string> => new Set(of(kind).map(({ slug }) => slug));
  const slugs = {
    rooms: names('rooms'),
    categories: names('categories'),
    trades: names('trades'),
    changes: names('changes'),
    issues: names('issues'),
    options: optionSlugs(of('options')),
  };
  const problems = [
    ...(house ? [house] : []),
    ...rooms,
    ...options,
    ...categories,
    ...trades,
    ...alternatives,
    ...priceLists,
    ...changes,
    ...issues,
  ].flatMap((one) => one.problems);
  return {
    draft: {
      rooms,
      roomNamed: new Map(rooms.map((room) => [room.slug, room])),
      options,
      categories,
      trades,
      alternatives,
      priceLists,
      changes,
      issues,
      slugs,
      hasStrays,
      ...(house && { house }),
    },
    problems,
  };
}

function isReadable(one: Found): one is Readable {
  return one.front !== undefined;
}

function attributeFindings(
  option: Readonly<Record<string, unknown>>,
  category: CategoryDraft | undefined,
  find: Find,
): readonly Finding[] {
  const rules = category?.rules;
  const attributes = option['attributes'] ?? {};
  if (!rules) return [];
  if (rules.length === 0 && option['attributes'] !== undefined) {
    const message = `${category?.slug ?? ''} lists no attributes`;
    const fix = `list them under attributes: in content/categories/${category?.slug ?? ''}.md, or leave them out here`;
    return [{ path: ['attributes'], code: 'key-unknown', message, fix, onKey: true }];
  }
  // What many options say otherwise than their category is the category's, more likely than theirs.
  const name = `attributes ${JSON.stringify(rules)}`;
  return find(name, () => attributeValidator(rules), attributes, ['attributes']).map((one) => ({
    ...one,
    ...(one.code !== 'value-unknown' && { cause: `${category.slug} ${one.path.join('.')}` }),
  }));
}

function optionSlugs(options: readonly RecordPath[]): ReadonlyMap<string, ReadonlySet<string>> {
  const byCategory = new Map<string, Set<string>>();
  for (const { slug, category = '' } of options) {
    byCategory.set(category, (byCategory.get(category) ?? new Set()).add(slug));
  }
  return byCategory;
}
