import { readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { rm } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askedList } from './asked-list.js';
import { axeViolations, looks, type Violations } from './axe.js';
import { buildDemo, buildHostile } from './built-books.js';
import { lostInForcedColors } from './forced-colors.js';
import { openBrowser } from './open-browser.js';
import { brokenLinks, invalidHtml } from './page-checks.js';
import { htmlFiles, onePageOfEachKind } from './site-files.js';

const desk = { width: 1280, height: 800 };
const phone = { width: 360, height: 800 };
/** The smallest phone; a screen 1440 wide at 200 %. */
const narrow = [320, 720];

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

describe.each([
  { name: 'the demo house', build: buildDemo, isDemo: true },
  { name: 'a house with markup in its records', build: buildHostile, isDemo: false },
])('$name', ({ build, isDemo }) => {
  let book: string;
  let pages: string[];
  let kinds: string[];
  beforeAll(async () => {
    book = await build();
    pages = htmlFiles(book);
    kinds = onePageOfEachKind(pages, (page) => statSync(join(book, page)).size);
  });
  afterAll(() => rm(dirname(book), { recursive: true, force: true }));

  const url = (page: string): string => pathToFileURL(join(book, page)).href;

  test('links only to pages and anchors that are there', () => {
    expect(brokenLinks(book, pages)).toEqual([]);
  });

  test('has no page over 150 kB or of more than 2,500 elements', () => {
    const heavy = pages.filter((page) => {
      const text = readFileSync(join(book, page), 'utf8');
      return Buffer.byteLength(text) > 150_000 || (text.match(/<[a-z]/gu)?.length ?? 0) > 2500;
    });
    expect(heavy).toEqual([]);
  });

  test('is valid HTML on every page', async () => {
    expect((await invalidHtml(book, pages)).slice(0, 40)).toEqual([]);
  });

  /** In a browser one page of each kind, loaded once for all that is asked of it. */
  describe('each kind of page', () => {
    const complaints: string[] = [];
    const unfit: string[] = [];
    const lost: string[] = [];
    const violations: Violations = { light: [], dark: [] };
    beforeAll(() =>
      visit(async (page) => {
        page.on('console', (message) => complaints.push(message.text()));
        page.on('pageerror', (error) => complaints.push(error.message));
        page.on('requestfailed', (request) => complaints.push(`failed ${request.url()}`));
        page.on('request', (request) => {
          if (!/^(file|data):/.test(request.url())) complaints.push(`asked ${request.url()}`);
        });
        for (const kind of kinds) {
          await page.setViewportSize(desk);
          await page.goto(url(kind), { waitUntil: 'load' });
          complaints.push(...(await unsound(page)).map((words) => `${kind} ${words}`));
          const found = await axeViolations(page);
          for (const look of looks) violations[look].push(...found[look].map((violation) => `${kind} ${violation}`));
          await page.setViewportSize(phone);
          unfit.push(...(await unfitForPhone(page)).map((words) => `${kind} ${words}`));
          for (const width of narrow) {
            await page.setViewportSize({ width, height: 450 });
            const wide = await page.evaluate(() => document.documentElement.scrollWidth);
            if (wide > width) unfit.push(`${kind} is ${wide} wide on a screen of ${width}`);
          }
          await page.setViewportSize(desk);
          lost.push(...(await lostInForcedColors(page)).map((words) => `${kind} ${words}`));
        }
      }),
    );

    test.each(looks)('has no accessibility violations in %s', (look) => expect(violations[look]).toEqual([]));

    test('opens from a disk without a word on the console and without asking the network', () =>
      expect(complaints).toEqual([]));

    test('fits a screen 320 and 360 wide and one at 200 %, and what gloves tap is 44 pixels high', () =>
      expect(unfit).toEqual([]));

    test('keeps its signs, keys, buttons and drawings where colours are forced', () => expect(lost).toEqual([]));
  });

  test('finds an option by part of its name, with the keyboard alone', async () => {
    await visit(async (page) => {
      await page.goto(url('index.html'));
      await page.keyboard.press('/');
      await page.waitForURL(/search\.html/);
      await page.waitForFunction(() => document.activeElement?.id === 'search-words');
      await page.keyboard.type('shiplap');
      expect(await page.locator('#search-count').textContent()).toMatch(/found/);
      const kinds = await page.locator('#search-results .kind').allTextContents();
      expect(kinds.lastIndexOf('Record')).toBe(kinds.length - 1);
      expect(kinds.indexOf('Record')).toBe(kinds.length - kinds.filter((kind) => kind === 'Record').length);
      expect(
        (await page.locator('#search-results .found').allTextContents()).filter((found) => found.includes('.md')),
      ).toEqual([]);
      await page.keyboard.press('Enter');
      await page.keyboard.press('Enter');
      await page.waitForURL(/options\/ceiling-board\/.*shiplap/);
      expect(await page.locator('h1').textContent()).toMatch(/shiplap/i);
    });
  });

  // What a page of the demo has is not in each house.
  const testDemo = isDemo ? test : (): void => undefined;

  testDemo('keeps what a long list was asked over a reload, each list for itself', async () => {
    await visit(async (page) => {
      await page.goto(url('finish-schedule.html'));
      const keys = askedList(page, 'finish-keys');
      const remarks = askedList(page, 'finish-remarks');
      const all = await remarks.shown(3);
      const kinds = await keys.shown(2);
      await keys.words.fill('paint');
      await keys.head('Finish').click();
      const asked = await keys.shown(1);
      expect(asked.length).toBeGreaterThan(1);
      expect(asked.length).toBeLessThan(kinds.length);
      expect(asked).toEqual(asked.toSorted((one, other) => one.localeCompare(other)));
      expect(await remarks.shown(3)).toEqual(all);
      await page.reload();
      expect(await keys.words.inputValue()).toBe('paint');
      expect(await keys.order('Finish')).toBe('ascending');
      expect(await keys.shown(1)).toEqual(asked);
      expect(await remarks.words.inputValue()).toBe('');
      expect(await remarks.shown(3)).toEqual(all);
    });
  });

  testDemo(
    'has months that are past or far away folded, each opened by its address, and all open on paper',
    async () => {
      await visit(async (page) => {
        await page.setViewportSize(desk);
        await page.goto(url('calendar.html'));
        const open = () => page.locator('.month[open]').evaluateAll((months) => months.map(({ id }) => id));
        // The day is 23 April; what is due soon is due in May.
        expect(await open()).toEqual(['month-2026-04', 'month-2026-05']);
        expect(await page.locator('.month').count()).toBeGreaterThan(9);
        expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(4000);

        await page.goto(`${url('calendar.html')}#month-2026-10`);
        expect(await open()).toContain('month-2026-10');
        expect(
          await page.locator('#month-2026-10').evaluate((month) => month.getBoundingClientRect().top),
        ).toBeLessThan(30);

        await page.emulateMedia({ media: 'print' });
        const lines = await page.locator('.agenda li').evaluateAll((all) => all.map((one) => one.clientHeight));
        expect(lines.length).toBeGreaterThan(60);
        expect(Math.min(...lines)).toBeGreaterThan(10);
      });
    },
  );

  testDemo('explains a word of the trade where it first stands, without a script, by a tap or by keys', async () => {
    const context = await browser.newContext({ viewport: phone, hasTouch: true, javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(url('allowances.html'));
    const words = page.locator('#term-allowance');
    expect(await page.locator('.term', { hasText: /^allowances?$/iu }).count()).toBe(1);
    expect(await words.isVisible()).toBe(false);
    await page.locator('.term').first().tap();
    expect(await words.innerText()).toMatch(/^Allowance: Money that the contract sets aside/u);
    const box = await words.boundingBox();
    expect(box?.x).toBeGreaterThanOrEqual(0);
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(phone.width);
    await page.keyboard.press('Escape');
    expect(await words.isVisible()).toBe(false);
    await page.keyboard.press('Enter');
    expect(await words.isVisible()).toBe(true);
    await context.close();
  });

  test('remembers light or dark, as it was chosen', async () => {
    await visit(async (page) => {
      await page.goto(url('index.html'));
      await page.getByRole('button', { name: 'Dark' }).click();
      await page.goto(url('money.html'));
      expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
    });
  });

  async function visit(work: (page: Page) => Promise<void>): Promise<void> {
    const context = await browser.newContext({ colorScheme: 'light', viewport: desk });
    try {
      await work(await context.newPage());
    } finally {
      await context.close();
    }
  }
});

async function unsound(page: Page): Promise<string[]> {
  const [hasRun, families] = await page.evaluate(async () => {
    await document.fonts.ready;
    const faces = Array.from(document.fonts as unknown as Iterable<FontFace>);
    return ['hit' in window, faces.filter(({ status }) => status === 'loaded').map(({ family }) => family)] as const;
  });
  return [
    ...(hasRun ? ['ran markup from a record'] : []),
    ...(families.some((name) => name.includes('Public Sans')) ? [] : ['did not load its letters']),
  ];
}

async function unfitForPhone(page: Page): Promise<string[]> {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  const small = await page.evaluate(() =>
    // A button with words beside it is tapped on either; a word that is explained stands in its line, as a link does.
    Array.from(document.querySelectorAll('button:not(.term), summary, input, .index a, .tool, .onward, .in-page a'))
      .map((element) => element.closest('label') ?? element)
      .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height < 44)
      .map((element) => element.outerHTML.slice(0, 90)),
  );
  return [...(wide > phone.width ? [`is ${wide} wide`] : []), ...small.map((element) => `small ${element}`)];
}
