import type { Origin, Path, Problem } from '../../base/problem/index.js';
import type { FrontMatter } from './front-matter.js';
import { finder, findingProblems, type Find } from './schema-problems.js';
import type { Finding } from './finding.js';
import { slugPattern } from './formats.js';
import { valueAt } from './lookalikes.js';
import { oncePerRecord, quoteWarnings, trapFindings } from './trap-findings.js';
import { valueFindings } from './value-findings.js';
import { validatorOf } from './validators.js';

/** A record as written, with a way to ask which of it may be believed. */
export interface Checked<Raw> {
  readonly slug: string;
  readonly raw: Raw;
  readonly body: string;
  readonly origin: Origin;
  readonly problems: readonly Problem[];
  /** Has the schema nothing against what is at `path`? Keys it does not know do no harm there. */
  sound(path: Path): boolean;
  /** Its problems but those at `path` and below: where all of that is to be written otherwise. */
  without(path: Path): readonly Problem[];
  /** Texts that stand where the name of a record's file, or an id, belongs. */
  readonly misnamed: readonly Misnamed[];
  /** Was a key of the record misspelt that should have been this one, or may have been? That it is missing has then been said. */
  meant(key: string): boolean;
}

interface Misnamed {
  readonly path: Path;
  readonly text: string;
}

/** An entry of a list that the schema has nothing against. */
export interface SoundItem<Raw> {
  readonly raw: Raw;
  readonly path: Path;
}

/** Checks a record against its schema; `more` are findings of parts that have a schema of their own, `find` finds them. */
export function checkRecord<Raw>(
  schema: string,
  slug: string,
  front: FrontMatter,
  more: readonly Finding[] = [],
  find: Find = finder(),
): Checked<Raw> {
  // A part's own schema knows better what belongs there.
  const isTold = (one: Finding): boolean => more.some(({ path, code }) => code === one.code && isSame(path, one.path));
  const own = find(schema, () => validatorOf(schema), front.data).filter((one) => !isTold(one));
  const told = [...own, ...more];
  const values = valueFindings(front.data).filter((one) => !told.some(({ path }) => isSame(path, one.path)));
  const found = trapFindings([...told, ...values], front.data, front.origin);
  const harm = found.filter(({ code }) => code !== 'key-unknown');
  const sound = (path: Path): boolean =>
    !harm.some((one) => {
      const at = one.missing === undefined ? one.path : [...one.path, one.missing];
      return isAtOrBelow(at, path) || isAtOrBelow(path, at);
    });
  // A key that is like none of those known may be any that is not there.
  const isElsewhere = (key: string, one: Finding): boolean =>
    one.code === 'key-unknown' &&
    one.meant === undefined &&
    !Object.hasOwn(front.data, key) &&
    isGroup(valueAt(front.data, one.path));
  const meant = (key: string): boolean =>
    found.some((one) => one.path.length === 1 && (one.meant === key || isElsewhere(key, one)));
  const { body, origin } = front;
  const saying = (some: readonly Finding[]): readonly Problem[] =>
    oncePerRecord([...findingProblems(some, origin), ...quoteWarnings(front.data, found, origin)]);
  const without = (path: Path): readonly Problem[] => saying(found.filter((one) => !isAtOrBelow(one.path, path)));
  const misnamed = found.flatMap(({ path, code, form }) => {
    const text = valueAt(front.data, path);
    return code === 'text-form' && form === slugPattern && typeof text === 'string' ? [{ path, text }] : [];
  });
  return { slug, raw: front.data as Raw, body, origin, problems: saying(found), sound, without, misnamed, meant };
}

/** Entries of the list at `key` that are sound; none when the list is not there. */
export function soundItems<Item>(record: Checked<unknown>, key: string): readonly SoundItem<Item>[] {
  return looseItems(record, key)
    .map((raw, index) => ({ raw: raw as Item, path: [key, index] }))
    .filter(({ path }) => record.sound(path));
}

/** Whatever stands in the list at `key`. */
export function looseItems(record: Checked<unknown>, key: string): readonly unknown[] {
  const list = (record.raw as Readonly<Record<string, unknown>>)[key];
  return Array.isArray(list) ? list : [];
}

/** Texts under a key of each entry of a list, sound or not: names that other records may rightly refer to. */
export function looseNames(record: Checked<unknown>, list: string, key: string): ReadonlySet<string> {
  const names = looseItems(record, list).map((item) => nameOf(item, key));
  return new Set(names.filter((name): name is string => typeof name === 'string'));
}

function isGroup(value: unknown): boolean {
  return typeof value === 'object' && value !== null;
}

function isSame(path: Path, other: Path): boolean {
  return path.length === other.length && isAtOrBelow(path, other);
}

/** The same where they are all known: undefined where the list is not there under its name, or an entry cannot be read. Nothing can then
 *  be said of a name that is not among them. */
export function knownNames(record: Checked<unknown>, list: string, key: string): ReadonlySet<string> | undefined {
  const names = looseNames(record, list, key);
  if (record.meant(list) || !isListOrNone(record, list)) return undefined;
  return names.size < new Set(looseItems(record, list).map((item) => nameOf(item, key))).size ? undefined : names;
}

function isListOrNone({ raw, sound }: Checked<unknown>, list: string): boolean {
  const value = (raw as Readonly<Record<string, unknown>>)[list];
  return value === undefined ? sound([list]) : Array.isArray(value);
}

function nameOf(item: unknown, key: string): unknown {
  return (item as Readonly<Record<string, unknown>> | null)?.[key];
}

/** Is `path` the place `above`, or below it? */
function isAtOrBelow(path: Path, above: Path): boolean {
  return path.length >= above.length && above.every((part, index) => path[index] === part);
}
