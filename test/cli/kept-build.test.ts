import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Console } from '../../src/cli/console.js';
import { keptBuild, madeIn, type Made } from '../../src/cli/kept-build.js';
import { readFileInside, readHouseFolder, readPhotoFile } from '../../src/disk/store/index.js';
import { smallFiles } from '../book/small-house.js';
import { bookmatch } from './command-line.js';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'bookmatch-up-to-date-'));
});
afterEach(() => vi.unstubAllEnvs());
afterEach(() => rm(dir, { recursive: true, force: true }));

function write(path: string, text: string): void {
  mkdirSync(dirname(join(dir, path)), { recursive: true });
  writeFileSync(join(dir, path), text);
}

/** Numbers from 0 up to `below`, always the same (mulberry32, from memory). */
function randomly(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below;
  };
}

/** What is written of a house, in a moment: its records, what is issued, a photograph, and the day. */
async function writeCheaply(house: string, out: string, on: string): Promise<Made> {
  const { files, problems } = await readHouseFolder(house);
  const issued = await readFileInside(house, 'issued/001.json');
  const photo = await readPhotoFile(house, 'photos/floor/oak.png');
  const seen = { on, files, problems, issued: issued && Buffer.from(issued).toString('hex'), photo };
  await rm(out, { recursive: true, force: true });
  mkdirSync(join(out, 'data'), { recursive: true });
  writeFileSync(join(out, 'data', 'book.json'), JSON.stringify(seen));
  for (const { path, text } of files) {
    mkdirSync(dirname(join(out, 'book', path)), { recursive: true });
    writeFileSync(join(out, 'book', path), text);
  }
  return madeIn(out);
}

const silent = { error: () => undefined, problems: () => undefined } as unknown as Console;

function treeOf(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (path) => !path.startsWith('.bookmatch'),
  );
  return Object.fromEntries(
    files
      .sort()
      .map((path) => [
        path,
        statSync(join(folder, path)).isFile() ? readFileSync(join(folder, path), 'hex') : 'a folder',
      ]),
  );
}

test('what is kept is what would be built, after each of 200 edits', async () => {
  const house = join(dir, 'house');
  for (const { path, text } of smallFiles()) write(`house/${path}`, text);
  const [out, clean] = [join(dir, 'out'), join(dir, 'clean')];
  const random = randomly(18);
  const days = ['2026-04-20', '2026-04-21'];
  let on = days[0] ?? '';
  const records = smallFiles().map(({ path }) => path);
  const pick = <T>(list: readonly T[]): T => list[random(list.length)] as T;
  const edits: readonly (() => void)[] = [
    () => undefined,
    () => undefined,
    () => undefined,
    () =>
      write(
        `house/${pick(records)}`,
        `${readFileSync(join(dir, 'house', pick(records)), 'utf8')}\nA word ${random(3)}.\n`,
      ),
    () => write('house/content/house.md', smallFiles()[0]?.text ?? ''),
    () => write(`house/content/rooms/room-${random(3)}.md`, '---\nname: Room\n---\n'),
    () => rmSync(join(dir, `house/content/rooms/room-${random(3)}.md`), { force: true }),
    () => write('house/issued/001.json', pick(['{}', '[]'])),
    () => rmSync(join(dir, 'house/issued'), { recursive: true, force: true }),
    () => write('house/photos/floor/oak.png', pick(['no photograph', 'another'])),
    () => rmSync(join(dir, 'house/photos'), { recursive: true, force: true }),
    () => (on = pick(days)),
    // By hand, in what was written.
    () => write('out/data/book.json', 'spoilt'),
    () => rmSync(join(out, 'data/book.json'), { force: true }),
    () => write('out/book/more.html', 'left there'),
    () => rmSync(join(out, 'book'), { recursive: true, force: true }),
    () => mkdirSync(join(out, 'data/empty'), { recursive: true }),
  ];
  const seen = { built: 0, 'up to date': 0, 'nothing built': 0 };
  for (let edit = 0; edit < 200; edit += 1) {
    pick(edits)();
    seen[await keptBuild({ dir: house, out, by: [on] }, silent, () => writeCheaply(house, out, on))] += 1;
    await rm(clean, { recursive: true, force: true });
    await writeCheaply(house, clean, on);
    expect(treeOf(out), `after edit ${edit}`).toEqual(treeOf(clean));
  }
  expect(seen.built).toBeGreaterThan(50);
  expect(seen['up to date']).toBeGreaterThan(30);
  expect(seen['nothing built']).toBe(0);
});

