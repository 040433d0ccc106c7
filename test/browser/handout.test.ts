import { pathToFileURL } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { looks, violationsOn, type Violations } from './axe.js';
import { imageOf, openCopies, type Copies } from './handout-copies.js';
import { scrollingSideways } from './sideways.js';
import { htmlFiles } from './site-files.js';

vi.setConfig({ testTimeout: 180_000, hookTimeout: 180_000 });

let copies: Copies;
beforeAll(async () => {
  copies = await openCopies('issue-2', 'no-site', 'carpentry');
});
afterAll(() => copies.close());

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

/** A telephone or a mail address of somebody whom trades ask. */
/** Milliseconds for what follows at once, on a machine that does much else. */
const patience = { timeout: 15_000 };

const reached = /^(?:tel:5550(?:117|142)|mailto:(?:office|site)@example\.com)$/u;

describe('its pages', () => {
  describe('have no accessibility violations', () => {
    const errors: string[] = [];
    let violations: Violations;
    beforeAll(() => {
      copies.answerWith(imageOf(copies.handoutAt(4)));
      return copies.visit({ bypassCSP: true }, async (page) => {
        page.on('pageerror', (error) => errors.push(error.message));
        violations = await violationsOn(page, copies.pages, (path) => copies.url('issue-2', path));
      });
    });
    test.each(looks)('in %s', (look) => expect([...errors, ...violations[look]]).toEqual([]));
  });

  test('load all that they name, under their own policy, and link to nothing outside their folder but the PDF', async () => {
    copies.answerWith(undefined);
    const failures: string[] = [];
    await copies.visit({}, async (page) => {
      page.on('requestfailed', (request) => failures.push(request.url()));
      page.on('console', (message) => failures.push(message.text()));
      for (const path of htmlFiles(copies.folderOf('no-site'))) {
        await page.goto(copies.url('no-site', path));
        const loaded = await page.evaluate(async () => {
          await document.fonts.ready;
          return Array.from(document.fonts as unknown as Iterable<FontFace>).filter((face) => face.status === 'loaded')
            .length;
        });
        expect(loaded).toBeGreaterThan(1);
        const links = await page
          .locator('a')
          .evaluateAll((all) => all.map((one) => new URL(one.getAttribute('href') ?? '', one.baseURI).href));
        const base = pathToFileURL(copies.folderOf('no-site')).href;
        for (const link of links)
          if (!link.startsWith(`${base}/`) && !reached.test(link)) failures.push(`${path} links to ${link}`);
      }
    });
    expect(failures).toEqual([]);
  });

  test.each([320, 390])('fit a phone %i wide, and nothing in them scrolls sideways', async (width) => {
    await copies.visit({ viewport: { width, height: 740 }, hasTouch: true }, async (page) => {
      for (const path of htmlFiles(copies.folderOf('carpentry'))) {
        await page.goto(copies.url('carpentry', path));
        expect(await scrollingSideways(page), path).toEqual([]);
      }
    });
  });

  test('show a row of a table as a card on a phone, each figure with the head of its column', async () => {
    await copies.visit({ viewport: { width: 390, height: 740 }, hasTouch: true }, async (page) => {
      await page.goto(copies.url('carpentry', 'products.html'));
      const net = page.locator('#orders td[data-head="Net"]').first();
      expect(await net.evaluate((cell) => getComputedStyle(cell, '::before').content)).toBe('"Net"');
      await page.setViewportSize({ width: 1200, height: 740 });
      expect(await net.evaluate((cell) => getComputedStyle(cell).display)).toBe('table-cell');
    });
  });

  test('have long schedules as lines on a phone, each of which opens at a tap, by keys, and where an address leads to it', async () => {
    const phone = { viewport: { width: 390, height: 740 }, hasTouch: true };
    const heightOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight);
    await copies.visit({ ...phone, javaScriptEnabled: false }, async (page) => {
      await page.goto(copies.url('carpentry', 'schedules.html'));
      // As cards they were 41,644 high. Without a script the contents stand above.
      expect(await heightOf(page)).toBeLessThan(7000);
      const row = page.locator('#opening-D05');
      expect(await row.innerText()).toMatch(/D05[^]+Primary hall[^]+Primary bedroom[^]+3'-0"/u);
      expect(await row.innerText()).not.toContain('Remarks');
      await row.tap();
      expect(await row.locator('td[data-head="How it moves"]').isVisible()).toBe(true);
      const opener = page.getByLabel('All of D06');
      await opener.focus();
      await page.keyboard.press('Space');
      expect(await page.locator('#opening-D06 td[data-head="How it moves"]').isVisible()).toBe(true);
      const lines = await page.locator('.row-opener').evaluateAll((all) => all.map((one) => one.clientHeight));
      expect(lines.length).toBeGreaterThan(50);
      for (const height of lines) expect(height).toBeGreaterThanOrEqual(56);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('#opening-D07 td[data-head="How it moves"]').isVisible()).toBe(true);
      expect(await opener.isVisible()).toBe(false);
    });
    await copies.visit(phone, async (page) => {
      await page.goto(`${copies.url('carpentry', 'schedules.html')}#opening-D05`);
      expect(await page.getByLabel('All of D05').isChecked()).toBe(true);
      await page.goto(copies.url('carpentry', 'products.html'));
      expect(await heightOf(page)).toBeLessThan(8000);
      await page.setViewportSize({ width: 1200, height: 740 });
      await page.reload();
      expect(await page.locator('.folded-facts .facts').first().isVisible()).toBe(true);
    });
  });

  test('say first what a foreman asks: where next, what is there first, what is open, whom to call', async () => {
    await copies.visit({ viewport: { width: 390, height: 844 }, hasTouch: true }, async (page) => {
      await page.goto(copies.url('no-site'));
      const heads = await page.locator('.card h2').allTextContents();
      expect(heads).toEqual(['Rooms, the next first', 'Must be there first', 'Open', 'Whom to ask']);
      expect(await page.getByLabel('Call Superintendent, 555-0142').getAttribute('href')).toBe('tel:5550142');
      expect(await page.locator('main').textContent()).not.toContain('2222-2222-2222');
      expect(await page.locator('footer').textContent()).toContain('2222-2222-2222');
    });
  });

  test('have targets for gloves', async () => {
    await copies.visit({ viewport: { width: 360, height: 740 }, hasTouch: true }, async (page) => {
      await page.goto(copies.url('carpentry'));
      const heights = await page
        .locator('.room-list a, .card-list a, .more, .reach, main .tool:visible, .top .tool:visible, summary')
        .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
      expect(heights.length).toBeGreaterThan(20);
      for (const height of heights) expect(height).toBeGreaterThanOrEqual(56);
    });
  });

  test('fit a drawing to a phone, and make its letters large enough to read at a tap', async () => {
    await copies.visit({ viewport: { width: 390, height: 844 }, hasTouch: true }, async (page) => {
      await page.goto(copies.url('carpentry', 'rooms/dining.html'));
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
      await expect.poll(goesOn, patience).toBe(true);
      const large = await letters();
      expect(large.length).toBeGreaterThan(10);
      expect(Math.min(...large)).toBeGreaterThanOrEqual(12);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
      expect(await isShaded(scroll)).toBe(true);

      await scroll.tap();
      await expect.poll(goesOn, patience).toBe(false);
      // The same by keys.
      await plan.getByRole('checkbox').focus();
      await page.keyboard.press('Space');
      await expect.poll(goesOn, patience).toBe(true);
      await page.keyboard.press('Space');

      await page.setViewportSize({ width: 1200, height: 844 });
      expect(await goesOn()).toBe(false);
      expect((await letters()).length).toBeGreaterThan(10);
      expect(await isShaded(scroll)).toBe(false);
    });
  });

  test('any room is two taps away', async () => {
    await copies.visit({ viewport: { width: 360, height: 740 }, hasTouch: true }, async (page) => {
      await page.goto(copies.url('carpentry', 'rooms/dining.html'));
      await page.getByRole('button', { name: 'Menu' }).tap();
      await page.getByRole('navigation', { name: 'Contents' }).getByRole('link', { name: 'Great room' }).tap();
      await expect.poll(() => page.locator('h1').textContent()).toBe('Great room');
    });
  });

  test('keep what is typed on the as-built page', async () => {
    await copies.visit({}, async (page) => {
      await page.goto(copies.url('no-site', 'as-built.html'));
      await page.locator('textarea').first().fill('Lot 7; set an inch low');
      await page.reload();
      expect(await page.locator('textarea').first().inputValue()).toBe('Lot 7; set an inch low');
    });
  });

  test.each([
    ['Letter', 612, 792],
    ['A4', 595, 842],
  ] as const)('print on %s without being cut', async (format, width, height) => {
    await copies.visit({}, async (page) => {
      for (const path of ['index.html', 'rooms/great-room.html', 'products.html']) {
        await page.goto(copies.url('carpentry', path));
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
