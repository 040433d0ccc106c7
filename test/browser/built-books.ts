import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeSite } from '../../src/site/index.js';
import { demoBook } from '../demo-house.js';
import { fixtureBook } from '../site/fixture.js';

/** The day for which the demo house is built in tests. */
export const demoDay = '2026-04-23';

/** Builds the demo house's pages and answers their folder. */
export async function buildDemo(): Promise<string> {
  return write(await demoBook(demoDay));
}

/** Builds the small house whose people write markup into their records. */
export async function buildHostile(): Promise<string> {
  return write(fixtureBook);
}

async function write(book: Parameters<typeof writeSite>[0]): Promise<string> {
  const out = await mkdtemp(join(tmpdir(), 'bookmatch-site-'));
  await writeSite(book, out);
  return join(out, 'book');
}
