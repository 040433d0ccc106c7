import { readdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import Eleventy from '@11ty/eleventy';
import type { Book } from '../core/book/index.js';
import type { Comparison } from '../core/compare/index.js';
import { pathBelow } from '../disk/program/index.js';
import { makeInPlace, writeAtomically } from '../disk/store/index.js';
import { pagesRoot } from './assets.js';
import { awayFromRoot } from './away-from-root.js';
import { bookFiles, type BookFile } from './book-files.js';
import { comparisonFiles, manualFiles, partsOf } from './config.js';
import type { ManualText } from './manual.js';
import { photoFile } from './paths.js';
import { makeView, type Beside } from './view.js';

interface WrittenPage {
  /** Path below the folder that was asked for: `book/rooms/study.html`. */
  readonly path: string;
}

/** Writes the book's pages into `book/` of a folder. They are made beside it and swapped in when all are there: a page
 *  that no longer is vanishes, and a build that fails leaves the last book as it was. `beside` is what the caller puts next
 *  to them, to be linked. */
export async function writeSite(book: Book, outDir: string, beside?: Beside): Promise<WrittenPage[]> {
  return writeSheets(() => bookFiles(makeView(book, beside)), outDir, 'book', photosOf(book, beside));
}

/** Writes what lies between two Books into `comparison/` of a folder, in the same way. `beside` is linked from its pages. */
export async function writeComparison(
  comparison: Comparison,
  from: Book,
  to: Book,
  outDir: string,
  beside?: Beside,
): Promise<WrittenPage[]> {
  return writeSheets(() => comparisonFiles(comparison, from, to, beside), outDir, 'comparison');
}

/** Writes the manual into `manual/` of a folder, in the same way. */
export async function writeManual(texts: readonly ManualText[], outDir: string): Promise<WrittenPage[]> {
  return writeSheets(() => manualFiles(texts), outDir, 'manual');
}

async function writeSheets(
  files: () => readonly BookFile[],
  outDir: string,
  name: 'book' | 'comparison' | 'manual',
  copies: ReadonlyMap<string, Uint8Array> = new Map(),
): Promise<WrittenPage[]> {
  const out = resolve(outDir);
  return makeInPlace(out, `the pages of ${name}`, async (stage) => {
    const fresh = join(stage, name);
    // One instance writes once: a second write would reuse the first one's data.
    await awayFromRoot(async () => {
      for (const config of partsOf(files())) {
        const eleventy = new Eleventy(pagesRoot, fresh, { quietMode: true, configPath: false, config });
        eleventy.disableLogger();
        await eleventy.write();
      }
    });
    for (const [path, bytes] of copies) await writeAtomically(join(fresh, path), bytes);
    return listPages(fresh, name);
  });
}

/** Files of photographs by their path in the book's folder. */
function photosOf({ options }: Book, { photos }: Beside = {}): ReadonlyMap<string, Uint8Array> {
  return new Map(
    options.flatMap((option) => {
      const bytes = photos?.get(option.id)?.bytes;
      return option.photo && bytes ? [[photoFile(option, option.photo), bytes] as const] : [];
    }),
  );
}

async function listPages(folder: string, name: string): Promise<WrittenPage[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) => ({ path: `${name}/${pathBelow(folder, join(entry.parentPath, entry.name))}` }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}
