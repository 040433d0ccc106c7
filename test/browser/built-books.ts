import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadBook } from '../../src/disk/load/index.js';
import { printProblems } from '../../src/base/problem/index.js';
import { writeSite } from '../../src/site/index.js';
import { fixtureBook } from '../site/fixture.js';

/** The day for which the demo house is built in tests. */
export const demoDay = '2026-04-23';

/** Builds the demo house's pages and answers their folder. */
export async function buildDemo(): Promise<string> {
  const { book, problems } = await loadBook('.', demoDay);
  if (!book) throw new Error(`the demo house has errors:\n${printProblems(problems, { color: false, outcome: '' })}`);
  return write(book);
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
