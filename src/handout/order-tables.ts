import type { Order } from '../price/index.js';
import { col, layOutFor } from '../sheet/index.js';
import type { Table, TradeBlock } from '../sheet/index.js';
import { countsWords } from '../takeoff/index.js';
import type { SupplyOrder } from '../takeoff/index.js';
import { namesOf } from '../table/index.js';
import { forTrades } from './sieve.js';
import type { Work } from './work.js';
import { productFinish, roomNumbers } from './words.js';

/** What the house orders for the trade. Packs are pooled over all rooms. */
export function orders(work: Work): TradeBlock {
  const { look, trade, products, keys } = work;
  const rows = look.book.orders.filter((order) => order.trade === trade.slug && products.has(order.option));
  const table: Table<Omit<Order, 'rate' | 'cost'>> = {
    id: 'orders',
    caption: 'For the whole house: net as measured, with waste, in whole packs',
    named: 'product',
    rowId: ({ option, part, supply }) => `${option}-${part}-${supply}`,
    columns: [
      col.finish('product', 'Product', ({ option, supply }) => {
        const product = products.get(option);
        return product && productFinish(product, true, keys, supply);
      }),
      col.words('part', 'Part', ({ part }) => (part === 'main' ? '' : part), { under: 'product' }),
      col.words('rooms', 'Rooms', ({ shares }) =>
        roomNumbers(
          shares.flatMap(({ selection }) => look.selection(selection)?.room ?? []),
          look,
        ).join(', '),
      ),
      col.amount('net', 'Net', ({ net }) => net),
      col.amount('required', 'With waste', ({ required }) => required),
      col.unit('unit', 'Unit', ({ unit }) => unit),
      col.pack('packs', 'Bought as', ({ pack, packs, unit }) => pack && { count: packs, ...pack, unit }),
      col.pieces('pieces', 'Laid out', ({ stock }) => stock, { under: 'packs' }),
      col.words('counted', 'Counted', ({ counts = [] }) => countsWords(counts), { under: 'packs' }),
    ],
  };
  return layOutFor(table, rows, namesOf(look), forTrades);
}

/** What is used up with them, pooled for the house. */
export function supplies({ look, trade }: Work): TradeBlock {
  const rows = look.book.supplies.filter((supply) => supply.trade === trade.slug);
  const table: Table<SupplyOrder> = {
    id: 'supplies',
    caption: 'Used up with them, for the whole house',
    named: 'supply',
    rowId: ({ what, unit }) => `${what}-${unit}`,
    columns: [
      col.words('supply', 'Supply', ({ what }) => what),
      col.amount('net', 'Net', ({ net }) => net),
      col.amount('required', 'With waste', ({ required }) => required),
      col.unit('unit', 'Unit', ({ unit }) => unit),
      col.pack('packs', 'Bought as', ({ pack, packs = 0, unit }) => pack && { count: packs, ...pack, unit }),
    ],
  };
  return layOutFor(table, rows, namesOf(look), forTrades);
}
