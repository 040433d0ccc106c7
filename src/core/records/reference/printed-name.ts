import { namedAs, placeWritten, type Named, type Path, type Problem } from '../../../base/problem/index.js';
import { slugFor } from '../../../base/units/index.js';
import { looseItems, type Checked } from '../checked-record.js';
import type { Draft } from '../draft.js';
import { valueAt } from '../lookalikes.js';

type Kind = 'rooms' | 'options' | 'categories' | 'trades' | 'levels' | 'allowances' | 'milestones';

interface NamedRecord extends Named {
  readonly kind: Kind;
  /** Of an option: its category. */
  readonly category?: string;
}

/** What a key names; keys that are not here may name any record. */
const kinds: Readonly<Record<string, Kind>> = {
  category: 'categories',
  categories: 'categories',
  trade: 'trades',
  install: 'trades',
  level: 'levels',
  allowance: 'allowances',
  'needed-at': 'milestones',
  'measured-after': 'milestones',
  before: 'milestones',
  after: 'milestones',
  milestone: 'milestones',
  rooms: 'rooms',
  'recorded-in': 'rooms',
  swing: 'rooms',
  to: 'rooms',
  'open-to': 'rooms',
  from: 'rooms',
  beside: 'rooms',
  standard: 'options',
  considering: 'options',
  chosen: 'options',
  option: 'options',
  instead: 'options',
};

/** Names as they are printed, where records are called by their file's name or their id: the problem says which that is. */
export function withPrintedNames(problems: readonly Problem[], draft: Draft): readonly Problem[] {
  const records = [
    ...(draft.house ? [draft.house] : []),
    ...draft.rooms,
    ...draft.options,
    ...draft.categories,
    ...draft.trades,
    ...draft.alternatives,
    ...draft.priceLists,
  ].map(({ record }): Checked<unknown> => record);
  const written = records.filter(({ misnamed }) => misnamed.length > 0);
  if (written.length === 0) return problems;
  const named = recordNames(draft);
  const better = new Map(
    written.flatMap((record) =>
      record.misnamed.flatMap(({ path, text }) => {
        const meant = namedAs(text, likely(named, path, record));
        return meant ? [[placeName(record, path), { text, meant }] as const] : [];
      }),
    ),
  );
  return problems.map((problem) => {
    const one = problem.code === 'text-form' ? better.get(nameOf(problem)) : undefined;
    return one ? { ...problem, ...words(one.text, one.meant) } : problem;
  });
}

function words(text: string, { slug, name, ...meant }: NamedRecord): Pick<Problem, 'message' | 'fix'> {
  const isPrinted = slugFor(text) === slugFor(name) && slugFor(text) !== slug;
  const message = isPrinted ? `'${text}' is a name as it is printed` : `'${text}' is not written as it is called`;
  return { message, fix: `did you mean '${slug}'? ${whereCalled(slug, meant)}` };
}

function whereCalled(slug: string, { kind, category }: Pick<NamedRecord, 'kind' | 'category'>): string {
  if (kind === 'levels' || kind === 'allowances' || kind === 'milestones') return 'That is its id in content/house.md';
  return `Its file is content/${kind}/${category === undefined ? '' : `${category}/`}${slug}.md`;
}

/** Records that may be meant at a place: of the kind that its key names, options of the category beside it before others. */
function likely(named: readonly NamedRecord[], path: Path, { raw }: Checked<unknown>): readonly NamedRecord[] {
  const key = String(path.findLast((part) => typeof part === 'string') ?? '');
  const kind = kinds[key];
  const ofKind = kind === undefined ? named : named.filter((one) => one.kind === kind);
  if (kind !== 'options') return ofKind;
  const category = path
    .map((_, index) => valueAt(raw, [...path.slice(0, path.length - index - 1), 'category']))
    .find((value) => typeof value === 'string');
  const own = ofKind.filter((one) => one.category === category);
  return own.length > 0 ? own : ofKind;
}

function recordNames(draft: Draft): readonly NamedRecord[] {
  const of = (
    kind: Kind,
    list: readonly { readonly slug: string; readonly record: { readonly raw: { readonly name?: unknown } } }[],
  ) => list.map(({ slug, record }): NamedRecord => ({ kind, slug, name: textOr(record.raw.name, slug) }));
  const ids = (kind: 'levels' | 'allowances' | 'milestones'): readonly NamedRecord[] =>
    (draft.house ? looseItems(draft.house.record, kind) : []).flatMap((item) => {
      const { id, name } = (item ?? {}) as { readonly id?: unknown; readonly name?: unknown };
      return typeof id === 'string' ? [{ kind, slug: id, name: textOr(name, id) }] : [];
    });
  const options = draft.options.map(({ slug, category, record }): NamedRecord => {
    return { kind: 'options', slug, category, name: textOr(record.raw.name, slug) };
  });
  return [
    ...options,
    ...of('rooms', draft.rooms),
    ...of('categories', draft.categories),
    ...of('trades', draft.trades),
    ...ids('levels'),
    ...ids('allowances'),
    ...ids('milestones'),
  ];
}

function textOr(value: unknown, otherwise: string): string {
  return typeof value === 'string' ? value : otherwise;
}

function placeName({ origin }: Checked<unknown>, path: Path): string {
  const written = placeWritten(origin, path);
  return nameOf({ file: written.origin.file, at: written.origin.at(written.path) });
}

function nameOf({ file, at }: Pick<Problem, 'file' | 'at'>): string {
  return `${file}:${at.line}:${at.column}`;
}
