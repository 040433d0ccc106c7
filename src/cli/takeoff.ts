import { Command, Option } from 'commander';
import { orderRows, ordersCsv, quantitiesCsv, quantityRows } from '../export/index.js';
import type { OrderRow, QuantityRow } from '../export/index.js';
import { lookUp } from '../book/index.js';
import type { Book } from '../book/index.js';
import type { Console } from './console.js';
import { loadFor, reportProblems, withHouseOptions } from './house-options.js';
import type { HouseOptions } from './house-options.js';
import { printTable } from './table.js';
import type { Column } from './table.js';

const orders = ['room', 'trade', 'option'] as const;
type By = (typeof orders)[number];

interface TakeoffOptions extends HouseOptions {
  readonly by: By;
  readonly json?: boolean;
  readonly csv?: boolean;
}

/** `bookmatch takeoff`: quantities and the order list, without any money. */
export function takeoff(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('takeoff'))
    .description('print quantities and the order list')
    .addOption(
      new Option('--by <what>', 'quantities by room or by trade, or what to order by option')
        .choices(orders)
        .default('room'),
    )
    .option('--json', 'print as JSON')
    .option('--csv', 'print as CSV')
    .action(async (options: TakeoffOptions) => {
      const loaded = await loadFor(options, console);
      reportProblems(loaded, '', console);
      if (!loaded.book) return done(1);
      console.out(options.by === 'option' ? printOrders(loaded.book, options) : printQuantities(loaded.book, options));
      done(0);
    });
}

function printQuantities(book: Book, { by, json, csv }: TakeoffOptions): string {
  const look = lookUp(book);
  const rows = quantityRows(book);
  if (json) return `${JSON.stringify(rows, null, 2)}\n`;
  if (csv) return quantitiesCsv(book);
  const headOf =
    by === 'trade'
      ? (row: QuantityRow) => look.tradeName(row.trade)
      : (row: QuantityRow) => `${row.room} ${row.roomName}`;
  return inGroups(rows, headOf, by === 'trade' ? [roomColumn, ...quantityColumns] : quantityColumns);
}

function printOrders(book: Book, { json, csv }: TakeoffOptions): string {
  const look = lookUp(book);
  const rows = orderRows(book);
  if (json) return `${JSON.stringify(rows, null, 2)}\n`;
  if (csv) return ordersCsv(book);
  return inGroups(rows, (row) => look.tradeName(row.trade), orderColumns);
}

function inGroups<Row>(rows: readonly Row[], headOf: (row: Row) => string, columns: readonly Column<Row>[]): string {
  const heads = [...new Set(rows.map(headOf))];
  return heads
    .map(
      (head) =>
        `${head}\n\n${printTable(
          rows.filter((row) => headOf(row) === head),
          columns,
        )}`,
    )
    .join('\n');
}

const number = (amount: number) => amount.toFixed(1);

const roomColumn: Column<QuantityRow> = { head: 'Room', align: 'left', text: (row) => row.room };

const quantityColumns: readonly Column<QuantityRow>[] = [
  { head: 'Place', align: 'left', text: (row) => row.place },
  { head: 'Finish', align: 'left', text: (row) => (row.part === 'main' ? row.option : `${row.option}, ${row.part}`) },
  { head: 'Gross', align: 'right', text: (row) => number(row.gross) },
  { head: 'Less', align: 'right', text: (row) => number(row.deducted) },
  { head: 'Net', align: 'right', text: (row) => number(row.net) },
  { head: 'Coats', align: 'right', text: (row) => (row.times === 1 ? '' : String(row.times)) },
  { head: 'Waste %', align: 'right', text: (row) => number(row.wastePercent) },
  { head: 'Required', align: 'right', text: (row) => number(row.required) },
  { head: 'Unit', align: 'left', text: (row) => row.unit },
];

const orderColumns: readonly Column<OrderRow>[] = [
  { head: 'Product', align: 'left', text: (row) => (row.part === 'main' ? row.option : `${row.option}, ${row.part}`) },
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
