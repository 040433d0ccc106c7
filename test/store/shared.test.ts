import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.js';
import { openHouse } from '../../src/disk/load/index.js';
import { readHouseFolder } from '../../src/disk/store/index.js';
import { makeConsole } from '../cli/make-console.js';

const small = join(import.meta.dirname, '../cases/small-house');

/** Two houses beside one book. */
let dir: string;
let [house, other, book] = ['', '', ''];

beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'bookmatch-shared-'));
  [house, other, book] = [join(dir, 'house'), join(dir, 'other'), join(dir, 'book')];
  for (const one of [house, other]) {
    cpSync(small, one, { recursive: true });
    edit(join(one, 'content/house.md'), 'place: Anywhere', 'place: Anywhere\nshared: [../book]');
    for (const part of ['options/floor', 'categories', 'trades'])
      rmSync(join(one, 'content', part), { recursive: true });
  }
  for (const part of ['options/floor', 'categories', 'trades'])
    cpSync(join(small, 'content', part), join(book, part), { recursive: true });
});
afterEach(() => rmSync(dir, { recursive: true }));

function edit(path: string, from: string, to: string): void {
  const before = readFileSync(path, 'utf8');
  if (!before.includes(from)) throw new Error(`${path} has no ${from}`);
  writeFileSync(path, before.replace(from, to));
}

function write(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}

async function command(line: string, at = house): Promise<{ code: number; text: string }> {
  let text = '';
  const take = (more: string): void => void (text += more);
  const code = await run([...line.split(' '), '--house', at], makeConsole({ out: take, error: take }));
  return { code, text };
}

describe('a shared folder', () => {
  test('gives its records to each house, and comes to the money that they would come to in the house', async () => {
    const whole = openHouse(small);
    const alone = whole.compose(await whole.current(), '2026-04-20').book;
    for (const one of [house, other]) {
      const open = openHouse(one);
      const { book: shared, problems } = open.compose(await open.current(), '2026-04-20');
      expect(problems).toEqual([]);
      expect(shared?.money).toEqual(alone?.money);
      expect(shared?.sources.map(({ path }) => path)).toContain('../book/options/floor/oak.md');
    }
  });

  test('has its problems located by its way from the house', async () => {
    edit(join(book, 'options/floor/pine.md'), '$4.00 / sq ft', '$4.00');
    const { code, text } = await command('check');
    expect(code).toBe(1);
    expect(text).toContain("../book/options/floor/pine.md:6:20  rate-unreadable  error: '$4.00' does not say for what");
  });

  test('is stood before by the house, which is told', async () => {
    cpSync(join(small, 'content/options/floor/oak.md'), join(house, 'content/options/floor/oak.md'));
    edit(join(book, 'options/floor/oak.md'), '$10.00', '$99.00');
    const { files, problems } = await readHouseFolder(house);
    expect(files.filter(({ path }) => path.endsWith('oak.md')).map(({ path }) => path)).toEqual([
      'content/options/floor/oak.md',
    ]);
    expect(problems).toMatchObject([
      { code: 'shared-overridden', severity: 'notice', file: 'content/options/floor/oak.md' },
    ]);
  });

  test('that nobody declares is not read', async () => {
    edit(join(house, 'content/house.md'), '\nshared: [../book]', '');
    const { files } = await readHouseFolder(house);
    expect(files.every(({ path }) => path.startsWith('content/'))).toBe(true);
  });

  test('gives nothing that a link brings from elsewhere, and no other folder of it is read', async () => {
    write(join(dir, 'elsewhere/secret.md'), 'secret');
    write(join(book, 'rooms/study.md'), 'no room of this house');
    symlinkSync(join(dir, 'elsewhere/secret.md'), join(book, 'options/floor/secret.md'));
    symlinkSync(join(dir, 'elsewhere'), join(book, 'price-lists'));
    const { files, problems } = await readHouseFolder(house);
    expect(problems.map(({ code, file }) => [code, file])).toEqual([
      ['link-outside', '../book/options/floor/secret.md'],
      ['link-outside', '../book/price-lists'],
    ]);
    expect(files.some(({ text, path }) => text.includes('secret') || path.includes('book/rooms'))).toBe(false);
  });

  test.each(['/etc', '../../book/../..', '..', '../.git', 'content', '../a/options', 'C:\\book', '../book/'])(
    'is not %s',
    async (way) => {
      edit(join(house, 'content/house.md'), 'shared: [../book]', `shared: ["${way.replaceAll('\\', '\\\\')}"]`);
      const { code, text } = await command('check');
      expect(code).toBe(1);
      expect(text).toContain('is not a shared folder');
      expect((await readHouseFolder(house)).files.every(({ path }) => path.startsWith('content/'))).toBe(true);
    },
  );
});

