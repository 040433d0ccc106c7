import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Book } from '../../src/core/book/index.js';
import type { Source } from '../../src/core/model/index.js';
import { pageScript } from '../../src/disk/program/index.js';
import { makeComposer, recordsDigest } from '../../src/disk/load/index.js';
import { writeSite } from '../../src/site/index.js';
import { packHouse, type PackedHouse } from '../../src/try/index.js';
import { fixtureBook, fixtureTexts } from '../site/fixture.js';
import { packedDemo } from '../try/packed-demo.js';

/** The day for which the demo house is built in tests. */
export const demoDay = '2026-04-23';

/** Builds the demo house's pages, with which choices can be tried, and answers their folder. */
export async function buildDemo(): Promise<string> {
  const { book, packed } = await packedDemo(demoDay);
  return write(book, { trying: { house: packed, script: await pageScript() } });
}

/** Builds the small house whose people write markup into their records, with which choices can be tried. */
export async function buildHostile(): Promise<string> {
  const sources = Object.entries(fixtureTexts).map(([path, text]) => ({ path, text }));
  return (await buildOf(sources, fixtureBook)).folder;
}

/** Builds the pages of records, by their Book, with which choices can be tried; answers their folder, and what tries choices in them. */
export async function buildOf(
  sources: readonly Source[],
  book: Book,
): Promise<{ readonly folder: string; readonly packed: PackedHouse }> {
  const { house } = makeComposer().read(sources);
  if (!house) throw new Error('the house cannot be read');
  const packed = packHouse({ ...house, snapshot: recordsDigest(sources) }, book);
  return { folder: await write(book, { trying: { house: packed, script: await pageScript() } }), packed };
}

async function write(book: Book, beside?: Parameters<typeof writeSite>[2]): Promise<string> {
  const out = await mkdtemp(join(tmpdir(), 'bookmatch-site-'));
  await writeSite(book, out, beside);
  return join(out, 'book');
}
