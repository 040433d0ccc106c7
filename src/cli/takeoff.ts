import { Command, Option } from 'commander';
import { lookUp, type Book } from '../core/book/index.js';
import { printableJson } from '../base/problem/index.js';
import type { Console } from './console.js';
import { loadFor, reportBriefly, withHouseOptions, type HouseOptions } from './house-options.js';
import { orderTables, quantityTables, takeoffBlocks } from '../table/index.js';
import { blocksText, tableCsv, tableJson } from '../write/index.js';

const orders = ['room', 'trade', 'option'] as const;

interface TakeoffOptions extends HouseOptions {
  readonly by: (typeof orders)[number];
  readonly arithmetic?: boolean;
  readonly json?: boolean;
  readonly csv?: boolean;
}

/** `bookmatch takeoff`: quantities and the order list with supplies, without any money. */
export function takeoff(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('takeoff'))
    .addOption(
      new Option('--by <what>', 'quantities by room or by trade, or what to order by option')
        .choices(orders)
        .default('room'),
    )
    .option('--arithmetic', 'print every deduction and factor with its reason')
    .addOption(new Option('--json', 'print as JSON').conflicts('csv'))
    .option('--csv', 'print as CSV')
    .action(async (options: TakeoffOptions) => {
      const loaded = await loadFor(options, console);
      reportBriefly(loaded, '', console);
      if (!loaded.book) return done(1);
      console.out(printTakeoff(loaded.book, options));
      done(0);
    });
}

function printTakeoff(book: Book, { by, arithmetic, csv, json }: TakeoffOptions): string {
  const look = lookUp(book);
  const tables = by === 'option' ? orderTables(look) : quantityTables(look);
  if (csv) return tableCsv(...tables);
  if (json) return `${printableJson(tableJson(...tables))}\n`;
  return blocksText(by === 'option' ? tables : takeoffBlocks(look, { by, ...(arithmetic && { arithmetic }) }));
}
