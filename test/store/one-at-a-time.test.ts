import { mkdir, mkdtemp, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { oneAtATime } from '../../src/disk/store/index.js';

let dir = '';
beforeAll(async () => void (dir = await mkdtemp(join(tmpdir(), 'bookmatch-once-'))));
afterAll(() => rm(dir, { recursive: true, force: true }));

it('lets none of forty who read and write lose what another wrote', async () => {
  const file = join(dir, 'count');
  await writeFile(file, '');
  const add = (name: number): Promise<void> =>
    oneAtATime(dir, async () => {
      const before = await readFile(file, 'utf8');
      await new Promise((resolve) => setTimeout(resolve, 1));
      await writeFile(file, `${before}${name}\n`);
    });
  await Promise.all(Array.from({ length: 40 }, (_, name) => add(name)));
  expect((await readFile(file, 'utf8')).trim().split('\n')).toHaveLength(40);
});

it('gives its place back where the work fails, and takes it from a run that ended in the midst', async () => {
  await expect(oneAtATime(dir, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  const place = join(dir, '.bookmatch/writing');
  await writeFile(place, '');
  await utimes(place, 0, 0);
  expect(await oneAtATime(dir, () => Promise.resolve('done'))).toBe('done');
});

it('waits for nobody where the folder takes no file, and begins none that is gone', async () => {
  await mkdir(join(dir, 'closed'));
  await writeFile(join(dir, 'closed/.bookmatch'), 'no folder');
  expect(await oneAtATime(join(dir, 'closed'), () => Promise.resolve('done'))).toBe('done');
  const gone = join(dir, 'gone');
  expect(await oneAtATime(gone, () => Promise.resolve('done'))).toBe('done');
  await expect(readFile(gone)).rejects.toThrow('ENOENT');
});
