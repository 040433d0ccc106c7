import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { oneAtATime } from '../../src/disk/store/index.js';
import { killedAtWork, withOneAtATime } from './killed-at-work.js';

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

it('lets none of three programs lose what another wrote', async () => {
  const file = join(dir, 'shared-count');
  await writeFile(file, '');
  const script = `const { readFileSync, writeFileSync } = await import('node:fs');
    for (let turn = 0; turn < 15; turn += 1)
      await oneAtATime(${JSON.stringify(dir)}, async () => {
        const before = readFileSync(${JSON.stringify(file)}, 'utf8');
        await new Promise((resolve) => setTimeout(resolve, 3));
        writeFileSync(${JSON.stringify(file)}, before + process.pid + '\\n');
      });`;
  await Promise.all(Array.from({ length: 3 }, () => withOneAtATime(script)));
  const lines = (await readFile(file, 'utf8')).trim().split('\n');
  expect(lines).toHaveLength(45);
  expect(new Set(lines).size).toBe(3);
});

it('gives its place back where the work fails, and takes it from a run that ended in the midst', async () => {
  await expect(oneAtATime(dir, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(await killedAtWork(dir)).toHaveLength(1);
  const begun = performance.now();
  expect(await oneAtATime(dir, () => Promise.resolve('done'))).toBe('done');
  // That it was killed is known by its number: nobody waits until it shows no life.
  expect(performance.now() - begun).toBeLessThan(5000);
  expect(await readdir(join(dir, '.bookmatch'))).toEqual([]);
});

it('waits for nobody where the folder takes no file, and begins none that is gone', async () => {
  await mkdir(join(dir, 'closed'));
  await writeFile(join(dir, 'closed/.bookmatch'), 'no folder');
  expect(await oneAtATime(join(dir, 'closed'), () => Promise.resolve('done'))).toBe('done');
  const gone = join(dir, 'gone');
  expect(await oneAtATime(gone, () => Promise.resolve('done'))).toBe('done');
  await expect(readFile(gone)).rejects.toThrow('ENOENT');
});
