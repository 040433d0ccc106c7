import { readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { rm } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { HtmlValidate } from 'html-validate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { axeViolations } from './axe.js';
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
  let pages: string[];
  let kinds: string[];
  beforeAll(async () => {
    book = await build();
    pages = htmlFiles(book);
    kinds = onePageOfEachKind(pages, (page) => statSync(join(book, page)).size);
  });
  afterAll(() => rm(dirname(book), { recursive: true, force: true }));

  const url = (page: string): string => pathToFileURL(join(book, page)).href;

  test.each(['light', 'dark'] as const)('has no accessibility violations in %s', async (colorScheme) => {
    const failures: string[] = [];
    await visit({ colorScheme, width: 1280 }, async (page) => {
      for (const kind of kinds) {
        await page.goto(url(kind));
        for (const details of await page.locator('details').all())
          await details.evaluate((element) => element.setAttribute('open', ''));
        const violations = await axeViolations(page);
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

  test('links only to pages and anchors that are there', () => {
    const ids = new Map(
      pages.map((page) => [page, new Set([...read(page).matchAll(/ id="([^"]+)"/g)].map((match) => match[1]))]),
    );
    const broken: string[] = [];
    for (const page of pages) {
      // A link that a person wrote may lead to the web; it says so, and nothing is loaded from there.
      const own = read(page).replace(/<a href="(?:https?:|mailto:)[^"]*" rel="noreferrer">/g, '');
      for (const [, raw = ''] of own.matchAll(/ (?:href|src|action)="([^"]*)"/g)) {
        if (raw === 'data:,') continue;
        const [path = '', anchor] = raw.split('#');
        const target = path === '' ? page : normalize(join(dirname(page), path)).replaceAll('\\', '/');
        if (path.startsWith('/') || /^[a-z]+:/.test(path) || target.startsWith('..'))
          broken.push(`${page}: ${raw} leaves the book`);
        else if (!exists(target)) broken.push(`${page}: ${raw}`);
        else if (anchor !== undefined && !ids.get(target)?.has(anchor)) broken.push(`${page}: ${raw} has no anchor`);
      }
    }
    expect(broken).toEqual([]);
  });

  test('is valid HTML on every page', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: {
        // Written by the renderer, not by people.
        'no-inline-style': 'off',
        'void-style': 'off',
        'long-title': 'off',
        'no-trailing-whitespace': 'off',
        // Focus goes to the region itself so that arrow keys scroll it.
        'prefer-native-element': 'off',
      },
    });
    const failures: string[] = [];
    for (const page of pages) {
      const report = await validator.validateString(read(page), page);
      for (const message of report.results[0]?.messages ?? []) {
        failures.push(`${page}:${message.line}:${message.column} ${message.ruleId} ${message.message}`);
      }
    }
    expect(failures.slice(0, 40)).toEqual([]);
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

  const read = (page: string): string => readFileSync(join(book, page), 'utf8');
  const exists = (path: string): boolean => statSync(join(book, path), { throwIfNoEntry: false })?.isFile() ?? false;

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
