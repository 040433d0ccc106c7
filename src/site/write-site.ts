import { chmod, mkdir, mkdtemp, readdir, rename, rm } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import Eleventy from '@11ty/eleventy';
import { bookConfig } from '../../eleventy.config.js';
import type { Book } from '../book/index.js';
import { pagesRoot } from './assets.js';

export interface WrittenPage {
  /** Path below the folder that was asked for: `book/rooms/study.html`. */
  readonly path: string;
}

/** Writes the book's pages into `book/` of a folder. They are made beside it and swapped in when all are there: a page
 *  that no longer is vanishes, and a build that fails leaves the last book as it was. */
export async function writeSite(book: Book, outDir: string): Promise<WrittenPage[]> {
  const out = resolve(outDir);
  await mkdir(out, { recursive: true });
  const fresh = await mkdtemp(join(out, '.book-'));
  try {
    // One instance writes one Book: a second write would reuse the first one's data.
    const eleventy = new Eleventy(pagesRoot, fresh, { quietMode: true, configPath: false, config: bookConfig(book) });
    eleventy.disableLogger();
    await eleventy.write();
    // A temporary folder is its owner's alone; the book is for everyone to read.
    await chmod(fresh, 0o755);
    const pages = await listPages(fresh);
    await swap(fresh, join(out, 'book'));
    return pages;
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
}

async function swap(fresh: string, target: string): Promise<void> {
  const old = `${fresh}-old`;
  const had = await rename(target, old).then(
    () => true,
    () => false,
  );
  await rename(fresh, target);
  if (had) await rm(old, { recursive: true, force: true });
}

async function listPages(folder: string): Promise<WrittenPage[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) => ({ path: `book/${relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/')}` }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}
