import { statSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildDemo } from './built-books.js';
import { openBrowser } from './open-browser.js';

/** The demo's heaviest room: what an owner opens on a sofa. */
const room = 'rooms/great-room.html';
const desk = { width: 1440, height: 900 };
const phone = { width: 390, height: 844 };

/** Letters that arrive late may move a line by a hair: what stands in for them is as wide. */
const still = 0.01;

let browser: Browser;
let book: string;
beforeAll(async () => {
  [browser, book] = await Promise.all([openBrowser(), buildDemo()]);
});
afterAll(async () => {
  await browser.close();
  await rm(dirname(book), { recursive: true, force: true });
});

test('weighs less than 150 kB', () => {
  expect(statSync(join(book, room)).size).toBeLessThan(150_000);
});

test.each([
  { screen: desk, most: 3, letters: 'at once' },
  { screen: phone, most: 6, letters: 'at once' },
  { screen: desk, most: 3, letters: 'late' },
  { screen: phone, most: 6, letters: 'late' },
])(
  'is less than $most screens of $screen.width by $screen.height, and holds still while it loads, letters $letters',
  async (asked) => {
    const page = await browser.newPage({ viewport: asked.screen });
    try {
      if (asked.letters === 'late')
        await page.route('**/*.woff2', async (letters) => {
          await new Promise((resolve) => setTimeout(resolve, 500));
          await letters.continue();
        });
      await page.addInitScript(() => {
        const held = window as unknown as { shift: number };
        held.shift = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) held.shift += (entry as unknown as { value: number }).value;
        }).observe({ type: 'layout-shift', buffered: true });
      });
      const shifts: number[] = [];
      // A machine that has no time paints a page by halves: what the page itself moves, it moves each time that it is opened.
      while (shifts.length < 3 && shifts.every((shift) => shift >= still)) {
        await page.goto(pathToFileURL(join(book, room)).href, { waitUntil: 'load' });
        await page.evaluate(() => document.fonts.ready);
        shifts.push(await page.evaluate(() => (window as unknown as { shift: number }).shift));
      }
      const seen = await page.evaluate(() => ({
        height: document.documentElement.scrollHeight,
        width: document.documentElement.scrollWidth,
        nodes: document.querySelectorAll('*').length,
        sheets: document.styleSheets.length,
      }));
      expect(seen.height).toBeLessThan(asked.most * asked.screen.height);
      expect(seen.width).toBeLessThanOrEqual(asked.screen.width);
      expect(seen.nodes).toBeLessThan(2500);
      expect(seen.sheets).toBe(1);
      expect(Math.min(...shifts)).toBeLessThan(still);
    } finally {
      await page.close();
    }
  },
);

test('opens the row that an address leads to', async () => {
  const page = await browser.newPage({ viewport: desk });
  try {
    await page.goto(`${pathToFileURL(join(book, room)).href}#choice-stone-facing_breast`);
    expect(await page.locator('#choice-stone-facing_breast').getAttribute('open')).not.toBeNull();
  } finally {
    await page.close();
  }
});
