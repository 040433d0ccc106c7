import { join } from 'node:path';
import type { Book, BookTrade } from '../core/book/index.js';
import { makeHandout, type Handout, type HandoutOptions } from '../handout/index.js';
import type { BookPdf, Undrawn } from '../print/index.js';
import { currentImages, handoutFolders } from '../site/index.js';
import { outputMark, outputWords, writeTree, type TreeFile } from '../disk/store/index.js';
import { handoutPdf, meanwhile } from './beside-book.js';
import type { Console } from './console.js';
import { makeAnew, type KeepPdf } from './kept-pdfs.js';

/** A handout that is being printed. */
interface PrintedHandout {
  readonly handout: Handout;
  readonly printed: Promise<BookPdf>;
}

/** Begins to print the handouts of some trades. `stamp` says what each is issued as. */
export function printHandouts(
  book: Book,
  stamp: (trade: BookTrade) => HandoutOptions,
  trades: readonly BookTrade[] = book.trades,
  keep: KeepPdf = makeAnew,
): readonly PrintedHandout[] {
  return trades
    .map((trade) => makeHandout(book, trade, stamp(trade)))
    .map((handout) => ({ handout, printed: meanwhile(handoutPdf(handout, keep)) }));
}

/** Writes `handout/` of a site: a folder for each trade, and the images by which older copies learn of the current issue. Handouts of
 *  other trades, and of those that are no more, vanish. */
export async function writeHandouts(
  all: readonly PrintedHandout[],
  out: string,
  console: Pick<Console, 'doing'>,
): Promise<{ readonly trades: number; readonly undrawn: readonly Undrawn[] }> {
  const undrawn: Undrawn[] = [];
  const files = async function* (): AsyncIterable<TreeFile> {
    for (const [index, one] of all.entries()) {
      const { slug, name } = one.handout.cover.trade;
      const which = `the handouts, ${index + 1} of ${all.length}: ${name}`;
      const made = await handoutFiles(one, (doing) => console.doing(`${doing} ${which}`));
      undrawn.push(...made.undrawn);
      yield* made.files;
      // One handout may be written anew by itself: each folder is marked as this program's own.
      yield [`${slug}/${outputMark}`, outputWords];
    }
    yield* currentImages(all.map(({ handout }) => handout));
  };
  await writeTree(join(out, 'handout'), files());
  return { trades: all.length, undrawn };
}

/** Writes one handout as a folder, and answers what could not be printed as written. */
export async function writeHandout(
  handout: Handout,
  dir: string,
  console: Pick<Console, 'doing'>,
): Promise<readonly Undrawn[]> {
  const { slug, name } = handout.cover.trade;
  const printed = meanwhile(handoutPdf(handout));
  const { files, undrawn } = await handoutFiles({ handout, printed }, (doing) =>
    console.doing(`${doing} the handout: ${name}`),
  );
  await writeTree(dir, new Map([...files].map(([path, content]) => [path.slice(`${slug}/`.length), content])));
  return undrawn;
}

/** Pages, assets and PDF of a handout, below the slug of its trade. */
async function handoutFiles(
  { handout, printed }: PrintedHandout,
  doing: (what: string) => void,
): Promise<{ readonly files: Map<string, Uint8Array | string>; readonly undrawn: readonly Undrawn[] }> {
  const { slug } = handout.cover.trade;
  doing('making the pages of');
  const files = await handoutFolders([handout]);
  doing('printing');
  const { pdf, undrawn } = await printed;
  return { files: files.set(`${slug}/${slug}.pdf`, pdf), undrawn };
}
