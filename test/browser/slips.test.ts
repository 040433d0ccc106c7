import { rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { printMoney, type Cents } from '../../src/base/units/index.js';
import { decodeSlip, encodeSlip, type Slip, type SlipChoice } from '../../src/slip/index.js';
import { slipsKey, tryPicks, unpackHouse, type PackedHouse, type TryPicks } from '../../src/try/index.js';
import { smallBook, smallFiles } from '../book/small-house.js';
import { HouseUnderGit } from '../cli/house-under-git.js';
import { axeViolations } from './axe.js';
import { buildOf } from './built-books.js';
import { openBrowser } from './open-browser.js';
import { readCodes } from './read-codes.js';

const day = '2026-04-20';
const floor = 'study/floor/floor';
const ceiling = 'study/ceiling-board/ceiling';
/** The small house with two who choose, and with four rooms more like its study. */
const study = smallFiles().find(({ path }) => path === 'content/rooms/study.md')?.text ?? '';
const dens = [2, 3, 4, 5].map((number) => {
  const text = study
    .replace('name: Study', `name: Den ${number}`)
    .replace('"101"', `"10${number}"`)
    .replace('swing: study', `swing: den-${number}`);
  return [`content/rooms/den-${number}.md`, text.replaceAll(/mark: ([DW])01/gu, `mark: $10${number}`)] as const;
});
const edits = {
  'content/house.md': [['name: The owner }', 'name: Anna }\n  - { role: owner, name: Ben }']],
  ...Object.fromEntries(dens),
} as const;

let browser: Browser;
let page: Page;
let folder: string;
let packed: PackedHouse;
let compose: TryPicks;
const complaints: string[] = [];

beforeAll(async () => {
  [browser, { folder, packed }] = await Promise.all([
    openBrowser(),
    buildOf(
      smallFiles(edits),
      smallBook(edits, day, () => true),
    ),
  ]);
  compose = tryPicks(unpackHouse(JSON.parse(JSON.stringify(packed)) as PackedHouse));
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
});
afterAll(async () => {
  await browser.close();
  await rm(dirname(folder), { recursive: true, force: true });
});

const url = (path: string): string => pathToFileURL(join(folder, path)).href;
const total = (choices: readonly SlipChoice[]): string => {
  const picks = choices.map(({ selection, now }) => ({ selection, option: now }));
  return printMoney(compose(picks, day).value?.money.today ?? (NaN as Cents), 'always');
};
const choice = (selection: string, now: string, was: string | null = null): SlipChoice => ({ selection, was, now });
const slip = (choices: readonly SlipChoice[], more: Partial<Slip> = {}): string =>
  encodeSlip({
    house: '1',
    snapshot: packed.snapshot.slice(0, 12),
    by: 'Anna',
    on: '2026-04-20',
    choices,
    ...more,
  });
const box = () => page.getByLabel('The slip, or the message that it came in');
const said = () => page.locator('#slip-said');
const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
/** Pastes a text and has it read; answers what is said of it. */
async function lay(text: string): Promise<string> {
  await box().fill(text);
  await said().evaluate((element) => (element.textContent = ''));
  await press('Read this slip');
  await page.waitForFunction(() => document.getElementById('slip-said')?.textContent !== '');
  return (await said().textContent()) ?? '';
}
async function takeAllAway(): Promise<void> {
  for (let left = await page.locator('.slip-list > li').count(); left > 0; left -= 1)
    await page
      .getByRole('button', { name: /^Take away/u })
      .first()
      .click();
}
const sent = async (): Promise<string> => {
  await page.locator('#slips-root').getByRole('button', { name: 'Send these choices' }).click();
  const text = await page.getByRole('dialog').getByLabel('The slip', { exact: true }).inputValue();
  await page.keyboard.press('Escape');
  return text;
};

const attic = choice('attic/floor/floor', 'oak');
const oak = choice(floor, 'oak', 'pine');
const hers = [choice(ceiling, 'pine-shiplap-1x8'), oak, attic];
const his = [choice(ceiling, 'fir-tg-1x6'), oak];
const quoted = (line: string): string =>
  `Hello,\r\n\r\n${(line.match(/.{1,50}/gu) ?? []).map((part) => `> ${part}`).join('\r\n')}\r\n\r\nBye\r\n`;
let merged: string;

test('reads nothing of the house before somebody comes to the box', async () => {
  await page.goto(url('slips.html'));
  expect(await page.evaluate(() => document.scripts.length)).toBe(2);
  await box().focus();
  await page.waitForFunction(() => document.scripts.length === 4);
});

test('tells of each who made it and when, and what no longer fits', async () => {
  expect(await lay(quoted(slip(hers, { note: 'The gray one.' })))).toBe(
    'Slip 1 is read. Anna, 20 April 2026: 3 choices.',
  );
  expect(await lay(slip(his, { by: 'Ben', on: '2026-04-21', snapshot: 'older' }))).toBe(
    'Slip 2 is read. Ben, 21 April 2026: 2 choices.',
  );
  const items = await page.locator('.slip-list > li').allTextContents();
  expect(items[0]).toContain('“The gray one.”');
  expect(items[0]).toContain('Made from the records of these pages.');
  expect(items[1]).toContain('Made from other records than those of these pages');
  expect(await page.locator('#slips-root').textContent()).toContain(
    'attic/floor/floor: oak, slip 1 (Anna). There is no such place in the house any more.',
  );
  expect(await box().inputValue()).toBe('');
});

test('shows whole houses: as it stands, with each slip, with both', async () => {
  const cells = await page.locator('#tried-sets tbody tr').allTextContents();
  const both = [oak];
  for (const [row, choices] of [[], hers.slice(0, 2), his, both].entries())
    expect(cells[row], String(row)).toContain(total(choices));
});

test('has no accessibility violations, and fits the telephone', async () => {
  expect(await axeViolations(page)).toEqual({ light: [], dark: [] });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
});

test('sends nothing before every difference is settled, by the keyboard too', async () => {
  expect(await page.locator('#slips-root').getByRole('button', { name: 'Send these choices' }).count()).toBe(0);
  const ways = page.locator('.slip-place input');
  expect(await page.locator('.slip-place .try-name').allTextContents()).toEqual([
    'Pine shiplap 1x8',
    'Fir tongue and groove 1x6',
    'Left open',
  ]);
  expect(await page.locator('.slip-place svg').count()).toBe(2);
  await ways.first().focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('ArrowDown');
  await page.getByText('They differ in 1 place: all settled').waitFor();
  expect(await ways.nth(1).isChecked()).toBe(true);
  expect(await said().textContent()).toContain(total(his));
});

test('is there again when the telephone has forgotten the page', async () => {
  await page.reload();
  await page.getByText('They differ in 1 place: all settled').waitFor();
});

test('sends one slip of both, which says whose they were', async () => {
  merged = await sent();
  const read = decodeSlip(merged);
  if (!read.ok) throw new Error(read.why);
  const { choices, by, note } = read.slip;
  expect([by, note]).toEqual(['Anna', 'The gray one. Made of 2 slips: Anna, 20 April 2026; Ben, 21 April 2026.']);
  expect(new Set(choices)).toEqual(new Set(his));
  expect(merged).toContain(` → ${total(his)}, `);
});

test('is taken in by the command, to the same total', async () => {
  const house = new HouseUnderGit();
  for (const { path, text } of smallFiles(edits)) house.write(path, text);
  const file = join(house.dir, 'merged.txt');
  await writeFile(file, merged);
  const { code, out: told } = await house.run(`choose ${file}`, day);
  expect([code, told]).toEqual([0, expect.stringContaining(`Total ${total([])} → ${total(his)}, `)]);
  expect(told).toContain('Made from the records as they are now.');
  expect(told).toContain('Written:\ncontent/rooms/study.md\n');
  house.remove();
});

test('takes a slip as what is tried, and lays down what is tried', async () => {
  await press(/^Take as my tried choices ?: slip 1/u);
  expect(await page.locator('.try-sum strong').textContent()).toBe(total(hers.slice(0, 2)));
  await page.getByRole('button', { name: /^Take away ?: slip 1/u }).click();
  await press(/^Lay down what I am trying/u);
  expect(await said().textContent()).toMatch(/^Slip 2 is read\. What is tried in this browser, .*: 2 choices\.$/u);
  await page.getByText('They differ in 1 place').waitFor();
  await page.locator('.try-bar').getByRole('button', { name: 'Clear' }).click();
  await takeAllAway();
  expect(
    await page.evaluate((key) => sessionStorage.getItem(key), slipsKey({ name: 'Small House', number: '1' })),
  ).toBeNull();
});

test.each([
  ['', 'This slip cannot be read: there is nothing in it. Paste the slip first, or open its file.'],
  ['Dear builder, the gray stone, please.', 'there is no code line in it'],
  ['half', 'its code line is cut off'],
  ['two', 'there are several code lines in it, which are not the same. Paste and read one at a time.'],
  ['other', 'it is of job 2, and this house is job 1. Open it in the book of that house.'],
  ['mega', 'it is longer than any slip'],
])('says in words what is wrong with %j', async (text, words) => {
  const line = slip(his);
  const texts: Readonly<Record<string, string>> = {
    half: line.slice(0, line.length / 2),
    two: `${line}\n${slip(hers)}`,
    other: slip(his, { house: '2' }),
    mega: `${'word '.repeat(200_001)}${line}`,
  };
  expect(await lay(texts[text] ?? text)).toContain(words);
  expect(await page.locator('.slip-list').count()).toBe(0);
  expect(await box().getAttribute('aria-invalid')).toBe('true');
});

test('opens slips kept as files, several at once, each with its words', async () => {
  await page.getByLabel('Open slips kept as files').setInputFiles([
    { name: 'hers.txt', mimeType: 'text/plain', buffer: Buffer.from(quoted(slip(hers))) },
    { name: 'his.html', mimeType: 'text/html', buffer: Buffer.from(`<p>${slip(his).replaceAll('+', '&#43;')}</p>`) },
    { name: 'photo.jpg', mimeType: 'image/jpeg', buffer: Buffer.from([0xff, 0xd8, 0, 1, 2, 3]) },
  ]);
  await page.locator('.slip-list > li').nth(1).waitFor();
  await page.waitForFunction(() => document.getElementById('slip-said')?.textContent?.includes('photo.jpg') === true);
  expect(await said().textContent()).toMatch(
    /^hers\.txt: Slip 1 is read.* his\.html: Slip 2 is read.* photo\.jpg: This slip cannot/u,
  );
  await takeAllAway();
});

test('prints codes that an independent reader puts together to the same code line', async () => {
  const rooms = ['study', 'den-2', 'den-3', 'den-4', 'den-5'];
  const choices = rooms.flatMap((room) => [
    choice(`${room}/floor/floor`, 'oak', 'pine'),
    choice(`${room}/ceiling-board/ceiling`, 'fir-tg-1x6'),
  ]);
  // As many pixels to a millimetre as a telephone has of paper that it is held over.
  const paper = await browser.newPage({ deviceScaleFactor: 3 });
  await paper.goto(url('slips.html'));
  await paper.getByLabel('The slip, or the message that it came in').fill(slip(choices));
  await paper.getByRole('button', { name: 'Read this slip' }).click();
  await paper.evaluate(() => (window.print = () => undefined));
  await paper.locator('#slips-root').getByRole('button', { name: 'Send these choices' }).click();
  await paper.getByRole('dialog').getByRole('button', { name: 'Print' }).click();
  await paper.emulateMedia({ media: 'print' });
  const printed = decodeSlip((await paper.locator('.try-paper pre').textContent()) ?? '');
  if (!printed.ok) throw new Error(printed.why);
  expect(printed.slip.choices).toEqual(choices);
  const codes = paper.locator('.try-codes svg');
  expect(await codes.count()).toBe(2);
  const straight = await readCodes(paper, codes, { turned: 0, blurred: 0 });
  expect(await readCodes(paper, codes, { turned: 7, blurred: 1.5 })).toEqual(straight);
  const parts = straight.map((line) => decodeSlip(line));
  const together = parts.flatMap((part) => (part.ok ? part.slip.choices : []));
  expect(encodeSlip({ ...printed.slip, choices: together })).toBe(printed.line);
  await paper.close();
});

test('said nothing on the console in all of this', () => {
  expect(complaints).toEqual([]);
});

test('without a script the page says what it is for, and which command does the same', async () => {
  const plain = await browser.newContext({ javaScriptEnabled: false });
  const there = await plain.newPage();
  await there.goto(url('slips.html'));
  expect(await there.getByText('bookmatch choose hers.txt his.txt --dry-run').isVisible()).toBe(true);
  expect(await there.getByRole('textbox').count()).toBe(0);
  await plain.close();
});
