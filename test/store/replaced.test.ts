import {
  lutimesSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import type * as Disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { finishReplaced, writeTree } from '../../src/disk/store/index.js';
import { until } from './killed-at.js';

vi.mock('node:fs/promises', async (original) => {
  const { mortalDisk } = await import('./killed-at.js');
  return mortalDisk(await original<typeof Disk>());
});

let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'bookmatch-replaced-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

/** Every file by its path, those too that no reader is to see. */
function all(): Readonly<Record<string, string>> {
  const files = readdirSync(dir, { recursive: true, withFileTypes: true }).filter((one) => !one.isDirectory());
  const paths = files.map((one) => join(one.parentPath, one.name)).sort();
  return Object.fromEntries(paths.map((path) => [path.slice(dir.length + 1), readFileSync(path, 'utf8')]));
}

const write = (word: string) =>
  writeTree(join(dir, 'for the tiler'), [
    ['index.html', word],
    ['assets/style.css', word],
  ]);

test.each([
  ['a folder that is there', true],
  ['a folder that is new', false],
])(
  '%s: killed at any operation, it is the old one or the new one after the next start, and nothing lies beside it',
  async (_, isThere) => {
    const ends = new Set<string>();
    await write('new');
    const fresh = all();
    for (let at = 1; ; at += 1) {
      rmSync(join(dir, 'for the tiler'), { recursive: true, force: true });
      if (isThere) await write('old');
      const old = all();
      const how = await until(at, 'killed', () => write('new'));
      const told = await finishReplaced(dir, 'for the tiler');
      const [one] = told;
      if (one) expect(told).toEqual([{ dir: join(dir, 'for the tiler'), isFinished: one.isFinished }]);
      const now = all();
      expect(one ? [one.isFinished ? fresh : old] : [fresh, old]).toContainEqual(now);
      ends.add(`${how}, ${one ? (one.isFinished ? 'finished' : 'cleared away') : 'nothing left'}`);
      expect(await finishReplaced(dir, 'for the tiler')).toEqual([]);
      if (how === 'done') break;
    }
    const both = ['done, nothing left', 'killed, cleared away', 'killed, nothing left'];
    expect([...ends].sort()).toEqual(isThere ? [...both, 'killed, finished'].sort() : both);
  },
);

const tag = '999999-01234567-0123456789ab';

test('what a run of another machine makes is left to it for a day, and what is somebody else’s for ever', async () => {
  const names = [`.out.${tag}.new`, '.out.backup.old', `.other.${tag}.new`, 'out.new'];
  for (const name of names) mkdirSync(join(dir, name));
  expect(await finishReplaced(dir, 'out')).toEqual([]);
  const before = new Date(Date.now() - 2 * 86_400_000);
  for (const name of names) utimesSync(join(dir, name), before, before);
  expect(await finishReplaced(dir, 'out')).toEqual([{ dir: join(dir, 'out'), isFinished: false }]);
  expect(readdirSync(dir).sort()).toEqual(names.slice(1).sort());
});

test('a link in place of what was left leads nowhere, and a folder that was moved away comes back where its successor is gone', async () => {
  writeFileSync(join(dir, 'mine.txt'), 'mine');
  symlinkSync(dir, join(dir, `.out.${tag}.old`));
  mkdirSync(join(dir, `.book.${tag}.old`));
  writeFileSync(join(dir, `.book.${tag}.old`, 'index.html'), 'as it was');
  const before = new Date(0);
  for (const name of ['out', 'book']) lutimesSync(join(dir, `.${name}.${tag}.old`), before, before);
  await finishReplaced(dir);
  expect(all()).toEqual({ 'book/index.html': 'as it was', 'mine.txt': 'mine' });
});
