import { groupBy, type BookSelection, type LookUp } from '../core/book/index.js';
import { col, type Cell, type Column, type Names } from '../sheet/index.js';
import { optionsAt } from './options-at.js';
import { placesOf } from './places-of.js';
import { schedule } from './schedule.js';

/** One thing that products of one trade need another to have done. */
export interface NeedRow {
  readonly what: string;
  /** Slug of the trade that provides it, and of the one whose products need it. */
  readonly by: string;
  readonly of: string;
  /** Id of the milestone before which it is done, and its day. */
  readonly before: string;
  readonly day?: string;
  readonly products: readonly { readonly option: string; readonly name: string; readonly isDecided: boolean }[];
  /** Slug of the room, and the places in words. */
  readonly places: readonly { readonly room: string; readonly text: string }[];
}

export const needColumns: readonly Column<NeedRow>[] = [
  col.words('what', 'What', ({ what }) => what, { width: 'long' }),
  col.lines('products', 'For', ({ products }) => products.map((product) => ({ cell: productCell(product) })), {
    under: 'what',
  }),
  col.lines('places', 'Where', placesCell, { width: 'words' }),
  col.words('before', 'Before', ({ before }, names) => names.milestone(before), { width: 'short', brief: true }),
  col.day('day', 'Day', ({ day }) => day, { under: 'before' }),
];

/** What products of others need of a trade: backing, headers, framed boxes. */
export const backing = schedule<NeedRow>({
  table: {
    id: 'backing',
    caption: 'What products of other trades need to be there before them',
    named: 'what',
    rowId: ({ by, of, before, what }) => `${by}/${of}/${before}/${what}`,
    group: ({ by, of }, names) => ({ title: `By ${names.trade(by)}, for ${names.trade(of)}` }),
    columns: needColumns,
  },
  rows: needRows,
  trades: ({ by }) => [by],
});

/** Needs of all products that stand or are considered, the same thing asked in several rooms once, by the trade that provides it
 *  and then by the trade that asks. What a trade needs of itself it knows. */
export function needRows(look: LookUp): readonly NeedRow[] {
  const rows = new Map<string, Asked>();
  const options = new Map(look.book.options.map((option) => [option.id, option]));
  for (const selection of look.book.selections) {
    if (selection.state === 'none') continue;
    for (const id of optionsAt(selection)) {
      const option = options.get(id);
      for (const { what, by, before } of option?.needs ?? []) {
        if (!option || by === selection.trade) continue;
        const key = JSON.stringify([by, selection.trade, before, what]);
        const asked = rows.get(key) ?? nothingAsked(what, by, before, selection, look);
        rows.set(key, asked);
        // A product is decided when it is so at one place at least.
        const isDecided = selection.state !== 'open' || asked.products.get(id)?.isDecided === true;
        asked.products.set(id, { option: id, name: option.name, isDecided });
        const place = { room: selection.room, text: placesOf(selection) };
        asked.places.set(JSON.stringify(place), place);
      }
    }
  }
  const order = new Map(look.book.trades.map(({ slug }, index) => [slug, index]));
  const place = (slug: string): number => order.get(slug) ?? order.size;
  return [...rows.values()]
    .map(({ row, products, places }) => ({ ...row, products: [...products.values()], places: [...places.values()] }))
    .toSorted((a, b) => place(a.by) - place(b.by) || place(a.of) - place(b.of));
}

/** A row while its products and places are gathered. */
interface Asked {
  readonly row: Omit<NeedRow, 'products' | 'places'>;
  readonly products: Map<string, NeedRow['products'][number]>;
  readonly places: Map<string, NeedRow['places'][number]>;
}

function nothingAsked(what: string, by: string, before: string, { trade }: BookSelection, { book }: LookUp): Asked {
  const day = book.calendar.milestones.find(({ id }) => id === before)?.date;
  const row = { what, by, of: trade, before, ...(day !== undefined && { day }) };
  return { row, products: new Map(), places: new Map() };
}

function productCell({ option, name, isDecided }: NeedRow['products'][number]): Cell {
  return {
    is: 'finish',
    name,
    standing: isDecided ? 'chosen' : 'considered',
    by: 'contractor',
    place: { to: 'option', id: option },
  };
}

/** One line a room; the places of a room side by side. */
function placesCell({ places }: NeedRow, names: Names): readonly { readonly at: string; readonly cell: Cell }[] {
  return [...groupBy(places, ({ room }) => room)].map(([slug, own]) => ({
    at: names.number(slug),
    cell: { is: 'words', text: own.map(({ text }) => text).join('; ') },
  }));
}