describe('taking a list in', () => {
  const list =
    'name: Mill\ncategory: floor\ncolumns: { name: Product, number: No, price: Price }\ndecimals: point\ncurrency: USD\nfile-name: number\nfixed: { unit: sq ft }';

  beforeEach(() => {
    write(join(house, 'content/price-lists/mill.md'), `---\n${list}\n---\n`);
    write(join(house, 'list.csv'), 'No,Product,Price\nPine-1,Pine strip,4.40\n');
  });

  test('writes nothing into a shared folder that is not named', async () => {
    const before = readFileSync(join(book, 'options/floor/pine.md'), 'utf8');
    const { code, text } = await command(`take-in ${house}/list.csv --category floor --write`);
    expect(code).toBe(1);
    expect(text).toContain('row 2  error: it is ../book/options/floor/pine.md, which is not in content/');
    expect(readFileSync(join(book, 'options/floor/pine.md'), 'utf8')).toBe(before);
    expect((await command(`take-in ${house}/list.csv --category floor --into ../elsewhere`)).code).toBe(2);
  });

  test('writes into one that is, for every house that shares it', async () => {
    const { code, text } = await command(`take-in ${house}/list.csv --category floor --into ../book --write`);
    expect(text).toContain('1 record written:\n../book/options/floor/pine.md');
    expect(code).toBe(0);
    expect((await command('takeoff --json', other)).code).toBe(0);
    const open = openHouse(other);
    const { book: now } = open.compose(await open.current(), '2026-04-20');
    const whole = openHouse(small);
    const { book: then } = whole.compose(await whole.current(), '2026-04-20');
    // 140 sq ft at $0.40 more, and 5 % tax.
    expect((now?.money.today ?? 0) - (then?.money.today ?? 0)).toBe(58_80);
  });
});

test('an issue holds what a shared folder gave, and is made again when the folder has moved on', async () => {
  const { HouseUnderGit } = await import('../cli/house-under-git.js');
  const kept = new HouseUnderGit();
  rmSync(join(dir, 'house'), { recursive: true });
  cpSync(kept.dir, join(dir, 'house'), { recursive: true });
  kept.remove();
  const git = async (...args: string[]): Promise<unknown> =>
    (await import('node:child_process')).execFileSync('git', ['-C', house, ...args]);
  edit(join(house, 'content/house.md'), 'place: Anywhere', 'place: Anywhere\nshared: [../book]');
  rmSync(join(house, 'content/options/floor'), { recursive: true });
  rmSync(join(book, 'categories'), { recursive: true });
  rmSync(join(book, 'trades'), { recursive: true });
  await git('add', '-A');
  await git('commit', '-qm', 'The floors of our book');
  const issued = await command('issue --for pricing');
  expect(issued.text).toContain('Issue 1 for pricing');
  expect(readFileSync(join(house, 'content/issues/001.md'), 'utf8')).toMatch(
    /^shared:\n {2}\.\.\/book: [0-9a-f]{64}$/mu,
  );
  expect((await command('check')).text).not.toContain('shared-changed');
  edit(join(book, 'options/floor/pine.md'), '$4.00', '$4.40');
  const { text } = await command('check');
  expect(text).toContain('shared-changed  notice: ../book is not as it was in issue 1: 1 record');
  const compared = await command('compare issue-1');
  expect(compared.text).toMatch(/Shared price book +\+\$58\.80/u);
  expect(compared.text).not.toMatch(/^ *Price book +/mu);
  // A commit holds no shared folder: it is read with the one of now, which is said.
  const commits = await command('compare HEAD');
  expect(commits.text).toContain('../book is in no commit: of HEAD read as on disk now.');
  expect(commits.text).not.toContain('$58.80');
  // Without the folder, what was issued can still be had.
  rmSync(book, { recursive: true });
  const open = openHouse(house);
  const version = await open.version('issue-1');
  expect(version.ok && version.house.house?.records.options.map(({ slug }) => slug)).toContain('pine');
});
