import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import forge from 'node-forge';
import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { makeHandout, type Handout } from '../../src/handout/index.js';
import { currentScript, handoutFolders } from '../../src/site/index.js';
import { writeTree } from '../../src/disk/store/index.js';
import { demoBook } from '../demo-house.js';
import { makeCertificate } from '../signoff/make-certificate.js';
import { looks, violationsOn, type Violations } from './axe.js';
import { openBrowser } from './open-browser.js';
import { scrollingSideways } from './sideways.js';
import { htmlFiles } from './site-files.js';

vi.setConfig({ testTimeout: 180_000, hookTimeout: 180_000 });

const issueOf = (number: number, date: string) =>
  ({ number, purpose: 'construction', date, digest: String(number).repeat(64) }) as const;

let browser: Browser;
let folder: string;
let pages: readonly string[];
let server: Server;
let asked: string[];
let answer: string | undefined;
let handoutAt: (number: number | undefined) => Handout;

beforeAll(async () => {
  browser = await openBrowser();
  const { certificate, key } = makeCertificate('localhost');
  server = createServer(
    { cert: forge.pki.certificateToPem(certificate), key: forge.pki.privateKeyToPem(key) },
    (request, response) => {
      asked.push(`${request.url ?? ''} ${request.headers.referer ?? 'no referrer'}`);
      if (answer === undefined) return void response.writeHead(404).end();
      response.writeHead(200, { 'content-type': 'text/javascript' }).end(answer);
    },
  );
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
  const site = `https://localhost:${(server.address() as AddressInfo).port}/larch`;
  const book = await demoBook('2026-04-23');
  const trade = book.trades.find(({ slug }) => slug === 'masonry');
  if (!trade) throw new Error('the demo house has no masonry');
  const sited = { ...book, house: { ...book.house, site } };
  handoutAt = (number) =>
    makeHandout(sited, trade, number === undefined ? {} : { stamp: issueOf(number, `2026-0${number + 2}-20`) });
  folder = mkdtempSync(join(tmpdir(), 'bookmatch-handout-'));
  await write('issue-2', handoutAt(2));
  await write('records', handoutAt(undefined));
  await write('no-site', makeHandout(book, trade, { stamp: issueOf(2, '2026-04-20') }));
  const carpentry = book.trades.find(({ slug }) => slug === 'finish-carpentry');
  if (carpentry) await write('carpentry', makeHandout(book, carpentry));
  pages = htmlFiles(join(folder, 'issue-2'));
});
afterAll(async () => {
  await browser.close();
  await new Promise((done) => server.close(done));
  rmSync(folder, { recursive: true });
});

async function write(name: string, handout: Handout): Promise<void> {
  const files = [...(await handoutFolders([handout]))].map(
    ([path, content]) => [path.split('/').slice(1).join('/'), content] as const,
  );
  await writeTree(join(folder, name), new Map(files));
}

const url = (name: string, page = 'index.html'): string => pathToFileURL(join(folder, name, page)).href;

/** Does a shade at its edge say that it goes on? */
async function isShaded(scroll: Locator): Promise<boolean> {
  const shown = async (): Promise<string> => (await scroll.screenshot()).toString('base64');
  const before = await shown();
  await scroll.evaluate(
    (node) => ((node as HTMLElement).style.background = 'linear-gradient(transparent, transparent)'),
  );
  const without = await shown();
  await scroll.evaluate((node) => node.removeAttribute('style'));
  return before !== without;
}

async function visit(options: BrowserContextOptions, look: (page: Page) => Promise<void>): Promise<void> {
  const context = await browser.newContext({ ignoreHTTPSErrors: true, ...options });
  asked = [];
  try {
    await look(await context.newPage());
  } finally {
    await context.close();
  }
}

/** A telephone or a mail address of somebody whom trades ask. */
const reached = /^(?:tel:5550(?:117|142)|mailto:(?:office|site)@example\.com)$/u;

const currency = (page: Page) => page.locator('[data-currency]');

