import { readFile, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { printMoney, type Cents } from '../../src/base/units/index.js';
import { digestOf } from '../../src/signoff/index.js';
import { decodeSlip } from '../../src/slip/index.js';
import {
  storeKey,
  triedOptions,
  tryPicks,
  unpackHouse,
  type PackedHouse,
  type Pick,
  type TryPicks,
} from '../../src/try/index.js';
import { packedDemo } from '../try/packed-demo.js';
import { seededPicks } from '../try/seeded-picks.js';
import { axeViolations } from './axe.js';
import { booksInBrowser } from './book-in-browser.js';
import { buildDemo, buildHostile, demoDay } from './built-books.js';
import { openBrowser } from './open-browser.js';

const stone = 'great-room/stone-facing/breast';
const hearth = 'great-room/hearth/breast.hearth';
const stonePage = 'choices/great-room/stone-facing/breast.html';
/** More than any pick takes on a machine that others use too. */
const patience = { timeout: 60_000 };

let browser: Browser;
let folder: string;
let book: Book;
let packed: PackedHouse;
let compose: TryPicks;

beforeAll(async () => {
  [browser, folder, { book, packed }] = await Promise.all([openBrowser(), buildDemo(), packedDemo(demoDay)]);
  compose = tryPicks(unpackHouse(JSON.parse(JSON.stringify(packed)) as PackedHouse));
});
afterAll(async () => {
  await browser.close();
  await rm(dirname(folder), { recursive: true, force: true });
});

const url = (page: string): string => pathToFileURL(join(folder, page)).href;
const total = (picks: readonly Pick[], on = demoDay): string =>
  printMoney(compose(picks, on).value?.money.today ?? (NaN as Cents), 'always');
const radio = (page: Page, selection: string, option: string) =>
  page.locator(`[data-try="${selection}"] input[value="${option}"]`);
const sum = (page: Page) => page.locator('.try-sum strong');

test('a browser composes the same Books as Node, for 30 sets of choices', async () => {
  const sets = seededPicks(book, 30, 7);
  const page = await browser.newPage();
  const there = (await booksInBrowser(page, packed, sets)).map((text) => digestOf(JSON.parse(text)));
  const here = sets.map((picks) => digestOf(compose(picks, demoDay).value));
  expect(there).toEqual(here);
  expect(new Set(here).size).toBeGreaterThan(25);
  await page.close();
}, 300_000);

describe('a book opened from a disk', () => {
  let context: BrowserContext;
  let page: Page;
  const complaints: string[] = [];
  beforeAll(async () => {
    context = await browser.newContext({ viewport: { width: 1440, height: 900 }, colorScheme: 'light' });
    page = await context.newPage();
    page.setDefaultTimeout(patience.timeout);
    page.on('console', (message) => complaints.push(message.text()));
    page.on('pageerror', (error) => complaints.push(error.message));
  });
  afterAll(() => context.close());

  const loaded = () =>
    page.evaluate(() => Array.from(document.scripts, ({ src }) => src.split('/').at(-1)).filter((name) => name !== ''));

  test('reads nothing of the house before the first pick', async () => {
    await page.goto(url(stonePage), { waitUntil: 'load' });
    expect(await loaded()).toEqual(['theme.js', 'try-start.js']);
  });

  test('shows the total of the whole house at the first pick, and says it', async () => {
    await radio(page, stone, 'full-bed-ledge').check();
    expect(await sum(page).textContent()).toBe(total([{ selection: stone, option: 'full-bed-ledge' }]));
    expect(await page.locator('[role=status]#try-said').textContent()).toMatch(/^Total with 1 choice tried: \$/u);
    expect(await loaded()).toEqual(expect.arrayContaining(['try-data.js', 'try.js']));
  });

  test('draws the room with what is tried', async () => {
    const key = page.locator('[data-try-picture="great-room"] dd', { hasText: 'Full-bed ledge stone' });
    await key.waitFor();
    expect(await page.locator('[data-try-picture="great-room"] :is(.picture-card svg, .try-mark)').count()).toBe(2);
  });

  test('tells what follows', async () => {
    await page.getByRole('button', { name: 'What follows' }).click();
    const panel = page.getByRole('region', { name: 'What follows' });
    expect(await panel.locator('caption').allTextContents()).toEqual([
      'What is tried, place by place',
      'From the contract sum to the total, as it stands and with what is tried',
      'Allowances that draw otherwise',
      'What the house buys otherwise',
    ]);
    expect(await panel.locator('#tried-steps tr').last().textContent()).toContain(
      total([{ selection: stone, option: 'full-bed-ledge' }]),
    );
  });

  test('leads from what follows to the pages of it', async () => {
    const panel = page.getByRole('region', { name: 'What follows' });
    const hrefs = await panel.locator('a').evaluateAll((all) => all.map((one) => (one as HTMLAnchorElement).href));
    const paths = hrefs.map((href) => decodeURIComponent(href.slice(href.indexOf('/book/') + 6)));
    for (const start of ['rooms/', 'options/', 'allowances.html#allowance-', 'trades/'])
      expect(
        paths.some((path) => path.startsWith(start)),
        `${start} in ${paths.join(' ')}`,
      ).toBe(true);
    for (const href of hrefs) {
      const { pathname, hash } = new URL(href);
      const text = await readFile(decodeURIComponent(pathname), 'utf8');
      expect(hash === '' || text.includes(`id="${hash.slice(1)}"`), href).toBe(true);
    }
  });

  test('has no accessibility violations while it does', async () => {
    expect(await axeViolations(page)).toEqual({ light: [], dark: [] });
  });

  test('goes on with the next page, and with picks there', async () => {
    await page.goto(url('rooms/great-room.html'));
    const first = { selection: stone, option: 'full-bed-ledge' };
    expect(await sum(page).textContent()).toBe(total([first]));
    expect(await radio(page, stone, 'full-bed-ledge').isChecked()).toBe(true);
    // A row of the room opens in place.
    await page.locator(`details:has([data-try="${hearth}"]) > summary`).click();
    await radio(page, hearth, 'cast-concrete-hearth').check();
    const both = total([first, { selection: hearth, option: 'cast-concrete-hearth' }]);
    await page.waitForFunction((text) => document.querySelector('.try-sum strong')?.textContent === text, both);
    expect(await page.locator('.try-count').textContent()).toBe('Trying 2 choices.');
  });

  test('computes for another day when asked, and says for which', async () => {
    const button = page.getByRole('button', { name: /^Compute for today/u });
    await button.click();
    await page.getByText(/; these pages are of 23 April 2026\./u).waitFor();
    await page.getByRole('button', { name: 'Compute for the day of these pages' }).click();
    await page.getByText('Computed for 23 April 2026, the day of these pages.').waitFor();
  });

  test('hands the choices over as a slip', async () => {
    await page.getByRole('button', { name: 'Send these choices' }).click();
    const dialog = page.getByRole('dialog', { name: 'Send these choices' });
    await dialog.getByLabel(/sentence/u).fill('The gray one, please.');
    const text = await dialog.getByLabel('The slip').inputValue();
    const slip = decodeSlip(text);
    if (!slip.ok) throw new Error(slip.why);
    const { choices, by, note, house, snapshot } = slip.slip;
    expect({ by, note, house }).toEqual({ by: 'The owners', note: 'The gray one, please.', house: '2614' });
    expect(packed.snapshot.startsWith(snapshot) && snapshot.length).toBe(12);
    expect(choices).toEqual([
      { selection: stone, was: null, now: 'full-bed-ledge' },
      { selection: hearth, was: null, now: 'cast-concrete-hearth' },
    ]);
    expect(text).toContain('Great room · stone facing, chimney breast and Hearth riser: open → Full-bed ledge stone');
    expect(await axeViolations(page)).toEqual({ light: [], dark: [] });
    await page.evaluate(() => (window.print = () => undefined));
    await dialog.getByRole('button', { name: 'Print' }).click();
    expect(await page.locator('.try-paper pre').textContent()).toBe(text);
    expect(await page.locator('.try-paper figcaption').allTextContents()).toEqual(['Choices 1 to 2']);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.try-paper svg').isVisible()).toBe(true);
    expect(await page.locator('main').isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    expect(await page.locator('.try-paper').count()).toBe(0);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
  });

  test('is as it was made once it is cleared', async () => {
    await page.getByRole('button', { name: 'Clear' }).click();
    await page.locator('.try-bar').waitFor({ state: 'detached' });
    expect(await radio(page, stone, '').isChecked()).toBe(true);
    const kept = await page.evaluate((key) => localStorage.getItem(key), storeKey(book.house));
    expect(kept).toBeNull();
  });

  test('begins with a named set of choices, but for what is locked', async () => {
    const [set] = book.alternatives;
    if (!set) throw new Error('the demo has sets of choices');
    const standing = new Map(book.selections.map((one) => [one.id, one.state === 'none' ? 'none' : one.chosen]));
    const picks = set.lines
      .filter(({ isRest, selection }) => !isRest && packed.locks[selection] === undefined)
      .map(({ selection, option }) => ({ selection, option: option?.split('/')[1] ?? 'none' }))
      .filter(({ selection, option }) => option !== standing.get(selection));
    expect(picks.length).toBeGreaterThan(2);
    await page.goto(url('try.html'));
    await page.getByRole('button', { name: set.name }).click();
    await page.waitForFunction((text) => document.querySelector('.try-sum strong')?.textContent === text, total(picks));
    expect(await page.locator('.try-count').textContent()).toBe(`Trying ${picks.length} choices.`);
    await page.getByRole('button', { name: 'Clear' }).click();
    await page.locator('.try-bar').waitFor({ state: 'detached' });
  });

  test('is worked with the keyboard alone', async () => {
    await page.goto(url(stonePage));
    await radio(page, stone, '').focus();
    await page.keyboard.press('ArrowDown');
    expect(await sum(page).textContent()).toMatch(/^\$/u);
    await page.getByRole('button', { name: 'Clear' }).focus();
    await page.keyboard.press('Enter');
    await page.locator('.try-bar').waitFor({ state: 'detached' });
  });

  test('lays aside what was picked from other records, and says one by one what no longer fits', async () => {
    const picks = [
      { selection: stone, was: null, now: 'full-bed-ledge' },
      { selection: hearth, was: 'bluestone-2in', now: 'cast-concrete-hearth' },
      { selection: 'attic/floor/floor', was: null, now: 'oak' },
    ];
    const kept = JSON.stringify({ snapshot: 'older', picks });
    await page.evaluate(([key, value]) => localStorage.setItem(key, value), [storeKey(book.house), kept] as const);
    await page.reload();
    const told = page.getByRole('alert');
    expect(await told.locator('li').allTextContents()).toEqual([
      'Great room · hearth, chimney breast, Hearth: Cast concrete, 2 inch no longer fits: something else was chosen there meanwhile.',
      'attic/floor/floor: oak no longer fits: the place is no longer there.',
      'Great room · stone facing, chimney breast and Hearth riser: Full-bed ledge stone still fits.',
    ]);
    expect(await radio(page, stone, '').isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Try again what still fits' }).click();
    expect(await sum(page).textContent()).toBe(total([{ selection: stone, option: 'full-bed-ledge' }]));
    await page.getByRole('button', { name: 'Clear' }).click();
  });

  test('locks what is ordered, and says why', async () => {
    const ordered = book.selections.find(
      (selection) => selection.state === 'ordered' && triedOptions(selection).length > 1,
    );
    if (!ordered) throw new Error('nothing that is ordered in the demo had another option');
    await page.goto(url(`rooms/${ordered.room}.html`));
    const group = page.locator(`[data-try="${ordered.id}"]`);
    expect(await group.locator('input:not(:disabled)').count()).toBe(0);
    expect(await group.textContent()).toContain('Locked. It is ordered: changing it takes a change order.');
  });

  test('offers nothing that was withdrawn, and says when and why', async () => {
    await page.goto(url('try.html'));
    const gone = page.locator(`[data-try="${hearth}"] label`, { hasText: 'Flamed granite, 2 inch' });
    expect(await gone.locator('input').isDisabled()).toBe(true);
    expect(await gone.textContent()).toContain(
      'It was withdrawn on 15 April 2026: The yard no longer cuts it to two inches.',
    );
  });

  test.each([
    { name: 'desk', width: 1440, height: 900 },
    { name: 'tablet', width: 820, height: 1180 },
    { name: 'phone', width: 390, height: 844 },
  ])('fits a $name, with its bar no taller than a third of it', async ({ width, height }) => {
    await page.setViewportSize({ width, height });
    await page.goto(url('try.html'));
    await radio(page, stone, 'thin-natural-ledge').check();
    await page.locator('#try-follows table').first().waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    const bar = await page.locator('.try-bar').boundingBox();
    expect(bar?.height).toBeLessThan(height / 3);
    await page.getByRole('button', { name: 'Clear' }).click();
  });

  test('from the first page to a slip of three choices takes nine taps on a telephone', async () => {
    let taps = 0;
    const tap = async (of: Locator): Promise<void> => {
      taps += 1;
      await of.click();
    };
    await page.setViewportSize({ width: 390, height: 844 });
    const began = performance.now();
    await page.goto(url('index.html'));
    await tap(page.getByRole('button', { name: 'Menu' }));
    await tap(page.locator('#index').getByRole('link', { name: 'Choices' }));
    await tap(page.locator('.within').getByRole('link', { name: 'Try choices' }));
    const places = page.locator('[data-try]:has(input:enabled)');
    for (const place of [0, 1, 2]) await tap(places.nth(place).locator('input:enabled:not(:checked)').last());
    await page.getByText('Trying 3 choices.').waitFor();
    await tap(page.getByRole('button', { name: 'Send these choices' }));
    const read = decodeSlip(await page.getByLabel('The slip', { exact: true }).inputValue());
    await tap(page.getByRole('button', { name: 'Copy' }));
    await page.locator('dialog [role=status]:not(:empty)').waitFor();
    await tap(page.getByRole('button', { name: 'Close' }));
    // A script reads nothing: what is left of a minute is for whoever does.
    const seconds = (performance.now() - began) / 1000;
    expect(seconds).toBeLessThan(45);
    expect([taps, read.ok && read.slip.choices.length]).toEqual([9, 3]);
    await page.getByRole('button', { name: 'Clear' }).click();
  });

  test('said nothing on the console in all of this', () => {
    expect(complaints).toEqual([]);
  });
});

test('without a script every option is there to be read, with what the house comes to', async () => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(url('try.html'));
  const group = page.locator(`[data-try="${stone}"]`);
  expect(await group.getByText('Full-bed ledge stone').isVisible()).toBe(true);
  const alternative = book.selections.find(({ id }) => id === stone)?.alternatives.at(-1);
  expect(await group.textContent()).toContain(printMoney(alternative?.houseTotal ?? (NaN as Cents)));
  expect(await page.getByText('Picking needs a script').isVisible()).toBe(true);
  await context.close();
});

test('what people write into their records stays words when it is tried', async () => {
  const hostileFolder = await buildHostile();
  const page = await browser.newPage();
  await page.goto(pathToFileURL(join(hostileFolder, 'try.html')).href);
  await radio(page, 'great-room/wood-floor/floor', 'odd').check();
  await sum(page).waitFor(patience);
  expect(await page.locator('#try-follows').textContent()).toContain('Odd <script>');
  await page.getByRole('button', { name: 'Send these choices' }).click();
  expect(await page.getByLabel('The slip').inputValue()).toContain('Odd <script>');
  expect(await page.evaluate(() => 'hit' in window)).toBe(false);
  await page.close();
  await rm(dirname(hostileFolder), { recursive: true, force: true });
});
