import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { compareBooks, withTextDiffs } from '../../src/disk/load/index.js';
import { writeComparison } from '../../src/site/index.js';
import { demoBook, demoOf } from '../demo-house.js';
import { amountIn, askedList } from './asked-list.js';
import { looks, violationsOn, type Violations } from './axe.js';
import { demoDay } from './built-books.js';
import { openBrowser } from './open-browser.js';
import { brokenLinks, invalidHtml } from './page-checks.js';
import { scrollingSideways } from './sideways.js';
import { htmlFiles } from './site-files.js';

vi.setConfig({ testTimeout: 180_000 });

const hostile = `<script>window.hit = 1</script><img src=x onerror="window.hit = 1">`;

/** What an owner changes in an evening, what a supplier changes by mail, and a note with markup in it. */
const edits: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'content/rooms/great-room.md': [
    ['    chosen: fir-tg-1x6\n', '    chosen: alder-nickel-gap-1x8\n'],
    [`wall: north, at: 1'-6", width: 5'-6", height: 7'-0"`, `wall: north, at: 1'-6", width: 5'-0", height: 7'-0"`],
    ['note: Taped behind the boards.', `note: '${hostile}'`],
  ],
  'content/rooms/study.md': [[`ceiling: flat 9'-0"`, `ceiling: flat 9'-6"`]],
  'content/options/floor/white-oak-engineered-7.md': [['material: $', 'material: $1']],
  'content/house.md': [
    ['overage-markup: 15 %', 'overage-markup: 14 %'],
    ['date: 2026-04-06', 'date: 2026-04-13'],
  ],
};

let browser: Browser;
let folder: string;
let pages: string[];

beforeAll(async () => {
  browser = await openBrowser();
  const from = await demoBook(demoDay);
  const after = from.sources.map(({ path, text }) => ({
    path,
    text: (edits[path] ?? []).reduce((edited, [from, to]) => {
      if (!edited.includes(from)) throw new Error(`${path} has no ${from}`);
      return edited.replace(from, () => to);
    }, text),
  }));
  const newer = demoOf(after, demoDay);
  if (!newer.book) throw new Error(JSON.stringify(newer.problems.slice(0, 3)));
  const to = withCaution(newer.book);
  const { comparison } = await withTextDiffs(compareBooks(from, to, { from: 'issue 1', to: 'issue 2' }), from, to);
  const out = await mkdtemp(join(tmpdir(), 'bookmatch-comparison-'));
  await writeComparison(comparison, from, to, out);
  folder = join(out, 'comparison');
  pages = htmlFiles(folder);
});
afterAll(async () => {
  await browser.close();
  await rm(dirname(folder), { recursive: true, force: true });
});

function withCaution(book: Book): Book {
  const caution = {
    id: 'clear-of-heat/great-room/breast',
    rule: 'clear-of-heat',
    title: 'Board near a firebox',
    room: 'great-room',
    place: 'breast',
    placeText: 'Chimney breast',
    selections: [],
    trades: ['masonry'],
    seen: 'Boards end near the breast.',
    says: '',
    source: { document: '', edition: '', section: '', isCode: false },
    locally: '',
    ask: 'Ask the maker of the unit.',
  };
  return { ...book, cautions: [...book.cautions, caution] };
}

test('has an overview, a page for each room that changed, and the records', () => {
  // The study's ceiling is higher: less of the bedroom's wall above it stands outside.
  expect(pages).toEqual([
    'index.html',
    'records.html',
    'rooms/great-room.html',
    'rooms/primary-bedroom.html',
    'rooms/study.html',
  ]);
  const text = read('index.html').replace(/<[^>]+>/g, ' ');
  expect(text).toMatch(/Where the difference comes from/);
  expect(text).toMatch(/New: +101 Great room/);
  expect(text).toMatch(/Mark-up on what goes over +15 % +14 %/);
});

describe('has no accessibility violations', () => {
  let violations: Violations;
  beforeAll(() =>
    visit(1280, async (page) => {
      violations = await violationsOn(page, pages, url);
    }),
  );
  test.each(looks)('in %s', (look) => expect(violations[look]).toEqual([]));
});