describe('an older copy, opened from a disk', () => {
  test('says that it is superseded, by which issue and of which day; asks for the list and nothing else', async () => {
    answer = currentScript([handoutAt(4)]);
    await visit({}, async (page) => {
      const requests: string[] = [];
      page.on('request', (request) => requests.push(request.url()));
      await page.goto(url('issue-2'));
      await expect.poll(() => currency(page).textContent()).toBe('Superseded by issue 4 of 20 June 2026.');
      const current = page.getByRole('link', { name: 'Open the current card' });
      expect(await current.getAttribute('href')).toMatch(/\/larch\/handout\/masonry\/index\.html$/);
      expect(asked).toEqual(['/larch/handout/current.js no referrer']);
      expect(requests.filter((one) => !/^(?:file|data):/u.test(one))).toHaveLength(1);
    });
  });

  test('says that it is current when it is', async () => {
    answer = currentScript([handoutAt(2)]);
    await visit({}, async (page) => {
      await page.goto(url('issue-2'));
      await expect.poll(() => currency(page).textContent()).toBe('Checked just now: issue 2 is the current one.');
    });
  });

  test('says that it differs when the issue was made again', async () => {
    answer = currentScript([handoutAt(2)]).replaceAll('2'.repeat(64), '9'.repeat(64));
    await visit({}, async (page) => {
      await page.goto(url('issue-2'));
      await expect.poll(() => currency(page).textContent()).toMatch(/differs from issue 2/);
    });
  });

  test('a copy that was never issued points to the issue', async () => {
    answer = currentScript([handoutAt(1)]);
    await visit({}, async (page) => {
      await page.goto(url('records'));
      await expect.poll(() => currency(page).textContent()).toBe('Issue 1 of 20 March 2026 is out: use that one.');
    });
  });

  test.each([
    ['the list is of another job', () => currentScript([handoutAt(4)]).replace('"2614"', '"9999"')],
    ['the list is not there', () => undefined],
    ['nothing is issued', () => currentScript([handoutAt(undefined)])],
    ['the list is not what it should be', () => 'window.bookmatchCurrent = 7;'],
  ])('says of which day it is when %s', async (_name, given) => {
    answer = given();
    await visit({}, async (page) => {
      await page.goto(url('issue-2'), { waitUntil: 'networkidle' });
      expect(await currency(page).textContent()).toMatch(/^This copy is of 20 April 2026\./);
    });
  });

  test('says of which day it is when there is no network', async () => {
    answer = currentScript([handoutAt(4)]);
    await visit({ offline: true }, async (page) => {
      await page.goto(url('issue-2'), { waitUntil: 'networkidle' });
      expect(await currency(page).textContent()).toMatch(/^This copy is of 20 April 2026\./);
      expect(asked).toEqual([]);
    });
  });

  test('asks nobody when the house names no site', async () => {
    await visit({}, async (page) => {
      const requests: string[] = [];
      page.on('request', (request) => requests.push(request.url()));
      await page.goto(url('no-site'), { waitUntil: 'networkidle' });
      expect(requests.filter((one) => !/^(?:file|data):/u.test(one))).toEqual([]);
      expect(await currency(page).textContent()).toMatch(/^This copy is of 20 April 2026\./);
    });
  });
});

