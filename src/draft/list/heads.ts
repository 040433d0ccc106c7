import { didYouMean } from '../../base/problem/index.js';
import type { PriceList } from '../../core/model/index.js';
import { joinWords, read, unread, type Reading } from '../../base/units/index.js';
import { columnLetters, type Cell, type Grid } from './grid.js';

/** Rows among which the heads are looked for: a letterhead may stand above them. */
const highest = 30;

/** Where the heads stand and which column says what. */
export interface Columns {
  readonly headRow: number;
  readonly name: number;
  readonly price: number;
  readonly number?: number;
  readonly unit?: number;
  readonly pack?: number;
  readonly packName?: number;
  readonly lead?: number;
  readonly maker?: number;
  readonly attributes: Readonly<Record<string, number>>;
}

/** A head as it is compared: small letters, one space, no point or colon behind it. */
export function headOf(cell: Cell): string {
  return String(cell)
    .replace(/\s+/gu, ' ')
    .trim()
    .replace(/[.:*]+$/u, '')
    .toLowerCase();
}

/** Finds the row of heads and each column that the record names, or says what is not there. */
export function findColumns(grid: Grid, { columns, slug }: PriceList): Reading<Columns> {
  const { attributes, ...own } = columns;
  const asked = [...Object.values(own), ...Object.values(attributes)].map(headOf);
  const hits = grid.slice(0, highest).map((row) => {
    const heads = new Set(row.map(headOf));
    return asked.filter((head) => heads.has(head)).length;
  });
  const most = Math.max(0, ...hits);
  const fix = `correct columns in content/price-lists/${slug}.md, or the list's heads`;
  if (most === 0)
    return unread(`none of its first ${highest} rows has the heads ${joinWords(Object.values(own))}`, fix);
  const headRow = hits.indexOf(most);
  const heads = (grid[headRow] ?? []).map(headOf);
  const wrong: string[] = [];
  const find = (head: string): number => {
    const at = heads.indexOf(headOf(head));
    if (at < 0) wrong.push(missing(head, grid[headRow] ?? []));
    else if (heads.lastIndexOf(headOf(head)) !== at)
      wrong.push(`'${head}' stands over ${columnLetters(at)} and ${columnLetters(heads.lastIndexOf(headOf(head)))}`);
    return at;
  };
  const found = {
    headRow,
    ...mapValues(own, find),
    attributes: mapValues(attributes, find),
  };
  return wrong.length === 0 ? read(found) : unread(`row ${headRow + 1} has its heads, but ${joinWords(wrong)}`, fix);
}

function missing(head: string, row: readonly Cell[]): string {
  const meant = didYouMean(head, row.map(String));
  return `none is '${head}'${meant === undefined ? '' : ` (${meant})`}`;
}

function mapValues<Keys extends object>(
  of: Keys,
  find: (head: string) => number,
): { readonly [Key in keyof Keys]: number } {
  const entries = Object.entries(of).map(([key, head]) => [key, find(String(head))]);
  return Object.fromEntries(entries) as { readonly [Key in keyof Keys]: number };
}
