import { join, resolve } from 'node:path';
import { Command, Option } from 'commander';
import { makeHandout } from '../handout/index.js';
import { didYouMean, printableJson } from '../base/problem/index.js';
import type { BookTrade } from '../core/book/index.js';
import type { Console } from './console.js';
import {
  loadFor,
  reportBriefly,
  reportProblems,
  withHandoutProblems,
  withHouseOptions,
  type HouseOptions,
} from './house-options.js';
import { stampsOf } from './stamp-handout.js';
import { UsageError } from './usage-error.js';
import { writeOrRefuse } from './write-or-refuse.js';
import { counted } from '../base/units/index.js';

interface HandoutCommandOptions extends HouseOptions {
  readonly out?: string;
  readonly json?: boolean;
}

/** `bookmatch handout <trade>`: one trade's part of the book, without any money. */
export function handout(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('handout'))
    .argument('<trade>', "the trade: the name of its record's file in content/trades, such as drywall")
    .option('--out <dir>', 'where to write (default: _site/handout/<trade> in the house folder)')
    .addOption(new Option('--json', 'print the handout as JSON instead of writing anything').conflicts('out'))
    .action(async (slug: string, options: HandoutCommandOptions) => {
      const loaded = withHandoutProblems(await loadFor(options, console));
      reportBriefly(loaded, loaded.book ? '' : 'Nothing was written.', console);
      const { book } = loaded;
      if (!book) return done(1);
      const trade = findTrade(slug, book.trades);
      const made = makeHandout(book, trade, stampsOf(loaded, book, console)(trade));
      if (options.json) {
        console.out(`${printableJson(made)}\n`);
        return done(0);
      }
      const dir = resolve(options.out ?? join(options.house, '_site', 'handout', slug));
      const { undrawnProblems } = await import('../print/index.js');
      const { writeHandout } = await import('./write-handouts.js');
      const undrawn = await writeOrRefuse(() => writeHandout(made, dir, console));
      reportProblems({ problems: undrawnProblems(undrawn, book.sources) }, '', console);
      console.tell(
        `${join(dir, 'index.html')}  the handout, ${counted(made.rooms.length, 'room')}\n${join(dir, `${slug}.pdf`)}  to print\n`,
      );
      done(0);
    });
}

function findTrade(slug: string, trades: readonly BookTrade[]): BookTrade {
  const found = trades.find((trade) => trade.slug === slug);
  if (found) return found;
  const slugs = trades.map((trade) => trade.slug);
  const byName = trades.find(({ name }) => name.toLowerCase() === slug.toLowerCase());
  const meant = byName ? `did you mean '${byName.slug}'?` : didYouMean(slug, slugs);
  throw new UsageError(`there is no trade '${slug}': ${meant ?? `the trades are ${slugs.join(', ')}`}`);
}