test('opens from a disk, asks nothing of the network, runs nothing from a record, and fits a screen 360 wide', async () => {
  const complaints: string[] = [];
  await visit(360, async (page) => {
    page.on('console', (message) => complaints.push(message.text()));
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('request', (request) => {
      if (!/^(file|data):/.test(request.url())) complaints.push(`asked ${request.url()}`);
    });
    for (const path of pages) {
      await page.goto(url(path));
      await page.keyboard.press('/');
      if (await page.evaluate(() => 'hit' in window)) complaints.push(`${path} ran markup from a record`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      if (wide > 360) complaints.push(`${path} is ${wide} wide`);
    }
  });
  expect(complaints).toEqual([]);
});

test('has every column of the changes in sight on a small laptop', async () => {
  await visit(1280, async (page) => {
    await page.goto(url('index.html'));
    const beyond = await page
      .locator('.scroll', { hasText: 'Trade to tell' })
      .evaluate((scroll) => scroll.scrollWidth - scroll.clientWidth);
    expect(beyond).toBe(0);
  });
});

test('on a phone a change is a line that opens, and nothing scrolls sideways', async () => {
  await visit(390, async (page) => {
    for (const path of pages) {
      await page.goto(url(path));
      expect([path, await scrollingSideways(page)]).toEqual([path, []]);
    }
    await page.goto(url('index.html'));
    const row = page.locator('#changes-table tbody tr', { hasText: 'Alder nickel gap' });
    const inSight = () => row.locator('th, td').evaluateAll((cells) => cells.map((cell) => cell.clientHeight > 0));
    // Room, what, was, now and money; the trade at a tap.
    expect(await inSight()).toEqual([true, true, true, true, true, false]);
    await row.locator('.row-opener').check();
    expect(await inSight()).toEqual([true, true, true, true, true, true]);

    await askedList(page, 'changes-table').head('Money').click();
    expect(await askedList(page, 'changes-table').order('Money')).toBe('ascending');
  });
});

test('is one flat list, whose rows are asked for by words and put in order by money; a reload keeps both', async () => {
  await visit(1280, async (page) => {
    await page.goto(url('index.html'));
    const list = askedList(page, 'changes-table');
    const own = await list.shown(1);
    const rooms = await list.shown(0);
    expect(own.length).toBeGreaterThan(12);
    expect(new Set(rooms)).toEqual(new Set(['101 Great room', '111 Study', '113 Primary bedroom', 'The house']));

    await list.head('Money').focus();
    await page.keyboard.press('Enter');
    const money = (await list.shown(4)).map(amountIn);
    expect(await list.order('Money')).toBe('ascending');
    // A row that moves nothing says so, and stands before all figures.
    const figures = money.filter((amount) => amount !== 0);
    expect(figures).toEqual(figures.toSorted((one, other) => one - other));
    expect(figures[0]).toBeLessThan(0);
    expect(figures.at(-1)).toBeGreaterThan(20_000);
    await list.head('Money').click();
    expect(await list.order('Money')).toBe('descending');
    expect((await list.shown(4)).map(amountIn)).toEqual(money.toReversed());
    expect(await page.locator('#changes-table tfoot').textContent()).toContain('Difference');

    await list.words.fill('study insulation');
    expect(await list.shown(0)).toEqual(['111 Study']);
    expect(await page.getByRole('status').first().textContent()).toBe(`1 of ${own.length}`);
    await list.words.fill('study');
    const asked = await list.shown(1);
    expect(asked.length).toBeGreaterThan(1);

    await page.reload();
    expect(await list.words.inputValue()).toBe('study');
    expect(await list.order('Money')).toBe('descending');
    expect(await list.shown(1)).toEqual(asked);

    // A third time, and they stand as they were.
    await list.head('Money').click();
    expect(await list.order('Money')).toBe(null);
    await list.words.fill('');
    expect(await list.shown(1)).toEqual(own);
    await page.reload();
    expect(await list.shown(1)).toEqual(own);
  });
});

test('prints both sides of a drawing beside each other', async () => {
  await visit(800, async (page) => {
    await page.goto(url('rooms/great-room.html'));
    await page.emulateMedia({ media: 'print' });
    const [was, now] = await page
      .locator('.sides-drawn')
      .first()
      .locator('.side')
      .evaluateAll((sides) => sides.map((side) => side.getBoundingClientRect().top));
    expect(was).toBe(now);
  });
});

test('links only to pages and anchors that are there', () => {
  expect(brokenLinks(folder, pages)).toEqual([]);
});

test('is valid HTML on every page', async () => {
  expect((await invalidHtml(folder, pages)).slice(0, 20)).toEqual([]);
});

const url = (page: string): string => pathToFileURL(join(folder, page)).href;
const read = (page: string): string => readFileSync(join(folder, page), 'utf8');

async function visit(width: number, work: (page: Page) => Promise<void>): Promise<void> {
  const context = await browser.newContext({ colorScheme: 'light', viewport: { width, height: 800 } });
  try {
    await work(await context.newPage());
  } finally {
    await context.close();
  }
}
