import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Console } from '../../src/cli/console.js';
import { keptBuild, madeIn } from '../../src/cli/kept-build.js';
import { keptPdfs } from '../../src/cli/kept-pdfs.js';
import { bookOf, openHouse } from '../../src/disk/load/index.js';
import type * as Program from '../../src/disk/program/index.js';
import { readHouseFolder } from '../../src/disk/store/index.js';
import type { BookPdf } from '../../src/print/index.js';
import { smallFiles } from '../book/small-house.js';

/** The program that runs, by the digest of its sources; undefined where its files cannot be read. */
const program = vi.hoisted((): { digest: string | undefined } => ({ digest: 'a'.repeat(64) }));

vi.mock('../../src/disk/program/index.js', async (original) => ({
  ...(await original<typeof Program>()),
  programDigest: () => Promise.resolve(program.digest),
}));

let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'bookmatch-changed-program-'));
  program.digest = 'a'.repeat(64);
  for (const { path, text } of smallFiles()) {
    mkdirSync(dirname(join(dir, path)), { recursive: true });
    writeFileSync(join(dir, path), text);
  }
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

const silent = { error: () => undefined, problems: () => undefined } as unknown as Console;
const others = ['b'.repeat(64), undefined];

test.each(others)('a build by a program that is another, %s, is made anew', async (other) => {
  const out = join(dir, '_site');
  const build = () =>
    keptBuild({ dir, out, by: [] }, silent, async () => {
      await readHouseFolder(dir);
      mkdirSync(out, { recursive: true });
      writeFileSync(join(out, 'book.pdf'), `printed by ${program.digest ?? 'who knows'}`);
      return madeIn(out);
    });
  expect([await build(), await build()]).toEqual(['built', 'up to date']);
  program.digest = other;
  expect(await build()).toBe('built');
  expect(readFileSync(join(out, 'book.pdf'), 'utf8')).toBe(`printed by ${other ?? 'who knows'}`);
});

test.each(others)('so is a PDF, by %s', async (other) => {
  const pdfBy = (): Promise<BookPdf> =>
    Promise.resolve({ pdf: new TextEncoder().encode(program.digest ?? 'who knows'), undrawn: [] });
  const book = { house: 'one' };
  const print = () => keptPdfs(dir)('book', book, pdfBy);
  const first = await print();
  expect(await keptPdfs(dir)('book', book, () => Promise.reject(new Error('it is kept')))).toEqual(first);
  program.digest = other;
  expect(await print()).toEqual(await pdfBy());
});

test('and so are records taken apart and found sound', async () => {
  const kept = (): readonly string[] =>
    ['records', 'sound'].map((name) => readFileSync(join(dir, '.bookmatch', `${name}.json`), 'utf8'));
  const load = () => bookOf(openHouse(dir), '2026-04-20');
  const first = await load();
  const before = kept();
  expect(readdirSync(join(dir, '.bookmatch'))).toContain('records.json');
  await load();
  expect(kept()).toEqual(before);
  program.digest = others[0];
  expect((await load()).book).toEqual(first.book);
  // Each was asked for, and none of it answered by what the other program kept.
  kept().forEach((text, index) => expect(text).not.toBe(before[index]));
});