describe('its pages', () => {
  describe('have no accessibility violations', () => {
    const errors: string[] = [];
    let violations: Violations;
    beforeAll(() => {
      answer = currentScript([handoutAt(4)]);
      return visit({ bypassCSP: true }, async (page) => {
        page.on('pageerror', (error) => errors.push(error.message));
        violations = await violationsOn(page, pages, (path) => url('issue-2', path));
      });
    });
    test.each(looks)('in %s', (look) => expect([...errors, ...violations[look]]).toEqual([]));
  });

  test('load all that they name, under their own policy, and link to nothing outside their folder but the PDF', async () => {
    answer = undefined;
    const failures: string[] = [];
    await visit({}, async (page) => {
      page.on('requestfailed', (request) => failures.push(request.url()));
      page.on('console', (message) => failures.push(message.text()));
      for (const path of htmlFiles(join(folder, 'no-site'))) {
        await page.goto(url('no-site', path));
        const loaded = await page.evaluate(async () => {
          await document.fonts.ready;
          return Array.from(document.fonts as unknown as Iterable<FontFace>).filter((face) => face.status === 'loaded')
            .length;
        });
        expect(loaded).toBeGreaterThan(1);
        const links = await page
          .locator('a')
          .evaluateAll((all) => all.map((one) => new URL(one.getAttribute('href') ?? '', one.baseURI).href));
        const base = pathToFileURL(join(folder, 'no-site')).href;
        for (const link of links)
          if (!link.startsWith(`${base}/`) && !reached.test(link)) failures.push(`${path} links to ${link}`);
      }
    });
    expect(failures).toEqual([]);
  });

  test.each([320, 390])('fit a phone %i wide, and nothing in them scrolls sideways', async (width) => {
    await visit({ viewport: { width, height: 740 }, hasTouch: true }, async (page) => {
      for (const path of htmlFiles(join(folder, 'carpentry'))) {
        await page.goto(url('carpentry', path));
        expect(await scrollingSideways(page), path).toEqual([]);
      }
    });
  });

  test('show a row of a table as a card on a phone, each figure with the head of its column', async () => {
    await visit({ viewport: { width: 390, height: 740 }, hasTouch: true }, async (page) => {
      await page.goto(url('carpentry', 'products.html'));
      const net = page.locator('#orders td[data-head="Net"]').first();
      expect(await net.evaluate((cell) => getComputedStyle(cell, '::before').content)).toBe('"Net"');
      await page.setViewportSize({ width: 1200, height: 740 });
      expect(await net.evaluate((cell) => getComputedStyle(cell).display)).toBe('table-cell');
    });
  });

  test('say first what a foreman asks: where next, what is there first, what is open, whom to call', async () => {
    await visit({ viewport: { width: 390, height: 844 }, hasTouch: true }, async (page) => {
      await page.goto(url('no-site'));
      const heads = await page.locator('.card h2').allTextContents();
      expect(heads).toEqual(['Rooms, the next first', 'Must be there first', 'Open', 'Whom to ask']);
      expect(await page.getByLabel('Call Superintendent, 555-0142').getAttribute('href')).toBe('tel:5550142');
      expect(await page.locator('main').textContent()).not.toContain('2222-2222-2222');
      expect(await page.locator('footer').textContent()).toContain('2222-2222-2222');
    });
  });

  test('have targets for gloves', async () => {
    await visit({ viewport: { width: 360, height: 740 }, hasTouch: true }, async (page) => {
      await page.goto(url('carpentry'));
      const heights = await page
        .locator('.room-list a, .card-list a, .more, .reach, main .tool:visible, .top .tool:visible, summary')
        .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
      expect(heights.length).toBeGreaterThan(20);
      for (const height of heights) expect(height).toBeGreaterThanOrEqual(56);
    });
  });

  test('fit a drawing to a phone, and make its letters large enough to read at a tap', async () => {
    await visit({ viewport: { width: 390, height: 844 }, hasTouch: true }, async (page) => {
      await page.goto(url('carpentry', 'rooms/dining.html'));
      const plan = page.locator('.drawing:has(input)').first();
      const scroll = plan.locator('.scroll');
      const goesOn = (): Promise<boolean> =>
        scroll.evaluate(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 1);
      /** Pixels of the letters that are shown. */
      const letters = (): Promise<number[]> =>
        plan.locator('svg').evaluate((svg: SVGSVGElement) => {
          const shown = Array.from(svg.querySelectorAll('text')).filter((text) => text.getClientRects().length > 0);
          const perPoint = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
          return shown.map((text) => parseFloat(getComputedStyle(text).fontSize) * perPoint);
        });
      expect(await goesOn()).toBe(false);
      expect(await letters()).toEqual([]);
      expect(await plan.locator('figcaption').isVisible()).toBe(true);

      await scroll.tap();
      await expect.poll(goesOn).toBe(true);
      const large = await letters();
      expect(large.length).toBeGreaterThan(10);
      expect(Math.min(...large)).toBeGreaterThanOrEqual(12);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
      expect(await isShaded(scroll)).toBe(true);

      await scroll.tap();
      await expect.poll(goesOn).toBe(false);
      // The same by keys.
      await plan.getByRole('checkbox').focus();
      await page.keyboard.press('Space');
      await expect.poll(goesOn).toBe(true);
      await page.keyboard.press('Space');

      await page.setViewportSize({ width: 1200, height: 844 });
      expect(await goesOn()).toBe(false);
      expect((await letters()).length).toBeGreaterThan(10);
      expect(await isShaded(scroll)).toBe(false);
    });
  });

  test('any room is two taps away', async () => {
    await visit({ viewport: { width: 360, height: 740 }, hasTouch: true }, async (page) => {
      await page.goto(url('carpentry', 'rooms/dining.html'));
      await page.getByRole('button', { name: 'Menu' }).tap();
      await page.getByRole('navigation', { name: 'Contents' }).getByRole('link', { name: 'Great room' }).tap();
      await expect.poll(() => page.locator('h1').textContent()).toBe('Great room');
    });
  });

  test('keep what is typed on the as-built page', async () => {
    await visit({}, async (page) => {
      await page.goto(url('no-site', 'as-built.html'));
      await page.locator('textarea').first().fill('Lot 7; set an inch low');
      await page.reload();
      expect(await page.locator('textarea').first().inputValue()).toBe('Lot 7; set an inch low');
    });
  });

  test.each([
    ['Letter', 612, 792],
    ['A4', 595, 842],
  ] as const)('print on %s without being cut', async (format, width, height) => {
    await visit({}, async (page) => {
      for (const path of ['index.html', 'rooms/great-room.html', 'products.html']) {
        await page.goto(url('carpentry', path));
        await page.emulateMedia({ media: 'print' });
        const printed = await PDFDocument.load(await page.pdf({ format }));
        expect(Math.abs(Math.round(printed.getPage(0).getWidth()) - width)).toBeLessThanOrEqual(1);
        expect(Math.abs(Math.round(printed.getPage(0).getHeight()) - height)).toBeLessThanOrEqual(1);
        // What is printed is as wide as the sheet less its margins: 96 pixels an inch, 26 mm of margin.
        await page.setViewportSize({ width: Math.floor((width / 72) * 96 - (26 / 25.4) * 96), height: 900 });
        expect(
          await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
          path,
        ).toBeLessThanOrEqual(0);
        await page.emulateMedia({ media: null });
      }
    });
  });
});
