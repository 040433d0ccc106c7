import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { bookOf, openHouse, type LoadedBook } from '../../src/disk/load/index.js';
import { parseDay } from '../../src/base/units/index.js';

const day = parseDay('2026-04-20');
if (!day.ok) throw new Error('the day is one');
const on = day.value;
let dir: string;

beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'bookmatch-shelves-'));
  await cp(join(import.meta.dirname, '../../content'), join(dir, 'content'), { recursive: true });
});

afterEach(() => rm(dir, { recursive: true, force: true }));

const load = (): Promise<LoadedBook> => bookOf(openHouse(dir), on);
const kept = (name: string): string => join(dir, '.bookmatch', `${name}.json`);

/** A run that may believe what the one before kept, with a house folder of its own. */
async function changed(path: string, from: string, to: string): Promise<LoadedBook> {
  const text = await readFile(join(dir, path), 'utf8');
  expect(text).toContain(from);
  await writeFile(join(dir, path), text.replace(from, to));
  return load();
}

test('a Book made from what an earlier run kept is the same, and so are its problems with their places', async () => {
  const first = await load();
  expect((await readdir(join(dir, '.bookmatch'))).toSorted()).toEqual([
    '.gitignore',
    'layouts.json',
    'records.json',
    'sound.json',
  ]);
  const open = openHouse(dir);
  expect(open.shelves.layouts.get('nothing')).toBeUndefined();
  const second = await bookOf(open, on);
  expect(first.book).toBeDefined();
  expect(second.problems).toEqual(first.problems);
  expect(second.book).toEqual(first.book);
});

test('what changed is read anew, and believed of no other record', async () => {
  await load();
  const wrong = await changed('content/rooms/pantry.md', '\nlevel: main', '\nlevel: 5');
  expect(wrong.book).toBeUndefined();
  expect(wrong.problems.map(({ file, at }) => `${file}:${at.line}`)).toContain('content/rooms/pantry.md:4');
  const mended = await changed('content/rooms/pantry.md', '\nlevel: 5', '\nlevel: main');
  expect(mended.book).toBeDefined();
});

test('a record that was sound is not sound any more where its category asks for something else', async () => {
  await load();
  const { problems } = await changed(
    'content/categories/floor.md',
    '\nattributes:\n',
    '\nattributes:\n  moon: { label: Moon, kind: text, required: true }\n',
  );
  expect(problems.filter(({ file }) => file.startsWith('content/options/floor/')).length).toBeGreaterThan(0);
});

test('what is damaged, or another program kept, is no news: it is made again', async () => {
  const first = await load();
  const whole = await readFile(kept('records'), 'utf8');
  await writeFile(kept('records'), whole.replace('Great room', 'Great hall'));
  await writeFile(kept('layouts'), '[]');
  await writeFile(kept('sound'), '');
  expect(await load()).toEqual(first);
  expect(await readFile(kept('records'), 'utf8')).toBe(whole);
});
