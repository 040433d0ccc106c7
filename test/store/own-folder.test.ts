import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { finishBegun, keptResults, oneAtATime, writeTogether } from '../../src/disk/store/index.js';
import { killedAtWork } from './killed-at-work.js';

let dir = '';
let own = '';
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'bookmatch-own-'));
  own = join(dir, '.bookmatch');
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const done = (): Promise<string> => Promise.resolve('done');

it.each([
  ['what is kept', () => keptResults(dir, 'sound').put('key', 'value')],
  ['the place of who writes', () => oneAtATime(dir, done)],
  ['what is written together', () => writeTogether(dir, new Map([['a.md', 'A']]), { what: 'a' }, done)],
])('a link in place of its own folder leads %s nowhere else', async (_, write) => {
  const elsewhere = await mkdtemp(join(tmpdir(), 'bookmatch-elsewhere-'));
  await writeFile(join(elsewhere, '.gitignore'), 'mine');
  await symlink(elsewhere, own);
  await write();
  expect(await readdir(elsewhere)).toEqual(['.gitignore']);
  expect(await readFile(join(elsewhere, '.gitignore'), 'utf8')).toBe('mine');
  await rm(elsewhere, { recursive: true });
});

it.each(['{', '{}', '{"what":"a","moves":[{"from":1}]}', 'null'])(
  'a note that is none, %s, is nothing begun, and is cleared away',
  async (note) => {
    await mkdir(own);
    await writeFile(join(own, 'begun.json'), note);
    expect(await finishBegun(dir, () => Promise.resolve())).toBe('nothing');
    expect(await finishBegun(dir, () => Promise.resolve())).toBeUndefined();
  },
);

it('takes its place where a folder lies there', async () => {
  const [left = ''] = await killedAtWork(dir);
  await rm(join(own, left));
  await mkdir(join(own, left, 'in it'), { recursive: true });
  expect(await oneAtATime(dir, done)).toBe('done');
  expect(await readdir(own)).toEqual([]);
});

it('has nothing kept where a pipe lies in its place, which would never end', async () => {
  await mkdir(own);
  execFileSync('mkfifo', [join(own, 'sound.json')]);
  expect(await keptResults(dir, 'sound').get('key')).toBeUndefined();
});