test('a build that changes what it reads is not kept', async () => {
  for (const { path, text } of smallFiles()) write(`house/${path}`, text);
  const [house, out] = [join(dir, 'house'), join(dir, 'out')];
  const build = () =>
    keptBuild({ dir: house, out, by: [] }, silent, async () => {
      const made = await writeCheaply(house, out, '2026-04-20');
      write('house/content/rooms/late.md', 'written while it was built\n');
      return made;
    });
  expect(await build()).toBe('built');
  rmSync(join(house, 'content/rooms/late.md'));
  expect(await build()).toBe('built');
});

test('nor is one in which something was read as it was, and again as it is', async () => {
  for (const { path, text } of smallFiles()) write(`house/${path}`, text);
  const [house, out] = [join(dir, 'house'), join(dir, 'out')];
  const build = () =>
    keptBuild({ dir: house, out, by: [] }, silent, async () => {
      write('house/issued/001.json', '{}');
      const made = await writeCheaply(house, out, '2026-04-20');
      write('house/issued/001.json', '[]');
      await readFileInside(house, 'issued/001.json');
      return made;
    });
  expect(await build()).toBe('built');
  expect(await build()).toBe('built');
});

test('a house that was handed over with what it was built from is built, and says nothing that came with it', async () => {
  for (const { path, text } of smallFiles()) write(`house/${path}`, text);
  const [house, out] = [join(dir, 'house'), join(dir, 'out')];
  const said: string[] = [];
  const console = { ...silent, error: (text: string) => void said.push(text) } as Console;
  const built = (forge: (own: Console) => void) =>
    keptBuild({ dir: house, out, by: [] }, console, async (own) => {
      await writeCheaply(house, out, '2026-04-20');
      forge(own);
      return madeIn(out);
    });
  const forge = (own: Console): void => {
    write('out/data/book.json', '{"total":0}');
    own.error('Nothing is open.\n');
  };
  vi.stubEnv('XDG_STATE_HOME', join(dir, 'somebody-else'));
  expect([await built(forge), await built(forge)]).toEqual(['built', 'up to date']);
  vi.unstubAllEnvs();
  said.length = 0;
  expect(await built(() => undefined)).toBe('built');
  expect(said).toEqual([]);
  expect(readFileSync(join(out, 'data/book.json'), 'utf8')).not.toBe('{"total":0}');
  expect(await built(() => undefined)).toBe('up to date');
});

test('build says that all is up to date, and says again what is to be looked at; another day, folder or record is built', async () => {
  for (const { path, text } of smallFiles()) write(path, text);
  const build = (...more: readonly string[]) => bookmatch(['build', '--house', dir, '--on', '2026-04-20', ...more]);
  const [first, again] = [await build(), await build()];
  expect([first.code, again.code]).toEqual([0, 0]);
  expect(again.out).toBe(`${join(dir, '_site')} is up to date: nothing that it is made from has changed.\n`);
  expect(first.said.slice(0, first.said.indexOf(first.out))).toBe(again.said.slice(0, again.said.indexOf(again.out)));
  rmSync(join(dir, '_site/book.pdf'));
  expect((await build()).out).toBe(first.out);
  expect(existsSync(join(dir, '_site/book.pdf'))).toBe(true);
  expect((await build('--out', join(dir, 'elsewhere'))).out).toContain('elsewhere');
  write(
    'content/rooms/study.md',
    (smallFiles().find(({ path }) => path.endsWith('study.md'))?.text ?? '').replace(
      'chosen: pine',
      'chosen: none-such',
    ),
  );
  expect((await build('--out', join(dir, 'elsewhere'))).code).toBe(1);
  expect((await build('--out', join(dir, 'elsewhere'))).code).toBe(1);
}, 60_000);
