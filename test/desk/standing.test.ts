import { readdir, rename, rm, writeFile, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { h } from 'preact';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { locale } from '../../src/base/units/index.js';
import { deskEntry } from '../../src/desk/paths.js';
import { watchHouse, type Watched } from '../../src/desk/standing.js';
import { walkedHtml } from '../../src/desk/walk-page.js';
import { smallHouse } from './small-house.js';

let dir: string;
let house: Watched;

beforeEach(async () => {
  dir = await smallHouse();
  house = await watchHouse(
    dir,
    () => '2026-04-20',
    () => ({ strip: h('p', {}), entry: deskEntry, styles: [], scripts: [] }),
  );
});

afterEach(async () => {
  await house.close();
  await rm(dir, { recursive: true, force: true });
});

/** The number of the next standing that is told. */
function heard(): Promise<number> {
  return new Promise((resolve) => {
    const stop = house.onChange(({ number }) => {
      stop();
      resolve(number);
    });
  });
}

it('keeps its pages while the house folder is away, makes nothing in its place, and has it again when it is back', async () => {
  const away = `${dir}-away`;
  await rename(dir, away);
  const gone = await house.refresh();
  expect(gone.problems.map(({ code }) => code)).toEqual(['house-missing']);
  expect(gone.isEarlier).toBe(true);
  expect(gone.file('index.html')).toBeDefined();
  await expect(readdir(dir)).rejects.toThrow();
  await rename(away, dir);
  const back = await house.refresh();
  expect(back.isEarlier).toBe(false);
  expect(back.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
});

it('hears of a record in a folder that was put in the place of another of its name', async () => {
  const content = join(dir, 'content');
  const left = heard();
  await rename(content, join(dir, 'elsewhere'));
  await left;
  const returned = heard();
  await rename(join(dir, 'elsewhere'), content);
  await returned;
  const rooms = join(content, 'rooms');
  const record = join(rooms, 'study.md');
  const text = await readFile(record, 'utf8');
  const written = heard();
  await writeFile(record, `${text}\nWritten after that.\n`);
  await written;
  expect(house.now().sources.find(({ path }) => path.endsWith('study.md'))?.text).toContain('Written after that.');
});

it('is refreshed again after a refresh that failed', async () => {
  await house.close();
  let isBroken = false;
  const day = (): '2026-04-20' => {
    if (isBroken) throw new Error('the disk is not there');
    return '2026-04-20';
  };
  house = await watchHouse(dir, day, () => ({ strip: h('p', {}), entry: deskEntry, styles: [], scripts: [] }));
  isBroken = true;
  expect((await house.refresh()).number).toBe(1);
  isBroken = false;
  await writeFile(join(dir, 'content/rooms/study.md'), 'nothing');
  expect((await house.refresh()).number).toBe(2);
});

it('leaves the locale as it was, and draws a walk in that of the house', () => {
  // Of whatever house somebody worked on before.
  const before = locale();
  const { view } = house.now();
  if (!view) throw new Error('the house is sound');
  const metric = { ...view, book: { ...view.book, house: { ...view.book.house, units: 'metric' as const } } };
  const walk = 'east 3.6 m\nsouth 2 m\nwest 3.5 m\nnorth 2 m';
  expect(walkedHtml(walk, { ...house.now(), view: metric })).toContain('100 mm short going west');
  expect(walkedHtml(walk, house.now())).toMatch(/\d+&quot; short going west/u);
  expect(locale()).toBe(before);
});

it('has read and kept what it began to read when it is closed', async () => {
  await writeFile(join(dir, 'content/rooms/study.md'), 'nothing');
  let read = 0;
  void house.refresh().then(({ number }) => (read = number));
  await house.close();
  expect(read).toBe(2);
  await writeFile(join(dir, 'content/rooms/study.md'), 'nothing more');
  expect((await house.refresh()).number).toBe(2);
});
