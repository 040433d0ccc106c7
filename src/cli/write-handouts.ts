import { join } from 'node:path';
import type { Book, BookTrade } from '../core/book/index.js';
import { makeHandout, type Handout, type HandoutOptions } from '../handout/index.js';
import { makeHandoutPdf, type Undrawn } from '../print/index.js';
import { currentImages, handoutFolders } from '../site/index.js';
import { outputMark, outputWords, writeTree } from '../disk/store/index.js';
import type { Console } from './console.js';
import { makeAnew, type KeepPdf } from './kept-pdfs.js';

/** Writes `handout/` of a site: a folder for each trade, and the images by which older copies learn of the current issue. Handouts of
 *  other trades, and of those that are no more, vanish. `stamp` says what each is issued as. */
export async function writeHandouts(
  book: Book,
  out: string,
  stamp: (trade: BookTrade) => HandoutOptions,
  console: Pick<Console, 'doing'>,
  trades: readonly BookTrade[] = book.trades,
  keep: KeepPdf = makeAnew,
): Promise<{ readonly trades: number; readonly undrawn: readonly Undrawn[] }> {
  const handouts = trades.map((trade) => makeHandout(book, trade, stamp(trade)));
  const { files, undrawn } = await handoutFiles(handouts, console, keep);
  // One handout may be written anew by itself: each folder is marked as this program's own.
  for (const { cover } of handouts) files.set(`${cover.trade.slug}/${outputMark}`, outputWords);
  for (const [path, image] of currentImages(handouts)) files.set(path, image);
  await writeTree(join(out, 'handout'), files);
  return { trades: handouts.length, undrawn };
}

/** Writes one handout as a folder, and answers what could not be printed as written. */
export async function writeHandout(
  handout: Handout,
  dir: string,
  console: Pick<Console, 'doing'>,
): Promise<readonly Undrawn[]> {
  const start = `${handout.cover.trade.slug}/`;
  const { files, undrawn } = await handoutFiles([handout], console);
  await writeTree(dir, new Map([...files].map(([path, content]) => [path.slice(start.length), content])));
  return undrawn;
}

/** Pages, assets and PDF of each handout, below the slug of its trade. */
async function handoutFiles(
  handouts: readonly Handout[],
  console: Pick<Console, 'doing'>,
  keep: KeepPdf = makeAnew,
): Promise<{ readonly files: Map<string, Uint8Array | string>; readonly undrawn: readonly Undrawn[] }> {
  console.doing('making the pages of the handouts');
  const files = await handoutFolders(handouts);
  const undrawn: Undrawn[] = [];
  for (const [index, handout] of handouts.entries()) {
    const { slug, name } = handout.cover.trade;
    console.doing(`printing the handouts, ${index + 1} of ${handouts.length}: ${name}`);
    const made = await keep(`handout-${slug}`, handout, () => makeHandoutPdf(handout));
    undrawn.push(...made.undrawn);
    files.set(`${slug}/${slug}.pdf`, made.pdf);
  }
  return { files, undrawn };
}
