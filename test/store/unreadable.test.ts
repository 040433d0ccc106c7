import type * as Folders from 'node:fs';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import type * as Disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import { readHouseFolder } from '../../src/disk/store/index.js';

// Whoever runs the tests as root may read everything: the disk is made to refuse.
const isRefused = vi.hoisted(
  () =>
    (path: unknown): boolean =>
      /\/locked(?:\.md)?$/u.test(String(path)),
);
vi.mock('node:fs/promises', async (original) => {
  const { readFile, ...disk } = await original<typeof Disk>();
  const refusing = (path: string): Promise<unknown> =>
    isRefused(path) ? Promise.reject(new Error('EACCES')) : readFile(path);
  return { ...disk, readFile: refusing };
});
vi.mock('node:fs', async (original) => {
  const { readdirSync, ...disk } = await original<typeof Folders>();
  const refusing = (path: string, how: { readonly withFileTypes: true }): unknown => {
    if (isRefused(path)) throw new Error('EACCES');
    return readdirSync(path, how);
  };
  return { ...disk, readdirSync: refusing };
});

const house = mkdtempSync(join(tmpdir(), 'bookmatch-locked-'));
afterAll(() => rmSync(house, { recursive: true }));

test('a file or a folder that may not be read is told, and the rest is read', async () => {
  mkdirSync(join(house, 'content', 'rooms'), { recursive: true });
  mkdirSync(join(house, 'content', 'locked'));
  for (const name of ['house.md', 'rooms/locked.md', 'rooms/study.md'])
    writeFileSync(join(house, 'content', name), 'x');
  const { files, problems } = await readHouseFolder(house);
  expect(files.map(({ path }) => path)).toEqual(['content/house.md', 'content/rooms/study.md']);
  expect(problems.map(({ file, code, message, fix }) => [file, code, message, fix])).toEqual([
    ['content/locked', 'file-unreadable', 'the folder may not be read', 'check who owns it'],
    ['content/rooms/locked.md', 'file-unreadable', 'the file may not be read', 'check who owns it'],
  ]);
});
