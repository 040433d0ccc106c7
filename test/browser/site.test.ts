import { statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { rm } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { axeViolations, looks } from './axe.js';
import { buildDemo, buildHostile } from './built-books.js';
import { openBrowser } from './open-browser.js';
import { htmlFiles, onePageOfEachKind } from './site-files.js';

/** A browser on a busy machine takes its time. */
vi.setConfig({ testTimeout: 180_000 });

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

describe.each([
  { name: 'the demo house', build: buildDemo },
  { name: 'a house with markup in its records', build: buildHostile },
])('$name', ({ build }) => {
  let book: string;
  let kinds: string[];
  beforeAll(async () => {
    book = await build();
    kinds = onePageOfEachKind(htmlFiles(book), (page) => statSync(join(book, page)).size);
  });
  afterAll(() => rm(dirname(book), { recursive: true, force: true }));

  const url = (page: string): string => pathToFileURL(join(book, page)).href;

  test.each(looks)('has no accessibility violations in $colorScheme', async ({ colorScheme, rules }) => {
    const failures: string[] = [];
    await visit({ colorScheme, width: 1280 }, async (page) => {
      for (const kind of kinds) {
        await page.goto(url(kind));
        const violations = await axeViolations(page, rules);
        failures.push(...violations.map((violation) => `${kind} ${violation}`));
      }
    });
    expect(failures).toEqual([]);
  });

  test('opens from a disk without a word on the console and without asking the network', async () => {
    const complaints: string[] = [];
    await visit({ colorScheme: 'light', width: 1280 }, async (page) => {
      page.on('console', (message) => complaints.push(message.text()));
      page.on('pageerror', (error) => complaints.push(error.message));
      page.on('requestfailed', (request) => complaints.push(`failed ${request.url()}`));
      page.on('request', (request) => {
        if (!/^(file|data):/.test(request.url())) complaints.push(`asked ${request.url()}`);
      });
      for (const kind of kinds) {
        await page.goto(url(kind), { waitUntil: 'load' });
        if (await page.evaluate(() => 'hit' in window)) complaints.push(`${kind} ran markup from a record`);
        const family = await page.evaluate(async () => {
          await document.fonts.ready;
          return Array.from(document.fonts as unknown as Iterable<FontFace>)
            .filter((face) => face.status === 'loaded')
            .map((face) => face.family);
        });
        if (!family.some((name) => name.includes('Public Sans'))) complaints.push(`${kind} did not load its letters`);
      }
    });
    expect(complaints).toEqual([]);
  });

  test('fits a screen 360 wide, and what gloves tap is 44 pixels high', async () => {
    const failures: string[] = [];
    await visit({ colorScheme: 'light', width: 360 }, async (page) => {
      for (const kind of kinds) {
        await page.goto(url(kind));
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        if (wide > 360) failures.push(`${kind} is ${wide} wide`);
        const small = await page.evaluate(() =>
          Array.from(document.querySelectorAll('button, summary, input, .index a, .tool, .onward, .in-page a'))
            .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height < 44)
            .map((element) => element.outerHTML.slice(0, 90)),
        );
        failures.push(...small.map((element) => `${kind} small ${element}`));
      }
    });
    expect(failures).toEqual([]);
  });

  test('finds an option by part of its name, with the keyboard alone', async () => {
    await visit({ colorScheme: 'light', width: 1280 }, async (page) => {
      await page.goto(url('index.html'));
      await page.keyboard.press('/');
      await page.waitForURL(/search\.html/);
      await page.waitForFunction(() => document.activeElement?.id === 'search-words');
      await page.keyboard.type('shiplap');
      expect(await page.locator('#search-count').textContent()).toMatch(/found/);
      await page.keyboard.press('Enter');
      await page.keyboard.press('Enter');
      await page.waitForURL(/options\/ceiling-board\/.*shiplap/);
      expect(await page.locator('h1').textContent()).toMatch(/shiplap/i);
    });
  });

  test('remembers the sheet that was chosen', async () => {
    await visit({ colorScheme: 'light', width: 1280 }, async (page) => {
      await page.goto(url('index.html'));
      await page.getByRole('button', { name: 'Dark sheet' }).click();
      await page.goto(url('money.html'));
      expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
    });
  });

  async function visit(
    look: { colorScheme: 'light' | 'dark'; width: number },
    work: (page: Page) => Promise<void>,
  ): Promise<void> {
    const context = await browser.newContext({
      colorScheme: look.colorScheme,
      viewport: { width: look.width, height: 800 },
    });
    try {
      await work(await context.newPage());
    } finally {
      await context.close();
    }
  }
});
