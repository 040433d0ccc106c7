import type { Book } from '../../book/index.js';
import { plural, printLength } from '../../units/index.js';
import { writeCsv } from '../csv/index.js';

/** One product to buy for the whole house. No money in it. */
export interface OrderRow {
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
    const { trade, part, net, required, unit, packs, pack, ordered, supply } = order;
    return {
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
      supply,
      leadDays,
    };
  });
  const key = (row: OrderRow) => `${row.trade} ${row.category} ${row.option}`;
  return rows.sort((a, b) => (key(a) === key(b) ? 0 : key(a) < key(b) ? -1 : 1));
}

/** The order list as CSV. */
export function ordersCsv(book: Book): string {
  return writeCsv(orderRows(book), [
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
    'supply',
    'leadDays',
  ]);
}

function packWords(packs: number, pack: { name: string; holds: number } | undefined): string {
  if (!pack) return '';
  return `${packs} ${packs === 1 ? pack.name : plural(pack.name)} of ${pack.holds}`;
}
