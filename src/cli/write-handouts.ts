import { join } from 'node:path';
import type { Book, BookTrade } from '../core/book/index.js';
import { makeHandout, type Handout, type HandoutOptions } from '../handout/index.js';
import type { Undrawn } from '../print/index.js';
import { currentImages, handoutFolders } from '../site/index.js';
import { outputMark, outputWords, writeTree, type TreeFile } from '../disk/store/index.js';
import { handoutPdf } from './beside-book.js';
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
  const undrawn: Undrawn[] = [];
  const files = async function* (): AsyncIterable<TreeFile> {
    for (const [index, handout] of handouts.entries()) {
      const which = `the handouts, ${index + 1} of ${handouts.length}: ${handout.cover.trade.name}`;
      const made = await handoutFiles(handout, (doing) => console.doing(`${doing} ${which}`), keep);
      undrawn.push(...made.undrawn);
      yield* made.files;
      // One handout may be written anew by itself: each folder is marked as this program's own.
      yield [`${handout.cover.trade.slug}/${outputMark}`, outputWords];
    }
    yield* currentImages(handouts);
  };
  await writeTree(join(out, 'handout'), files());
  return { trades: handouts.length, undrawn };
}

/** Writes one handout as a folder, and answers what could not be printed as written. */
export async function writeHandout(
  handout: Handout,
  dir: string,
  console: Pick<Console, 'doing'>,
): Promise<readonly Undrawn[]> {
  const { slug, name } = handout.cover.trade;
  const { files, undrawn } = await handoutFiles(handout, (doing) => console.doing(`${doing} the handout: ${name}`));
  await writeTree(dir, new Map([...files].map(([path, content]) => [path.slice(`${slug}/`.length), content])));
  return undrawn;
}

/** Pages, assets and PDF of a handout, below the slug of its trade. */
async function handoutFiles(
  handout: Handout,
  doing: (what: string) => void,
  keep: KeepPdf = makeAnew,
): Promise<{ readonly files: Map<string, Uint8Array | string>; readonly undrawn: readonly Undrawn[] }> {
  const { slug } = handout.cover.trade;
  doing('making the pages of');
  const files = await handoutFolders([handout]);
  doing('printing');
  const { pdf, undrawn } = await handoutPdf(handout, keep);
  return { files: files.set(`${slug}/${slug}.pdf`, pdf), undrawn };
}
