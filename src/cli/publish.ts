import { join, resolve } from 'node:path';
import { Command } from 'commander';
import { didYouMean } from '../base/problem/index.js';
import { withParts } from '../base/units/index.js';
import type { Book, BookTrade } from '../core/book/index.js';
import { readPhotos } from '../disk/load/index.js';
import type { Undrawn } from '../print/index.js';
import { replaceFolder, writeAtomically, writeTree } from '../disk/store/index.js';
import { bookPdf, changeOrderFiles, tryingOf } from './beside-book.js';
import type { Console } from './console.js';
import {
  loadFor,
  reportBriefly,
  reportProblems,
  withHandoutProblems,
  withHouseOptions,
  type HouseOptions,
  type LoadedFor,
} from './house-options.js';
import { keptPdfs } from './kept-pdfs.js';
import { stampsOf } from './stamp-handout.js';
import { UsageError } from './usage-error.js';
import { writeOrRefuse } from './write-or-refuse.js';

interface PublishOptions extends HouseOptions {
  readonly for: string;
}

/** Writes into a folder, and answers what could not be printed as written. */
type Fill = (fresh: string) => Promise<readonly Undrawn[]>;

type LoadedBook = LoadedFor & { readonly book: Book };

/** `bookmatch publish <dir> --for <who>`: a folder with what one audience may see, and nothing else. */
export function publish(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('publish'))
    .argument('<dir>', 'where to write: a new folder, or one that this command wrote')
    .requiredOption(
      '--for <who>',
      "owner: the book with its money; trades: every trade's handout; or the name of one trade",
    )
    .action(async (dir: string, options: PublishOptions) => {
      const loaded = withHandoutProblems(await loadFor(options, console));
      reportBriefly(loaded, loaded.book ? '' : 'Nothing was written.', console);
      const { book } = loaded;
      if (!book) return done(1);
      const whole: LoadedBook = { ...loaded, book };
      const write =
        options.for === 'owner' ? writeForOwner(whole, console) : writeForTrades(whole, options.for, console);
      const undrawn = await writeOrRefuse(() => replaceFolder(resolve(dir), write));
      const { undrawnProblems } = await import('../print/index.js');
      reportProblems({ problems: undrawnProblems(undrawn, book.sources) }, '', console);
      console.tell(
        `${join(resolve(dir), options.for === 'owner' ? 'book/index.html' : 'handout')}  for ${options.for}\n`,
      );
      done(0);
    });
}

/** The book and what is signed of it, without the text of records: neither as pages nor in what the PDF has attached. */
function writeForOwner(loaded: LoadedBook, console: Console): Fill {
  return async (fresh) => {
    const { writeSite } = await import('../site/index.js');
    const book = withParts(loaded.book, { sources: [] });
    const { photos } = await readPhotos(loaded.open);
    console.doing('making the pages');
    await writeSite(book, fresh, {
      pdf: '../book.pdf',
      changeOrders: '../change-orders/',
      ...(await tryingOf(loaded)),
      photos,
    });
    console.doing('printing the book');
    const { pdf, undrawn } = await bookPdf(book);
    await writeAtomically(join(fresh, 'book.pdf'), pdf);
    await writeTree(join(fresh, 'change-orders'), await changeOrderFiles(book));
    return undrawn;
  };
}

/** Handouts alone, of all trades or of one. */
function writeForTrades(loaded: LoadedBook, who: string, console: Console): Fill {
  const { book } = loaded;
  const trades = tradesFor(who, book.trades);
  const stamps = stampsOf(loaded, book, console);
  return async (fresh) => {
    const { printHandouts, writeHandouts } = await import('./write-handouts.js');
    const handouts = printHandouts(book, stamps, trades, keptPdfs(loaded.open.dir));
    return (await writeHandouts(handouts, fresh, console)).undrawn;
  };
}

function tradesFor(who: string, trades: readonly BookTrade[]): readonly BookTrade[] {
  if (who === 'trades') return trades;
  const found = trades.filter(({ slug }) => slug === who);
  if (found.length > 0) return found;
  const known = ['owner', 'trades', ...trades.map(({ slug }) => slug)];
  throw new UsageError(`--for ${who}: ${didYouMean(who, known) ?? `write one of ${known.join(', ')}`}`);
}
