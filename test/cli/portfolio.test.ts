import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bookmatch } from './command-line.js';
import { HouseUnderGit } from './house-under-git.js';

const dir = mkdtempSync(join(tmpdir(), 'bookmatch-houses-'));
const houses = join(dir, 'houses');
const out = join(dir, 'page');
const onDay = ['--on', '2026-04-20'];

beforeAll(async () => {
  const small = new HouseUnderGit();
  await small.run('issue --for pricing');
  for (const folder of ['elm', 'north/oak', 'not/that/deep', '.hidden', 'elm/below'])
    cpSync(join(small.dir, 'content'), join(houses, folder, 'content'), { recursive: true });
  cpSync(small.dir, join(houses, 'issued one'), { recursive: true });
  small.edit('content/rooms/study.md', 'chosen: pine', 'chosen: pinee');
  cpSync(small.dir, join(houses, 'north/wrong'), { recursive: true });
  small.remove();
  cpSync(join(import.meta.dirname, '../houses/cabin'), join(houses, 'hut'), { recursive: true });
  mkdirSync(join(houses, 'issued one/_site/book'), { recursive: true });
  writeFileSync(join(houses, 'issued one/_site/book/index.html'), '');
});
afterAll(() => rmSync(dir, { recursive: true }));

interface Data {
  readonly houses: readonly { readonly folder: string; readonly errors: number; readonly today?: number }[];
  readonly totals: readonly { readonly currency: string; readonly houses: number; readonly today: number }[];
}

test('houses are found one and two levels down; one with errors stands first and stops no other', async () => {
  const { code, out: said } = await bookmatch(['portfolio', houses, '--json', ...onDay]);
  expect(code).toBe(1);
  const { houses: listed, totals } = JSON.parse(said) as Data;
  expect(listed.map(({ folder, errors }) => [folder, errors])).toEqual([
    ['north/wrong', 1],
    ['hut', 0],
    ['elm', 0],
    ['issued one', 0],
    ['north/oak', 0],
  ]);
  const todayOf = (folder: string) => listed.find((house) => house.folder === folder)?.today ?? 0;
  expect(totals).toMatchObject([
    { currency: 'EUR', houses: 1, today: todayOf('hut') },
    { currency: 'USD', houses: 3, today: 3 * todayOf('elm') },
  ]);
});

test('the table has each in its own currency, and says where the errors are told', async () => {
  const { out: table, said } = await bookmatch(['portfolio', houses, ...onDay]);
  expect(table).toMatch(/^Fern Hut +hut .* €70,014\.56 .* nothing issued$/mu);
  expect(table).toMatch(/^Small House +issued one .* \$99,118\.00 .* issue 1$/mu);
  expect(said).toContain(`${join(houses, 'north/wrong')}: 1 error in the records; bookmatch check --house`);
});

describe('the page', () => {
  let page: string;
  beforeAll(async () => {
    expect(await bookmatch(['portfolio', houses, '--out', out, ...onDay])).toMatchObject({ code: 1 });
    page = readFileSync(join(out, 'index.html'), 'utf8');
  });

  test('leads to the books that are built, and to no others', () => {
    const links = [...page.matchAll(/<a href="([^"#]*book[^"]*)"/gu)].map(([, href = '']) => href);
    expect(links).toEqual(['../houses/issued%20one/_site/book/index.html']);
    expect(existsSync(join(out, decodeURI(links[0] ?? '')))).toBe(true);
  });

  test('knows its days as days, by which they are put in order', () => {
    expect(page).toContain('<time datetime="2026-06-09">9 June 2026</time>');
  });

  test('has all that it needs beside it', () => {
    const loaded = [...page.matchAll(/(?:src|rel="stylesheet" href)="([^"]+)"/gu)].map(([, path = '']) => path);
    expect(loaded).toEqual(expect.arrayContaining(['assets/style.css', 'assets/theme.js', 'assets/lists.js']));
    const style = readFileSync(join(out, 'assets/style.css'), 'utf8');
    const fonts = [...style.matchAll(/url\(['"]?([^)'"]+)/gu)].map(([, path = '']) =>
      join(dirname('assets/style.css'), path),
    );
    for (const path of [...loaded, ...fonts.filter((font) => !font.includes('data:'))])
      expect(existsSync(join(out, path)), path).toBe(true);
  });

  test('is written into no folder that holds anything else', async () => {
    const ran = await bookmatch(['portfolio', houses, '--out', houses, ...onDay]);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(existsSync(join(houses, 'index.html'))).toBe(false);
  });
});

test.each([
  ['a house itself', 'hut', 'is a house itself: name the folder that holds house folders'],
  ['a folder without any', 'not/that/deep/content', 'no house in'],
  ['no folder', 'nowhere', 'there is no folder'],
])('%s is wrong usage', async (_, folder, words) => {
  const ran = await bookmatch(['portfolio', join(houses, folder)]);
  expect(ran).toMatchObject({ code: 2, out: '' });
  expect(ran.said).toContain(words);
});
