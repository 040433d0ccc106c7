import { stringify } from 'yaml';
import { readFrontMatter } from '../core/records/index.js';
import type { Source } from '../core/model/index.js';
import type { Position } from '../base/problem/index.js';
import type { Group } from './groups.js';
import type { Key } from './keys.js';

/** A value as a record has it. */
export interface Example {
  /** YAML in one line. */
  readonly text: string;
  readonly file: string;
  readonly at: Position;
}

type Path = readonly (string | number)[];
type Found = { readonly path: Path; readonly value: unknown };

/** The longest example that fits beside a key. */
const longest = 72;

/** A reader of what the records of a house say for a key: every place where it is written. */
export function examplesIn(sources: readonly Source[]): (group: Group, key: Key) => readonly Example[] {
  const records = sources.flatMap((source) => {
    const { value } = readFrontMatter(source);
    return value ? [{ ...value, file: source.path }] : [];
  });
  return ({ place }, key) =>
    records
      .filter(({ file }) => isAt(file, place.file))
      .flatMap(({ data, origin, file }) =>
        valuesAt({ path: [], value: data }, place.under === undefined ? [] : [place.under])
          .flatMap(itemsOf)
          .filter(({ value }) => place.kind === undefined || isOfKind(value, place.kind))
          .flatMap((found) => valuesAt(found, key.path))
          .map(({ path, value }) => ({ text: yaml(value), file, at: origin.at(path) })),
      );
}

const isAt = (file: string, form: string): boolean =>
  new RegExp(`^${form.replaceAll('.', '\\.').replace(/<[a-z]+>/gu, '[^/]+')}$`, 'u').test(file);

/** One example to print: the first that is short enough, else one of the schema's own. */
export function exampleOf(key: Key, examples: readonly Example[]): string | undefined {
  const own = key.examples.map(yaml);
  return [...examples.map(({ text }) => text), ...own].find((text) => text.length <= longest);
}

const isOfKind = (value: unknown, kind: string): boolean =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === kind;

function yaml(value: unknown): string {
  return stringify(value, { collectionStyle: 'flow', lineWidth: 0 }).trim();
}

/** What stands at a path, in each item of the lists on the way; `<name>` is any name. */
function valuesAt(found: Found, [name, ...rest]: readonly string[]): readonly Found[] {
  if (name === undefined) return [found];
  return itemsOf(found).flatMap(({ path, value }) => {
    if (typeof value !== 'object' || value === null) return [];
    return Object.entries(value)
      .filter(([key]) => name === '<name>' || key === name)
      .flatMap(([key, each]) => valuesAt({ path: [...path, key], value: each }, rest));
  });
}

/** The items of a list, of lists in it too; anything else is its own only item. */
function itemsOf(found: Found): readonly Found[] {
  const { path, value } = found;
  if (!Array.isArray(value)) return [found];
  return value.flatMap((item: unknown, index) => itemsOf({ path: [...path, index], value: item }));
}
