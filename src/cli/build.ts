import { join, resolve } from 'node:path';
import { Command } from 'commander';
import { lookUp, type Book } from '../core/book/index.js';
import { dataFile, dataTables, orderTables, quantityTables } from '../table/index.js';
import { tableCsv, bookCalendar } from '../write/index.js';
import { readPhotos, withTextDiffs } from '../disk/load/index.js';
import type { Beside } from '../site/index.js';
import { makeInPlace, refuseForeign, writeAtomically, writeTree } from '../disk/store/index.js';
import { printableJson, type Problem } from '../base/problem/index.js';
import { bookPdf, changeOrderFiles, meanwhile, tryingOf } from './beside-book.js';
import type { Console } from './console.js';
import {
  checkHouseDir,
  dayOf,
  loadFor,
  type LoadedFor,
  reportBriefly,
  reportProblems,
  withHandoutProblems,
  withHouseOptions,
  type HouseOptions,
} from './house-options.js';
import { keptBuild, madeIn, type Made } from './kept-build.js';
import { keptPdfs } from './kept-pdfs.js';
import { changesSince, type IssueChanges } from './issue-changes.js';
import { handoutStamps } from './stamp-handout.js';
import { writeOrRefuse } from './write-or-refuse.js';

interface BuildOptions extends HouseOptions {
  readonly out?: string;
  readonly json?: boolean;
}

/** `bookmatch build`: the book as a site and a PDF. Nothing is written when the records have errors. */
export function build(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('build'))
    .option('--out <dir>', 'where to write (default: _site in the house folder)')
    .option('--json', 'print the computed Book as JSON instead of writing anything')
    .action(async (options: BuildOptions) => {
      if (options.json) return done(await printJson(options, console));
      const dir = checkHouseDir(options.house);
      const out = resolve(options.out ?? resolve(options.house, '_site'));
      const on = dayOf(options.on, console);
      const built = await keptBuild({ dir, out, by: [on] }, console, (own) => writeBook({ ...options, on }, out, own));
      if (built === 'up to date') console.tell(`${out} is up to date: nothing that it is made from has changed.\n`);
      done(built === 'nothing built' ? 1 : 0);
    });
}

async function printJson(options: HouseOptions, console: Console): Promise<number> {
  const book = await bookFor(options, console);
  if (book) console.out(`${printableJson(book.book)}\n`);
  return book ? 0 : 1;
}

/** The Book, when the records have no errors; what they have is told. */
async function bookFor(
  options: HouseOptions,
  console: Console,
): Promise<{ readonly loaded: LoadedFor; readonly book: Book } | undefined> {
  const loaded = withHandoutProblems(await loadFor(options, console));
  reportBriefly(loaded, loaded.book ? '' : 'Nothing was written.', console);
  return loaded.book && { loaded, book: loaded.book };
}

async function writeBook(options: HouseOptions, out: string, console: Console): Promise<Made | undefined> {
  const found = await bookFor(options, console);
  if (!found) return undefined;
  await writeOrRefuse(() => refuseForeignParts(out), '. Nothing was written.');
  const { pages, trades, problems, made } = await makeInPlace(out, 'the book', async (stage) => ({
    ...(await makeParts(found.loaded, found.book, stage, console)),
    made: await madeIn(stage),
  }));
  reportProblems({ problems }, '', console);
  console.tell(
    `${join(out, 'book', 'index.html')}  the book, ${pages} pages\n` +
      `${join(out, 'book.pdf')}  the book to print and sign\n` +
      `${join(out, 'data')}  the Book as JSON, quantities, orders and schedules as CSV, decide-by days as iCalendar\n` +
      `${join(out, 'handout')}  a handout for each of ${trades} trades: a folder of pages with its PDF, without any money\n`,
  );
  return made;
}

/** Folders that somebody else filled are not replaced. */
async function refuseForeignParts(out: string): Promise<void> {
  for (const name of ['data', 'change-orders', 'handout']) await refuseForeign(join(out, name));
}

interface Parts {
  readonly pages: number;
  readonly trades: number;
  readonly problems: readonly Problem[];
}

/** Makes every part of the book in a folder. */
async function makeParts(loaded: LoadedFor, book: Book, out: string, console: Console): Promise<Parts> {
  const { undrawnProblems } = await import('../print/index.js');
  const { writeSite } = await import('../site/index.js');
  const { printHandouts, writeHandouts } = await import('./write-handouts.js');
  console.doing('printing the book');
  const keep = keptPdfs(loaded.open.dir);
  const printed = meanwhile(bookPdf(book, keep));
  console.doing('comparing with the last issue');
  const sinceLast = changesSince(book, loaded.since, loaded.open, console);
  const sinceBefore = changesSince(book, loaded.before, loaded.open, console);
  const since = await writeSince(book, sinceLast(), out, console);
  const orders = meanwhile(changeOrderFiles(book, keep));
  const handouts = printHandouts(book, handoutStamps(book, sinceLast, sinceBefore), book.trades, keep);
  console.doing('making the pages');
  const { photos, problems: unshown } = await readPhotos(loaded.open);
  const pages = await writeSite(book, out, {
    ...since,
    pdf: '../book.pdf',
    changeOrders: '../change-orders/',
    handouts: '../handout/',
    ...(await tryingOf(loaded)),
    photos,
  });
  await writeTree(join(out, 'data'), dataFiles(book));
  const { trades, undrawn } = await writeHandouts(handouts, out, console);
  console.doing('printing the change orders');
  await writeTree(join(out, 'change-orders'), await orders);
  console.doing('printing the book');
  const { pdf, undrawn: undrawnInBook } = await printed;
  await writeAtomically(join(out, 'book.pdf'), pdf);
  const problems = [...unshown, ...undrawnProblems([...undrawnInBook, ...undrawn], book.sources)];
  return { pages: pages.length, trades, problems };
}

/** What changed since the last issue, as pages beside the book; nothing when there is no issue to compare with. */
async function writeSince(
  book: Book,
  changes: IssueChanges | undefined,
  out: string,
  console: Console,
): Promise<Beside> {
  if (!changes) return {};
  const told = await withTextDiffs(changes.comparison, changes.then, book);
  if (told.why !== undefined) console.error(`The records' text is left out of the comparison: ${told.why}.\n`);
  const { writeComparison } = await import('../site/index.js');
  await writeComparison(told.comparison, changes.then, book, out, { book: '../book/index.html' });
  return { comparison: '../comparison/index.html' };
}

/** What other programs read: the whole Book, and tables for a spreadsheet or a calendar. */
function dataFiles(book: Book): Map<string, string> {
  const look = lookUp(book);
  return new Map([
    ['book.json', `${JSON.stringify(book, null, 1)}\n`],
    ['quantities.csv', tableCsv(...quantityTables(look))],
    ['orders.csv', tableCsv(...orderTables(look))],
    ...[...dataTables(look)].map(([name, table]) => [dataFile(name), tableCsv(table)] as const),
    ['decide-by.ics', bookCalendar(book)],
  ]);
}
