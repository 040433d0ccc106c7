import { mkdir, mkdtemp, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { readHouseFolder, type ReadBefore } from '../../src/disk/store/index.js';

let dir: string;
const at = (path: string): string => join(dir, 'content', path);

beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'bookmatch-again-'));
  await mkdir(at('rooms'), { recursive: true });
  await writeFile(at('house.md'), 'house');
  await writeFile(at('rooms/study.md'), 'study');
});
afterEach(() => rm(dir, { recursive: true }));

/** Longer than the disk needs to tell two times apart. */
const aWhile = (): Promise<void> => setTimeout(150);

test('what was not written since is the same object, and whatever was written is read', async () => {
  const before: ReadBefore = new Map();
  const read = async (): Promise<readonly string[]> => {
    const { files } = await readHouseFolder(dir, before);
    expect(files, 'as if nothing were known').toEqual((await readHouseFolder(dir)).files);
    return files.map(({ text }) => text);
  };
  await aWhile();
  const [house] = (await readHouseFolder(dir, before)).files;
  expect((await readHouseFolder(dir, before)).files[0]).toBe(house);

  await writeFile(at('rooms/study.md'), 'STUDY');
  expect(await read(), 'as long as it was').toEqual(['house', 'STUDY']);
  await writeFile(at('rooms/study.md'), 'sTuDy');
  expect(await read(), 'in the same moment').toEqual(['house', 'sTuDy']);

  await writeFile(at('.study.md'), 'other');
  await aWhile();
  await read();
  await rename(at('.study.md'), at('rooms/study.md'));
  expect(await read(), 'put in its place').toEqual(['house', 'other']);

  await writeFile(at('rooms/hall.md'), 'hall');
  expect(await read()).toEqual(['house', 'hall', 'other']);
  await rm(at('rooms/study.md'));
  expect(await read()).toEqual(['house', 'hall']);
  await writeFile(join(dir, 'kept.md'), 'kept');
  await symlink('../../kept.md', at('rooms/study.md'));
  await aWhile();
  expect(await read()).toEqual(['house', 'hall', 'kept']);
  await writeFile(join(dir, 'kept.md'), 'KEPT');
  expect(await read(), 'behind a link').toEqual(['house', 'hall', 'KEPT']);
  await rm(at('rooms/study.md'));
  await symlink('/etc/hostname', at('rooms/study.md'));
  expect((await readHouseFolder(dir, before)).problems.map(({ code }) => code)).toEqual(['link-outside']);
});
