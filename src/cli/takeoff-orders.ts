import { orderRows, supplyOrderRows } from '../export/index.js';
import type { OrderRow } from '../export/index.js';
import { lookUp } from '../book/index.js';
import type { Book } from '../book/index.js';
import { supplyOrderColumns } from './takeoff-quantities.js';
import { printTable } from './table.js';
import type { Column } from './table.js';

/** What each trade orders for the whole house, the same as the trade counts it, and its supplies. */
export function printOrderList(book: Book): string {
  const look = lookUp(book);
  const rows = orderRows(book);
  const supplies = supplyOrderRows(book);
  const trades = [...new Set([...rows, ...supplies].map(({ trade }) => trade))];
  return trades
    .map((trade) => {
      const own = rows.filter((row) => row.trade === trade);
      const counted = own.filter((row) => row.counted !== '');
      const used = supplies.filter((row) => row.trade === trade);
      return [
        `${look.tradeName(trade)}\n`,
        printTable(own, orderColumns),
        ...(counted.length > 0 ? [`Counted the trade's way\n\n${printTable(counted, countedColumns)}`] : []),
        ...(used.length > 0
          ? [`Supplies, in the rates of the finishes above\n\n${printTable(used, supplyOrderColumns)}`]
          : []),
      ].join('\n');
    })
    .join('\n');
}

const number = (amount: number) => amount.toFixed(1);

const product = (row: OrderRow) => (row.part === 'main' ? row.option : `${row.option}, ${row.part}`);

const countedColumns: readonly Column<OrderRow>[] = [
  { head: 'Product', align: 'left', text: product },
  { head: 'Order', align: 'left', text: (row) => row.counted },
];

const orderColumns: readonly Column<OrderRow>[] = [
  { head: 'Product', align: 'left', text: product },
  { head: 'Maker', align: 'left', text: (row) => row.maker },
  { head: 'Model', align: 'left', text: (row) => row.model },
  { head: 'Net', align: 'right', text: (row) => number(row.net) },
  { head: 'Required', align: 'right', text: (row) => number(row.required) },
  { head: 'Order', align: 'right', text: (row) => number(row.ordered) },
  { head: 'Unit', align: 'left', text: (row) => row.unit },
  { head: 'Packs', align: 'left', text: (row) => row.packs },
  { head: 'Pieces laid out', align: 'left', text: (row) => row.pieces },
  { head: 'Lead days', align: 'right', text: (row) => String(row.leadDays) },
  { head: 'Supply', align: 'left', text: (row) => row.supply },
];
