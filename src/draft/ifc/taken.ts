import type { Source } from '../../core/model/index.js';
import { readFrontMatter } from '../../core/records/index.js';
import { byText } from '../../base/units/index.js';
import type { Taken } from './room/read-spaces.js';

/** What a house's records have already, as far as they can be read: drafts are added to houses that are not whole yet. */
export function takenIn(files: readonly Source[]): Taken {
  const rooms = files
    .toSorted((a, b) => byText(a.path, b.path))
    .flatMap(({ path, text }) => {
      const [, slug] = /^content\/rooms\/([^/]+)\.md$/u.exec(path) ?? [];
      return slug === undefined ? [] : [{ slug, data: dataOf({ path, text }) }];
    });
  const house = files.find(({ path }) => path === 'content/house.md');
  return {
    rooms: rooms.map(({ slug }) => slug),
    numbers: rooms.flatMap(({ data }) => texts([data['number']])),
    marks: rooms.flatMap(({ data }) => texts(entries(data['openings']).map(({ mark }) => mark))),
    levels: entries(house && dataOf(house)['levels']).flatMap(({ id, name }) => {
      return typeof id === 'string' && typeof name === 'string' ? [{ id, name }] : [];
    }),
  };
}

function dataOf(source: Source): Readonly<Record<string, unknown>> {
  return readFrontMatter(source).value?.data ?? {};
}

function entries(list: unknown): readonly Readonly<Record<string, unknown>>[] {
  return Array.isArray(list) ? list.filter((entry) => typeof entry === 'object' && entry !== null) : [];
}

function texts(values: readonly unknown[]): readonly string[] {
  return values.filter((value) => typeof value === 'string');
}
