import type { Category, ListUnit, Source } from '../../core/model/index.js';
import { capital, locale, read, unread, writtenUnit, type Reading } from '../../base/units/index.js';
import { recordText } from '../record/text.js';
import { readFigure, readUnit } from './figures.js';
import { headOf } from './heads.js';
import type { Cell, Grid } from './grid.js';

/** Heads that tell themselves, the likeliest first. Source: from memory, of lists in English and German. */
const heads = {
  name: ['name', 'product', 'product name', 'description', 'item', 'article', 'artikel', 'bezeichnung', 'produkt'],
  number: [
    'product number',
    'product no',
    'item number',
    'item no',
    'item #',
    'article number',
    'article no',
    'art. no',
    'art no',
    'sku',
    'part number',
    'model',
    'number',
    'code',
    'artikelnummer',
    'art.-nr',
    'art.nr',
    'art. nr',
  ],
  price: [
    'net price',
    'price',
    'unit price',
    'your price',
    'cost',
    'list price',
    'nettopreis',
    'preis',
    'einzelpreis',
    'ep',
  ],
  unit: ['unit', 'uom', 'price unit', 'unit of measure', 'per', 'einheit', 'me', 'preiseinheit'],
  pack: [
    'pack',
    'pack size',
    'per pack',
    'per carton',
    'carton',
    'box',
    'pack contains',
    'coverage',
    'packung',
    'paket',
    'paketgröße',
    'karton',
    'paketinhalt',
    've',
    'verpackungseinheit',
  ],
  lead: ['lead time', 'lead', 'delivery', 'delivery time', 'lead time weeks', 'lead time days', 'lieferzeit'],
  maker: ['maker', 'manufacturer', 'brand', 'hersteller', 'marke'],
} as const;

/** Words for units that are none of ours. Source: from memory. */
const words: Readonly<Record<string, ListUnit>> = {
  pc: 'each',
  pcs: 'each',
  piece: 'each',
  st: 'each',
  stk: 'each',
  stück: 'each',
  qm: 'm2',
  lfm: 'm',
  lfdm: 'm',
  rm: 'm',
};

type Told = keyof typeof heads;

/** A head without what it is in: `price` of `Price (USD)`, of `Price / sq ft`. */
function bareHead(cell: Cell): string {
  return headOf(
    headOf(cell)
      .replace(/\(.*?\)/gu, '')
      .replace(/ ?(?:\/|\bper\b|\bin\b|\bje\b) ?(?:\S+|sq\.? ft\.?|lin\.? ft\.?)$/u, ''),
  );
}

/** A record by which the list can be read, as far as its heads tell themselves; to be read and corrected before it is kept. */
export function proposePriceList(grid: Grid, slug: string, category: Category): Reading<Source> {
  const rows = grid.slice(0, 30).map((row) => told(row));
  const most = Math.max(0, ...rows.map(({ size }) => size));
  const headRow = rows.findIndex(({ size }) => size === most);
  const columns = rows[headRow];
  const row = grid[headRow] ?? [];
  const fix = `write content/price-lists/${slug}.md by hand: see schemas/price-list.schema.json`;
  if (!columns?.has('name') || !columns.has('price'))
    return unread('no row of it has a head that says name or product, and one that says price', fix);
  const head = (key: Told): string | undefined => {
    const at = columns.get(key);
    return at === undefined ? undefined : String(row[at] ?? '');
  };
  const cellsOf = (key: Told): readonly Cell[] => {
    const at = columns.get(key);
    return at === undefined
      ? []
      : grid.slice(headRow + 1).flatMap((cells) => ((cells[at] ?? '') === '' ? [] : [cells[at] ?? '']));
  };
  const taken = new Set(columns.values());
  const attributes = attributesTold(row, taken, category);
  const units = unitsTold(cellsOf('unit'));
  const unit = columns.has('unit') ? undefined : unitOfHead(head('price') ?? '');
  const leadIn = /week|woche/iu.test(head('lead') ?? '')
    ? 'weeks'
    : /day|tag/iu.test(head('lead') ?? '')
      ? 'days'
      : undefined;
  const told_ = Object.fromEntries(
    (Object.keys(heads) as Told[]).flatMap((key) => (columns.has(key) ? [[key, head(key)]] : [])),
  );
  const record = {
    name: capital(slug.replaceAll('-', ' ')),
    category: category.slug,
    columns: { ...told_, ...(Object.keys(attributes).length > 0 && { attributes }) },
    decimals: decimalsOf(cellsOf('price')),
    currency: locale().currency,
    ...(Object.keys(units).length > 0 && { units }),
    ...(leadIn !== undefined && { 'lead-in': leadIn }),
    'file-name': columns.has('number') ? 'number' : 'name',
    ...(unit !== undefined && { fixed: { unit } }),
  };
  return read({ path: `content/price-lists/${slug}.md`, text: recordText(record) });
}

/** Which column of a row of heads says what. */
function told(row: readonly Cell[]): ReadonlyMap<Told, number> {
  const bare = row.map(bareHead);
  return new Map(
    (Object.keys(heads) as Told[]).flatMap((key): readonly (readonly [Told, number])[] => {
      const word = heads[key].find((one) => bare.includes(headOf(one)));
      return word === undefined ? [] : [[key, bare.indexOf(headOf(word))]];
    }),
  );
}

function attributesTold(
  row: readonly Cell[],
  taken: ReadonlySet<number>,
  { attributes }: Category,
): Readonly<Record<string, string>> {
  const found = attributes.flatMap(({ name, label, kind }) => {
    const at = row.findIndex(
      (cell, index) => !taken.has(index) && [headOf(name), headOf(label)].includes(bareHead(cell)),
    );
    return at < 0 || kind === 'lengths' ? [] : [[name, String(row[at])]];
  });
  return Object.fromEntries(found) as Readonly<Record<string, string>>;
}

function unitsTold(cells: readonly Cell[]): Readonly<Record<string, ListUnit>> {
  const strange = new Set(cells.map(String).filter((word) => !writtenUnit(word)));
  return Object.fromEntries(
    [...strange].flatMap((word) => {
      const unit = words[word.toLowerCase().replace(/\.$/u, '')];
      return unit === undefined ? [] : [[word, unit]];
    }),
  );
}

function unitOfHead(head: string): ListUnit | undefined {
  const word = /(?:\/|\bper\b|\bje\b) ?([^()]+?)\)?$/iu.exec(head)?.[1];
  const unit = word === undefined ? undefined : readUnit(word, words);
  return unit?.ok ? unit.value : undefined;
}

/** What most prices are written with; where they are numbers of a workbook it means nothing, and is the point. */
function decimalsOf(cells: readonly Cell[]): 'point' | 'comma' {
  const texts = cells.filter((cell) => typeof cell === 'string').map((cell) => cell.replace(/[^\d.,]/gu, ''));
  const only = (one: 'point' | 'comma', other: 'point' | 'comma'): number =>
    texts.filter((text) => readFigure(text, one).ok && !readFigure(text, other).ok).length;
  return only('comma', 'point') > only('point', 'comma') ? 'comma' : 'point';
}
