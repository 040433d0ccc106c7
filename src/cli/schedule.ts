import { Command, Option } from 'commander';
import { resolve } from 'node:path';
import { didYouMean, printableJson } from '../base/problem/index.js';
import { lookUp } from '../core/book/index.js';
import { writeAtomically } from '../disk/store/index.js';
import type { Sheet, TableBlock } from '../sheet/index.js';
import { dataTables, tableNames } from '../table/index.js';
import { tableCsv, tableJson, tableText } from '../write/index.js';
import type { Console } from './console.js';
import { loadFor, reportBriefly, withHouseOptions, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';

interface ScheduleOptions extends HouseOptions {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly pdf?: string;
}

/** `bookmatch schedule doors`: one table of the house, as pages and sheets have it. */
export function schedule(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('schedule'))
    .argument('<schedule>', `which: ${tableNames.join(', ')}`)
    .addOption(new Option('--json', 'print as JSON').conflicts(['csv', 'pdf']))
    .addOption(new Option('--csv', 'print as CSV').conflicts('pdf'))
    .option('--pdf <file>', 'write as a PDF, such as for a supplier')
    .action(async (name: string, options: ScheduleOptions) => {
      if (!tableNames.includes(name)) throw new UsageError(unknownSchedule(name));
      const loaded = await loadFor(options, console);
      reportBriefly(loaded, '', console);
      if (!loaded.book) return done(1);
      const table = dataTables(lookUp(loaded.book)).get(name);
      if (!table) {
        console.error(`The records have nothing for ${name}.\n`);
        if (options.json) console.out('[]\n');
        return done(options.pdf === undefined ? 0 : 1);
      }
      if (options.pdf !== undefined) {
        const { makeSheetPdf } = await import('../print/index.js');
        await writeAtomically(resolve(options.pdf), (await makeSheetPdf(loaded.book, sheetOf(table))).pdf);
        console.tell(`${options.pdf}  ${table.caption}\n`);
      } else if (options.csv) console.out(tableCsv(table));
      else if (options.json) console.out(`${printableJson(tableJson(table))}\n`);
      else console.out(`${table.caption}\n\n${tableText(table)}`);
      done(0);
    });
}

function unknownSchedule(name: string): string {
  const meant = didYouMean(name.toLowerCase(), tableNames);
  return `there is no schedule '${name}'${meant === undefined ? '' : `: ${meant}`}\nSchedules are ${tableNames.join(', ')}.`;
}

/** A table on a sheet of its own. */
function sheetOf(table: TableBlock): Sheet {
  const paper = table.columns.length > 8 ? 'landscape' : 'portrait';
  return { format: 'bookmatch/sheet/1', id: table.id, title: table.caption, paper, blocks: [table] };
}
