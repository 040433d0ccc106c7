import { resolve } from 'node:path';
import { Command, Option } from 'commander';
import { lookUp, type BookHouseAlternative, type LookUp } from '../core/book/index.js';
import { writeAtomically } from '../disk/store/index.js';
import { alternativeLines, alternativeSection, alternatives as compared, alternativeSheet } from '../table/index.js';
import type { Sheet } from '../sheet/index.js';
import { blocksText, tableCsv } from '../write/index.js';
import { alternativeNamed } from './alternative-named.js';
import { printableJson } from '../base/problem/index.js';
import type { Console } from './console.js';
import { loadFor, reportBriefly, withHouseOptions, type HouseOptions } from './house-options.js';

interface AlternativesOptions extends HouseOptions {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly pdf?: string;
}

/** `bookmatch alternatives`: sets of choices over the whole house beside today and each other; of one by name, where its
 *  difference comes from. */
export function alternatives(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('alternatives'))
    .argument('[alternative]', 'one of them, line by line')
    .addOption(new Option('--json', 'print as JSON').conflicts(['csv', 'pdf']))
    .addOption(new Option('--csv', 'print as CSV: the houses, or the lines of one').conflicts('pdf'))
    .option('--pdf <file>', 'write as a PDF')
    .action(async (name: string | undefined, options: AlternativesOptions) => {
      const loaded = await loadFor(options, console);
      reportBriefly(loaded, '', console);
      if (!loaded.book) return done(1);
      const look = lookUp(loaded.book);
      const one = name === undefined ? undefined : alternativeNamed(name, loaded.book.alternatives);
      if (options.pdf !== undefined) {
        const { makeSheetPdf } = await import('../print/index.js');
        await writeAtomically(resolve(options.pdf), (await makeSheetPdf(loaded.book, sheetOf(one, look))).pdf);
        console.tell(`${options.pdf}  ${one?.name ?? 'Alternatives'}\n`);
      } else console.out(print(one, look, options));
      done(0);
    });
}

function print(one: BookHouseAlternative | undefined, look: LookUp, { json, csv }: AlternativesOptions): string {
  if (json) return `${printableJson(one ?? look.book.alternatives)}\n`;
  if (!csv) return blocksText(sheetOf(one, look).blocks);
  const book = one ? { ...look.book, alternatives: [one] } : look.book;
  return tableCsv((one ? alternativeLines : compared).lay(lookUp(book)));
}

function sheetOf(one: BookHouseAlternative | undefined, look: LookUp): Sheet {
  const sheet = alternativeSheet(look);
  return one ? { ...sheet, title: one.name, blocks: [alternativeSection(one, look)] } : sheet;
}
