import { pathInHouse, readFrontMatter, readNumbered, slugOfPath } from '../../core/records/index.js';
import { readHouseFolder } from '../../disk/store/index.js';

/** Names that a house has for a value, by what commands call it: `trade` in `handout <trade>`. A value that is named otherwise is a file or
 *  words of one's own. No names where there is no house. */
export async function namesInHouse(value: string, dir: string): Promise<readonly string[]> {
  // A Tab waits for what is read: tables are much, and asked for rarely.
  if (value === 'schedule') return (await import('../../table/index.js')).tableNames;
  const folder = folders[value];
  const list = lists[value];
  if (folder === undefined && list === undefined && !(value in numbered)) return [];
  const { files } = await readHouseFolder(dir);
  const paths = files.map(({ path }) => pathInHouse(path));
  if (folder !== undefined)
    return paths.filter((path) => new RegExp(`^content/${folder}/[^/]+\\.md$`, 'u').test(path)).map(slugOfPath);
  const house = files.find(({ path }) => path === 'content/house.md');
  if (list !== undefined) return house ? idsOf(readFrontMatter(house).value?.data[list]) : [];
  const found = paths.flatMap((path) => readNumbered(path) ?? []);
  return numbered[value]?.(found) ?? [];
}

const folders: Readonly<Record<string, string>> = {
  room: 'rooms',
  category: 'categories',
  categories: 'categories',
  trade: 'trades',
  alternative: 'alternatives',
  'price-list': 'price-lists',
};

/** Lists of the house's record whose items have ids. */
const lists: Readonly<Record<string, string>> = { level: 'levels', milestone: 'milestones' };

type Numbered = NonNullable<ReturnType<typeof readNumbered>>;

const versions = (all: readonly Numbered[]): readonly string[] => [
  'HEAD',
  ...all.flatMap(({ folder, number }) => (folder === 'issues' ? [`issue-${number}`] : [])),
];

const numbered: Readonly<Record<string, (all: readonly Numbered[]) => readonly string[]>> = {
  from: versions,
  to: versions,
  number: (all) => all.flatMap(({ folder, number }) => (folder === 'changes' ? [String(number)] : [])),
};

function idsOf(list: unknown): readonly string[] {
  if (!Array.isArray(list)) return [];
  return list.flatMap((item: unknown) =>
    typeof item === 'object' && item !== null && 'id' in item && typeof item.id === 'string' ? [item.id] : [],
  );
}
