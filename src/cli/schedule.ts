import { Argument, Command } from 'commander';
import { lookUp } from '../book/index.js';
import { dataTables, tableNames } from '../table/index.js';
import { tableCsv, tableJson, tableText } from '../write/index.js';
import type { Console } from './console.js';
import { loadFor, reportProblems, withHouseOptions } from './house-options.js';
import type { HouseOptions } from './house-options.js';

interface ScheduleOptions extends HouseOptions {
  readonly json?: boolean;
  readonly csv?: boolean;
}

/** `bookmatch schedule doors`: one table of the house, as pages and sheets have it. */
export function schedule(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('schedule'))
    .description('print one of the schedules of the house')
    .addArgument(new Argument('<name>', 'which').choices(tableNames))
    .option('--json', 'print as JSON')
    .option('--csv', 'print as CSV')
    .action(async (name: string, options: ScheduleOptions) => {
      const loaded = await loadFor(options, console);
      reportProblems(loaded, '', console);
      if (!loaded.book) return done(1);
      const table = dataTables(lookUp(loaded.book)).get(name);
      if (!table) console.error(`The records have nothing for ${name}.\n`);
      else if (options.csv) console.out(tableCsv(table));
      else if (options.json) console.out(`${JSON.stringify(tableJson(table), null, 2)}\n`);
      else console.out(`${table.caption}\n\n${tableText(table)}`);
      done(0);
    });
}
