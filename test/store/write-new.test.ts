import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writeNew } from '../../src/disk/store/index.js';

let dir = '';

beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'bookmatch-new-'));
});
afterEach(() => rm(dir, { recursive: true }));

test('writes files with their folders', async () => {
  await writeNew(
    dir,
    new Map([
      ['content/rooms/den.md', 'a'],
      ['content/rooms/hall.md', 'b'],
    ]),
  );
  expect(await readFile(join(dir, 'content/rooms/hall.md'), 'utf8')).toBe('b');
  expect(await readdir(join(dir, 'content/rooms'))).toEqual(['den.md', 'hall.md']);
});

test('leaves what is there, and nothing new beside it', async () => {
  await writeFile(join(dir, 'b.md'), 'mine');
  const files = new Map([
    ['a.md', 'a'],
    ['b.md', 'b'],
    ['c.md', 'c'],
  ]);
  await expect(writeNew(dir, files)).rejects.toMatchObject({ code: 'EEXIST' });
  expect(await readdir(dir)).toEqual(['b.md']);
  expect(await readFile(join(dir, 'b.md'), 'utf8')).toBe('mine');
});
