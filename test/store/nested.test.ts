import { existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import type * as Disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { makeFolder, readHouseFolder } from '../../src/disk/store/index.js';

const asked = vi.hoisted(() => ({ realpaths: 0, mkdirs: 0 }));
/** A name below which the disk says of every folder that it is not there, as Linux does of /proc. */
const nowhere = 'no-such-process';

vi.mock('node:fs/promises', async (original) => {
  const disk = await original<typeof Disk>();
  const gone = (path: string): Promise<never> =>
    Promise.reject(Object.assign(new Error(`ENOENT: ${path}`), { code: 'ENOENT', path }));
  return {
    ...disk,
    realpath: (path: string) => {
      asked.realpaths += 1;
      return disk.realpath(path);
    },
    mkdir: (path: string, options?: { readonly recursive?: boolean }) => {
      asked.mkdirs += 1;
      // Node itself would try these two in turn for ever.
      if (options?.recursive && path.includes(nowhere)) return Promise.reject(new Error('this never ends'));
      return path.includes(nowhere) ? gone(path) : disk.mkdir(path, options);
    },
  };
});

let house = '';
beforeEach(() => {
  house = mkdtempSync(join(tmpdir(), 'bookmatch-nested-'));
  Object.assign(asked, { realpaths: 0, mkdirs: 0 });
});
afterEach(() => rmSync(house, { recursive: true }));

test('folders within folders are read without asking of each where all above it lie', async () => {
  const deep = join(house, 'content', ...Array.from({ length: 400 }, () => 'd'));
  mkdirSync(deep, { recursive: true });
  for (const path of [join(house, 'content', 'house.md'), join(deep, 'x.md')]) writeFileSync(path, '---\n');
  const { files, problems } = await readHouseFolder(house);
  expect([files.length, problems]).toEqual([2, []]);
  expect(asked.realpaths).toBeLessThan(5);
});

test('a link is followed once, wherever in them it stands', async () => {
  mkdirSync(join(house, 'content', 'rooms'), { recursive: true });
  for (const path of ['house.md', 'rooms/study.md']) writeFileSync(join(house, 'content', path), '---\n');
  symlinkSync(join(house, 'content'), join(house, 'content', 'rooms', 'back'));
  symlinkSync(tmpdir(), join(house, 'content', 'rooms', 'out'));
  const { files, problems } = await readHouseFolder(house);
  expect(files.map(({ path }) => path)).toEqual(['content/house.md', 'content/rooms/study.md']);
  expect(problems.map(({ file, code }) => [file, code])).toEqual([['content/rooms/out', 'link-outside']]);
});

test('a folder is made with those above it, and the topmost that was not there is told', async () => {
  const made = join(house, 'a', 'b', 'c');
  expect(await makeFolder(made)).toBe(join(house, 'a'));
  expect(await makeFolder(made)).toBeUndefined();
  expect(existsSync(made)).toBe(true);
  writeFileSync(join(house, 'file'), '');
  await expect(makeFolder(join(house, 'file'))).rejects.toMatchObject({ code: 'EEXIST' });
  await expect(makeFolder(join(house, 'file', 'below'))).rejects.toMatchObject({ code: 'ENOTDIR' });
});

test('a disk that has no room for a name ends the making of folders', async () => {
  await expect(makeFolder(join(house, nowhere, 'a', 'b'))).rejects.toMatchObject({ code: 'ENOENT' });
  expect(asked.mkdirs).toBeLessThan(8);
});
