import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeSite } from '../../src/site/index.js';
import { fixtureBook } from './fixture.js';

let out: string;
beforeAll(async () => {
  out = await mkdtemp(join(tmpdir(), 'bookmatch-write-'));
});
afterAll(() => rm(out, { recursive: true, force: true }));

test('writes the book, replaces what was there, and leaves nothing beside it', async () => {
  mkdirSync(join(out, 'book'));
  writeFileSync(join(out, 'book', 'stale.html'), 'old');
  writeFileSync(join(out, 'book.pdf'), 'kept');
  const pages = await writeSite(fixtureBook, out);
  expect(pages.map(({ path }) => path)).toContain('book/rooms/great-room.html');
  expect(existsSync(join(out, 'book', 'stale.html'))).toBe(false);
  expect(readdirSync(out).sort()).toEqual(['book', 'book.pdf']);
});

test('a second Book in the same process is not the first one', async () => {
  await writeSite(
    { ...fixtureBook, rooms: fixtureBook.rooms.slice(0, 1), sources: fixtureBook.sources.slice(0, 2) },
    out,
  );
  expect(existsSync(join(out, 'book/rooms/great-room.html'))).toBe(true);
  expect(existsSync(join(out, 'book/rooms/loft.html'))).toBe(false);
});

test('a Book that cannot be written leaves the last one as it was', async () => {
  const broken = { ...fixtureBook, sources: [{ path: 'content/../../out.md', text: '' }] };
  await expect(writeSite(broken, out)).rejects.toThrow();
  expect(existsSync(join(out, 'book/rooms/great-room.html'))).toBe(true);
  expect(readdirSync(out).sort()).toEqual(['book', 'book.pdf']);
});
