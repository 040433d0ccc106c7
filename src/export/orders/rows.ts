import type { Book } from '../../book/index.js';
import { countsWords } from '../../takeoff/index.js';
import { plural, printLength } from '../../units/index.js';
import { writeCsv } from '../csv/index.js';

/** One product to buy for the whole house. No money in it. */
export interface OrderRow {
  readonly kind: 'finish' | 'supply';
  readonly trade: string;
  readonly category: string;
  readonly option: string;
  readonly maker: string;
  readonly model: string;
  readonly part: string;
  readonly net: number;
  readonly required: number;
  readonly unit: string;
  /** Whole packs with the pack's name, or the pieces or units themselves. */
  readonly packs: string;
  readonly ordered: number;
  /** Pieces by stock length where the product was laid out: `18 × 12'-0"; 24 × 16'-0"`. */
  readonly pieces: string;
  /** As the trade counts it: `9 gal`; sheets as if all were of one length, joined by `or`. */
  readonly counted: string;
  /** Numbers of the rooms it goes to. */
  readonly rooms: string;
  readonly supply: string;
  readonly leadDays: number;
}

/** The order list, in order of trade, category and product. */
export function orderRows(book: Book): OrderRow[] {
  const options = new Map(book.options.map((option) => [option.id, option]));
  const rows = book.orders.flatMap((order) => {
    const option = options.get(order.option);
    if (!option) return [];
    const { category, name, maker, model, leadDays } = option;
    const pieces = order.stock.map(({ length, count }) => `${count} × ${printLength(length)}`).join('; ');
    const { trade, part, net, required, unit, packs, pack, ordered, supply, counts = [] } = order;
    return {
      kind: 'finish' as const,
      trade,
      category,
      option: name,
      maker,
      model,
      part,
      net,
      required,
      unit,
      packs: packWords(packs, pack),
      ordered,
      pieces,
      counted: countsWords(counts),
      rooms: roomNumbers(book, order.shares),
      supply,
      leadDays,
    };
  });
  return rows.sort(byTrade);
}

/** What is used up with the finishes, for the whole house, in order of trade and name. */
export function supplyOrderRows(book: Book): OrderRow[] {
  const rows = book.supplies.map(({ trade, what, unit, net, required, pack, packs, shares }): OrderRow => {
    const ordered = pack && packs !== undefined ? packs * pack.holds : required;
    return {
      kind: 'supply',
      trade,
      category: '',
      option: what,
      maker: '',
      model: '',
      part: 'supply',
      net,
      required,
      unit,
      packs: packWords(packs ?? 0, pack),
      ordered,
      pieces: '',
      counted: '',
      rooms: roomNumbers(book, shares),
      supply: 'contractor',
      leadDays: 0,
    };
  });
  return rows.sort(byTrade);
}

/** The order list with supplies as CSV. */
export function ordersCsv(book: Book): string {
  return writeCsv(
    [...orderRows(book), ...supplyOrderRows(book)],
    [
      'kind',
      'trade',
      'category',
      'option',
      'maker',
      'model',
      'part',
      'net',
      'required',
      'unit',
      'packs',
      'ordered',
      'pieces',
      'counted',
      'rooms',
      'supply',
      'leadDays',
    ],
  );
}

function packWords(packs: number, pack: { name: string; holds: number } | undefined): string {
  if (!pack) return '';
  return `${packs} ${packs === 1 ? pack.name : plural(pack.name)} of ${pack.holds}`;
}

function byTrade(a: OrderRow, b: OrderRow): number {
  const [first, second] = [a, b].map((row) => `${row.trade} ${row.category} ${row.option}`) as [string, string];
  return first === second ? 0 : first < second ? -1 : 1;
}

/** Numbers of the rooms that share in something, in the book's order. */
export function roomNumbers(book: Book, shares: readonly { readonly selection: string }[]): string {
  const of = new Map(book.selections.map(({ id, room }) => [id, room]));
  const rooms = new Set(shares.map(({ selection }) => of.get(selection)));
  return book.rooms
    .filter(({ slug }) => rooms.has(slug))
    .map(({ number }) => number)
    .join(', ');
}

/** The same as long as they fit a line: `101, 203`, or `19 rooms`. */
export function roomWords(numbers: string): string {
  const count = numbers.split(', ').length;
  return count > 8 ? `${count} rooms` : numbers;
}
