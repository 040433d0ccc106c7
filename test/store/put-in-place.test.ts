import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type * as Disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { finishBegun, makeStage, putInPlace, writeTogether } from '../../src/disk/store/index.js';
import { killWhen, until } from './killed-at.js';

vi.mock('node:fs/promises', async (original) => {
  const { mortalDisk } = await import('./killed-at.js');
  return mortalDisk(await original<typeof Disk>());
});

const folders: string[] = [];
afterEach(() => folders.splice(0).forEach((dir) => rmSync(dir, { recursive: true, force: true })));

function folder(files: Readonly<Record<string, string>>): string {
  const dir = mkdtempSync(join(tmpdir(), 'bookmatch-place-'));
  folders.push(dir);
  put(dir, files);
  return dir;
}

function put(dir: string, files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(join(dir, path, '..'), { recursive: true });
    writeFileSync(join(dir, path), text);
  }
}

/** Every file by its path, those too that no reader is to see. */
function all(dir: string): Readonly<Record<string, string>> {
  const names = readdirSync(dir, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  return Object.fromEntries(
    names
      .map((one) => join(one.parentPath, one.name))
      .map((path) => [path.slice(dir.length + 1), readFileSync(path, 'utf8')]),
  );
}

const before = { 'content/rooms/study.md': 'old study', 'content/rooms/den.md': 'as it was' };
const written = { 'content/rooms/study.md': 'new study', 'issued/001.json': '{}', 'issued/001.pdf': '%PDF' };
const note = { what: 'issue 1', commit: { paths: Object.keys(written), message: 'Issue 1' } };

const site = { 'book/index.html': 'old', 'book/gone.html': 'x', 'book.pdf': 'old', 'data/book.json': 'old' };
const built = { 'book/index.html': 'new', 'book.pdf': 'new', 'data/book.json': 'new', 'handout/a.html': 'new' };

/** What is tried: a folder as it stands, what is done to it, and how it stands then. */
const tried = {
  files: {
    start: before,
    end: { ...before, ...written },
    work: (dir: string) => writeTogether(dir, new Map(Object.entries(written)), note, () => Promise.resolve()),
  },
  folders: {
    start: site,
    end: built,
    work: async (dir: string) => {
      const stage = await makeStage(dir);
      put(join(dir, stage), built);
      const moves = ['book', 'book.pdf', 'data', 'handout'].map((name) => ({ from: `${stage}/${name}`, to: name }));
      await putInPlace(dir, stage, { what: 'the book', moves }, () => Promise.resolve());
    },
  },
};

test.each(Object.entries(tried))(
  '%s: killed at any operation, they are the old ones or the new ones after the next start',
  async (_, { start, end, work }) => {
    const ends = new Set<string>();
    for (let at = 1; ; at += 1) {
      const dir = folder(start);
      const how = await until(at, 'killed', () => work(dir));
      const committed: string[] = [];
      const told = await finishBegun(dir, ({ message }) => Promise.resolve(void committed.push(message)));
      const is = how === 'done' || typeof told === 'object' ? 'new' : told === 'nothing' ? 'old' : 'either';
      ends.add(`${how}, ${typeof told === 'object' ? 'finished' : String(told)}`);
      const may = { new: [end], old: [start], either: [start, end] }[is].map(sorted);
      expect(may).toContainEqual(sorted(all(dir)));
      expect(existsSync(join(dir, '.bookmatch')) ? readdirSync(join(dir, '.bookmatch')) : []).toEqual([]);
      // A second start finds nothing to do.
      expect(await finishBegun(dir, () => Promise.reject(new Error('twice')))).toBeUndefined();
      if (how === 'done') break;
    }
    expect([...ends].sort()).toEqual(['done, undefined', 'killed, finished', 'killed, nothing', 'killed, undefined']);
  },
);

test.each(Object.entries(tried))(
  '%s: a disk that refuses at any operation leaves the old ones, or the new ones where only clearing away failed',
  async (_, { start, end, work }) => {
    for (let at = 1; ; at += 1) {
      const dir = folder(start);
      const how = await until(at, 'refused', () => work(dir));
      await finishBegun(dir, () => Promise.resolve());
      expect([start, end].map(sorted)).toContainEqual(sorted(all(dir)));
      if (how === 'done') {
        expect(sorted(all(dir))).toEqual(sorted(end));
        break;
      }
    }
  },
);

function sorted(files: Readonly<Record<string, string>>): unknown {
  return Object.entries(files).sort();
}

test('a note that came with somebody else’s house moves nothing out of it, nor into its history', async () => {
  const stage = '.bookmatch/new-999999-01234567-0123456789ab';
  for (const [from, to] of [
    [`${stage}/0`, '../stolen.md'],
    [`${stage}/0`, 'content/../../stolen.md'],
    [`${stage}/0`, '.git/hooks/pre-commit'],
    ['content/house.md', 'content/other.md'],
  ]) {
    const dir = folder({ 'house/content/house.md': 'x', [`house/${stage}/0`]: 'bad' });
    const root = join(dir, 'house');
    writeFileSync(join(root, '.bookmatch', 'begun.json'), JSON.stringify({ what: 'x', moves: [{ from, to }] }));
    expect(await finishBegun(root, () => Promise.resolve())).toBe('elsewhere');
    // A stage of a machine that is not known here is cleared away with its note, or after a day.
    const left = from?.startsWith(stage) ? {} : { [`house/${stage}/0`]: 'bad' };
    expect(all(dir)).toEqual({ 'house/content/house.md': 'x', ...left });
  }
});

/** A folder in which a run was killed as the last of its files was to take its place. */
async function leftBegun(): Promise<string> {
  const dir = folder(before);
  const write = (): Promise<void> => tried.files.work(dir);
  expect(await killWhen((name, path) => name === 'rename' && path.endsWith('issued/001.pdf'), write)).toBe('killed');
  return dir;
}

async function finished(dir: string): Promise<unknown> {
  const committed: string[] = [];
  const told = await finishBegun(dir, ({ message }) => Promise.resolve(void committed.push(message)));
  return { isProven: typeof told === 'object' && told.isProven, committed, now: sorted(all(dir)) };
}

const end = sorted({ ...before, ...written });

test('only what this user’s program noted in that folder, and as it was meant, is committed; files take their places', async () => {
  expect(await finished(await leftBegun())).toEqual({ isProven: true, committed: ['Issue 1'], now: end });
  const spoilt: readonly ((dir: string) => unknown)[] = [
    (dir) => editNote(dir, (text) => text.replace('"message":"Issue 1"', '"message":"Issue 2"')),
    (dir) => editNote(dir, (text) => text.replace(/,"code":"[^"]+"/u, '')),
    (dir) => editNote(dir, (text) => text.replace(/"code":"[^"]+"/u, '"code":7')),
    () => vi.stubEnv('XDG_STATE_HOME', join(folder({}), 'somebody-else')),
    () => vi.stubEnv('XDG_STATE_HOME', '/proc'),
  ];
  for (const spoil of spoilt) {
    const dir = await leftBegun();
    spoil(dir);
    expect(await finished(dir)).toEqual({ isProven: false, committed: [], now: end });
    vi.unstubAllEnvs();
  }
});

test('what was changed since, or was noted in another folder, is in its place and not committed', async () => {
  const dir = await leftBegun();
  writeFileSync(join(dir, 'issued/001.json'), '{"changed": true}');
  expect(await finished(dir)).toMatchObject({ isProven: false, committed: [] });
  const other = folder({});
  cpSync(await leftBegun(), other, { recursive: true });
  expect(await finished(other)).toEqual({ isProven: false, committed: [], now: end });
});

function editNote(dir: string, edit: (text: string) => string): void {
  const path = join(dir, '.bookmatch', 'begun.json');
  const text = readFileSync(path, 'utf8');
  expect(edit(text)).not.toBe(text);
  writeFileSync(path, edit(text));
}
