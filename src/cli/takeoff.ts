import { Command, Option } from 'commander';
import { quantitiesCsv, takeoffRows } from '../export/index.js';
import { lookUp } from '../book/index.js';
import type { Book } from '../book/index.js';
import type { Console } from './console.js';
import { loadFor, reportProblems, withHouseOptions } from './house-options.js';
import type { HouseOptions } from './house-options.js';
import { orderTables } from '../table/index.js';
import { blocksText, tableCsv, tableJson } from '../write/index.js';
import { printQuantities } from './takeoff-quantities.js';

const orders = ['room', 'trade', 'option'] as const;

export interface TakeoffOptions extends HouseOptions {
  readonly by: (typeof orders)[number];
  readonly arithmetic?: boolean;
  readonly json?: boolean;
  readonly csv?: boolean;
}

/** `bookmatch takeoff`: quantities and the order list with supplies, without any money. */
export function takeoff(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('takeoff'))
    .description('print quantities, supplies and the order list')
    .addOption(
      new Option('--by <what>', 'quantities by room or by trade, or what to order by option')
        .choices(orders)
        .default('room'),
    )
    .option('--arithmetic', 'print every deduction and factor with its reason')
    .option('--json', 'print as JSON')
    .option('--csv', 'print as CSV')
    .action(async (options: TakeoffOptions) => {
      const loaded = await loadFor(options, console);
      reportProblems(loaded, '', console);
      if (!loaded.book) return done(1);
      console.out(printTakeoff(loaded.book, options));
      done(0);
    });
}

function printTakeoff(book: Book, options: TakeoffOptions): string {
  if (options.by === 'option') return printOrders(book, options);
  if (options.csv) return quantitiesCsv(book);
  if (options.json) return json(takeoffRows(book));
  return printQuantities(book, options);
}

function printOrders(book: Book, options: TakeoffOptions): string {
  const look = lookUp(book);
  if (options.csv) return tableCsv(...orderTables(look));
  if (options.json) return json(tableJson(...orderTables(look)));
  return blocksText(orderTables(look));
}

const json = (rows: readonly object[]) => `${JSON.stringify(rows, null, 2)}\n`;
