import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import type * as Disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import { readHouseFolder } from '../../src/disk/store/index.js';

// Whoever runs the tests as root may read everything: the disk is made to refuse.
vi.mock('node:fs/promises', async (original) => {
  const disk = await original<typeof Disk>();
  const refused = (path: unknown): boolean => String(path).endsWith('/locked') || String(path).endsWith('/locked.md');
  const refusing =
    <Read extends (path: never, ...rest: never[]) => Promise<unknown>>(read: Read) =>
    (...[path, ...rest]: Parameters<Read>): Promise<unknown> =>
      refused(path) ? Promise.reject(new Error('EACCES')) : read(path as never, ...(rest as never[]));
  return { ...disk, readFile: refusing(disk.readFile), readdir: refusing(disk.readdir) };
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
