import { stringify } from 'yaml';
import { readFrontMatter } from '../core/records/index.js';
import type { Source } from '../core/model/index.js';
import type { Position } from '../base/problem/index.js';
import { keepEach } from '../base/units/index.js';
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

/** A reader of what the records of a house say for a key: every place where it is written. A record is read when the first key of its kind is
 *  asked for, and once. */
export function examplesIn(sources: readonly Source[]): (group: Group, key: Key) => readonly Example[] {
  const read = keepEach(readFrontMatter);
  const written = keepEach(({ place: { file, under, kind } }: Group) => {
    const form = new RegExp(`^${file.replaceAll('.', '\\.').replace(/<[a-z]+>/gu, '[^/]+')}$`, 'u');
    return sources
      .filter(({ path }) => form.test(path))
      .flatMap((source) => {
        const { value: record } = read(source);
        if (!record) return [];
        const all = valuesAt({ path: [], value: record.data }, under === undefined ? [] : [under]).flatMap(itemsOf);
        return all
          .filter(({ value }) => kind === undefined || isOfKind(value, kind))
          .map((found) => ({ found, file: source.path, origin: record.origin }));
      });
  });
  return (group, key) =>
    written(group).flatMap(({ found, file, origin }) =>
      valuesAt(found, key.path).map(({ path, value }) => ({ text: yaml(value), file, at: origin.at(path) })),
    );
}

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
