import { join } from 'node:path';
import type { Book, BookTrade } from '../book/index.js';
import { makeHandout } from '../handout/index.js';
import type { Handout, HandoutOptions } from '../handout/index.js';
import { makeHandoutPdf } from '../print/index.js';
import { printProblems } from '../problem/index.js';
import { currentFile, currentScript, handoutFolders } from '../site/index.js';
import { outputMark, outputWords, writeTree } from '../store/index.js';
import type { Console } from './console.js';

/** Writes `handout/` of a site: a folder for each trade, and the list of current issues that older copies ask for. Handouts of
 *  trades that are no more vanish. `stamp` says what each is issued as. */
export async function writeHandouts(
  book: Book,
  out: string,
  console: Console,
  stamp: (trade: BookTrade) => HandoutOptions,
): Promise<{ readonly trades: number }> {
  const handouts = book.trades.map((trade) => makeHandout(book, trade, stamp(trade)));
  const files = await handoutFiles(handouts, console);
  // One handout may be written anew by itself: each folder is marked as this program's own.
  for (const { cover } of handouts) files.set(`${cover.trade.slug}/${outputMark}`, outputWords);
  files.set(currentFile, currentScript(handouts));
  await writeTree(join(out, 'handout'), files);
  return { trades: handouts.length };
}

/** Writes one handout as a folder. */
export async function writeHandout(handout: Handout, dir: string, console: Console): Promise<void> {
  const start = `${handout.cover.trade.slug}/`;
  const files = [...(await handoutFiles([handout], console))].map(
    ([path, content]) => [path.slice(start.length), content] as const,
  );
  await writeTree(dir, new Map(files));
}

/** Pages, assets and PDF of each handout, below the slug of its trade. */
async function handoutFiles(handouts: readonly Handout[], console: Console): Promise<Map<string, Uint8Array | string>> {
  const files = await handoutFolders(handouts);
  for (const handout of handouts) {
    const { slug } = handout.cover.trade;
    const { pdf, problems } = await makeHandoutPdf(handout);
    if (problems.length > 0) console.error(printProblems(problems, { color: console.color }));
    files.set(`${slug}/${slug}.pdf`, pdf);
  }
  return files;
}
