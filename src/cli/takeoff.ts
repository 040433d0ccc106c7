import { Command, Option } from 'commander';
import { orderRows, ordersCsv, quantitiesCsv, supplyOrderRows, takeoffRows } from '../export/index.js';
import type { Book } from '../book/index.js';
import type { Console } from './console.js';
import { loadFor, reportProblems, withHouseOptions } from './house-options.js';
import type { HouseOptions } from './house-options.js';
import { printOrderList } from './takeoff-orders.js';
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
  const ordering = options.by === 'option';
  if (options.csv) return ordering ? ordersCsv(book) : quantitiesCsv(book);
  if (options.json) {
    const rows = ordering ? [...orderRows(book), ...supplyOrderRows(book)] : takeoffRows(book);
    return `${JSON.stringify(rows, null, 2)}\n`;
  }
  return ordering ? printOrderList(book) : printQuantities(book, options);
}
