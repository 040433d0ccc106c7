import { rm } from 'node:fs/promises';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type { Book, BookIssue } from '../../src/core/book/index.js';
import { changeOrderDigest } from '../../src/signoff/index.js';
import { writeSite } from '../../src/site/index.js';
import { changedBook } from '../print/changed-book.js';
import { axeViolations } from './axe.js';
import { openBrowser } from './open-browser.js';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 180_000 });

const issue = (number: number, study: string): BookIssue => ({
  number,
  purpose: 'sign-off',
  date: `2026-0${number}-20`,
  commit: 'c'.repeat(40),
  digest: String(number).repeat(64),
  rooms: { study },
  trades: {},
  signatures: [],
  open: [],
  body: '',
  source: `content/issues/00${number}.md`,
});
const plain = changedBook();
const book: Book = {
  ...plain,
  house: { ...plain.house, site: 'https://house.example' },
  issues: [
    issue(1, 'a'),
    issue(2, 'b'),
    issue(3, 'b'),
    { ...issue(4, 'c'), void: { on: '2026-04-21', by: 'Builder', why: 'A slip.' } },
  ],
};

let browser: Browser;
const folder = mkdtempSync(join(tmpdir(), 'bookmatch-sheet-'));
beforeAll(async () => {
  browser = await openBrowser();
  await writeSite(book, join(folder, 'sited'));
  await writeSite({ ...book, house: plain.house }, join(folder, 'bare'));
});
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true });
});

const url = (query: string, of = 'sited'): string =>
  `${pathToFileURL(join(folder, of, 'book/agreed.html')).href}${query}`;

async function visit(query: string, look: (page: Page) => Promise<void>, options: object = {}): Promise<void> {
  const context = await browser.newContext(options);
  try {
    const page = await context.newPage();
    await page.goto(url(query));
    await look(page);
  } finally {
    await context.close();
  }
}

const shown = (page: Page) => page.locator('.standing-sheet:visible');
const orderAt = (number: number): string => {
  const order = book.changeOrders.find((one) => one.number === number);
  if (!order) throw new Error(`there is no change order ${number}`);
  return `?change=${number}&digest=${changeOrderDigest(book.house.number, order).slice(0, 5)}`;
};
const unknown = /^No issue and no change order here has the number and the digest of your printed sheet\./u;

describe('the page that the code on a printed sheet of the book opens', () => {
  test.each([
    ['?issue=3&digest=33333', 'current', /^Your printed sheet is current: issue 3 of 20 March 2026\. *$/u],
    ['?issue=3&digest=33333333', 'current', /is current/u],
    [
      '?issue=2&digest=22222',
      'superseded',
      /of issue 2, is superseded by issue 3 of 20 March 2026\. The page of each room agrees to the same there\./u,
    ],
    [
      '?issue=1&digest=11111',
      'superseded',
      /superseded by issue 3 .* The page of Study agrees to something else there/u,
    ],
    [
      '?issue=4&digest=44444',
      'superseded',
      /is of issue 4, which was taken back on 21 April 2026\. What counts is issue 3 of/u,
    ],
    ['?issue=none', 'superseded', /was never issued\. What counts is issue 3 of 20 March 2026\./u],
    [orderAt(1), 'current', /is change order 1 as it is recorded: approved on 23 April 2026\. See it below/u],
    [orderAt(2), 'superseded', /is change order 2 as it is recorded: declined on/u],
    [orderAt(3), 'current', /is change order 3 as it is recorded: proposed on 21 April 2026/u],
    ['?change=3&digest=00000', 'unknown', unknown],
    ['?issue=3&digest=11111', 'unknown', unknown],
    ['?issue=9&digest=99999', 'unknown', unknown],
    ['?issue=other', 'unknown', unknown],
    ['?issue=%3Cimg%20src=x%20onerror=alert(1)%3E&digest="]', 'unknown', unknown],
  ])('%s: %s', async (query, state, words) => {
    await visit(query, async (page) => {
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      await page.reload({ waitUntil: 'networkidle' });
      expect(await shown(page).allInnerTexts()).toEqual([expect.stringMatching(words)]);
      expect(await shown(page).getAttribute('data-state')).toBe(state);
      expect(asked.filter((one) => !/^(?:file|data):/u.test(one))).toEqual([]);
    });
  });

  test('says nothing of sheets where it was not asked, or where no script runs; the issues stand there all the same', async () => {
    await visit('', async (page) => expect(await shown(page).count()).toBe(0));
    await visit(
      '?issue=1&digest=11111',
      async (page) => {
        expect(await shown(page).count()).toBe(0);
        expect(await page.locator('h2', { hasText: 'Issues' }).count()).toBe(1);
      },
      { javaScriptEnabled: false },
    );
  });

  test('is read by everybody, and as wide as a phone', async () => {
    for (const query of ['?issue=1&digest=11111', '?issue=9&digest=99999', orderAt(1)])
      await visit(
        query,
        async (page) => {
          const { light, dark } = await axeViolations(page);
          expect([...light, ...dark]).toEqual([]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
        },
        { viewport: { width: 360, height: 700 } },
      );
  });

  test('has none of it where the house names no site', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(url('?issue=1&digest=11111', 'bare'));
    expect(await page.locator('[data-asked], script[src*="printed-sheet"]').count()).toBe(0);
    await context.close();
  });
});
