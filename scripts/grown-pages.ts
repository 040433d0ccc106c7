import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { makeHandout } from '../src/handout/index.js';
import { speakAs } from '../src/base/units/index.js';
import { loadBook } from '../src/disk/load/index.js';
import { handoutFolders, writeSite } from '../src/site/index.js';

/** `node --import tsx scripts/grown-pages.ts HOUSE DAY`: makes all pages of a house and throws them away, for the bench to time. */
const [house = '.', on = ''] = process.argv.slice(2);
const { book } = await loadBook(house, on);
if (!book) throw new Error(`${house} has errors`);
speakAs(book.house);
const out = await mkdtemp(join(tmpdir(), 'bookmatch-grown-'));
try {
  await writeSite(book, out);
  for (const trade of book.trades) await handoutFolders([makeHandout(book, trade)]);
} finally {
  await rm(out, { recursive: true });
}
