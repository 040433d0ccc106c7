import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { axeViolations } from './axe.js';
import { imageOf, openCopies, type Copies, type Copy } from './handout-copies.js';

vi.setConfig({ testTimeout: 180_000, hookTimeout: 180_000 });

let copies: Copies;
beforeAll(async () => {
  copies = await openCopies('issue-2', 'records', 'since-2', 'other-job', 'no-site');
});
afterAll(() => copies.close());

const currency = (page: Page) => page.locator('[data-currency]');

describe('an older copy, opened from a disk', () => {
  test('says that it is superseded, by which issue and of which day; asks for one image and nothing else', async () => {
    copies.answerWith(imageOf(copies.handoutAt(4)));
    await copies.visit({}, async (page) => {
      const requests: string[] = [];
      page.on('request', (request) => requests.push(request.url()));
      await page.goto(copies.url('issue-2'));
      await expect.poll(() => currency(page).textContent()).toBe('Superseded by issue 4 of 20 June 2026.');
      const current = page.getByRole('link', { name: 'Open the current card' });
      expect(await current.getAttribute('href')).toMatch(/\/larch\/handout\/masonry\/index\.html$/);
      expect(copies.asked()).toEqual(['/larch/handout/current/2614/masonry.svg no referrer']);
      expect(requests.filter((one) => !/^(?:file|data):/u.test(one))).toHaveLength(1);
    });
  });

  test('says that it is current when it is', async () => {
    copies.answerWith(imageOf(copies.handoutAt(2)));
    await copies.visit({}, async (page) => {
      await page.goto(copies.url('issue-2'));
      await expect.poll(() => currency(page).textContent()).toBe('Checked just now: issue 2 is the current one.');
    });
  });

  test('says that it differs when the issue was made again', async () => {
    copies.answerWith(imageOf(copies.handoutAt(2, '9'.repeat(64))));
    await copies.visit({}, async (page) => {
      await page.goto(copies.url('issue-2'));
      await expect.poll(() => currency(page).textContent()).toMatch(/differs from issue 2/);
    });
  });

  test('a copy that was never issued points to the issue', async () => {
    copies.answerWith(imageOf(copies.handoutAt(1)));
    await copies.visit({}, async (page) => {
      await page.goto(copies.url('records'));
      await expect.poll(() => currency(page).textContent()).toBe('Issue 1 of 20 March 2026 is out: use that one.');
    });
  });

  test.each([
    ['the site has none', () => undefined],
    ['nothing is issued', () => imageOf(copies.handoutAt(undefined))],
    ['what comes is no image', () => 'window.wasRun = true;'],
    ['the image is of no such size', () => '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'],
  ])('says of which day it is when %s', async (_name, given) => {
    copies.answerWith(given());
    await copies.visit({}, async (page) => {
      await page.goto(copies.url('issue-2'), { waitUntil: 'networkidle' });
      expect(await currency(page).textContent()).toMatch(/^This copy is of 20 April 2026\./);
      expect(copies.asked()).toHaveLength(1);
    });
  });

  test('runs nothing that comes from there', async () => {
    const script = 'parent.wasRun = top.wasRun = window.wasRun = true; document.documentElement.remove();';
    copies.answerWith(
      imageOf(copies.handoutAt(4))
        ?.replace('<svg ', `<svg onload="${script}" `)
        .replace('</svg>', `<script>${script}</script></svg>`),
    );
    await copies.visit({}, async (page) => {
      await page.goto(copies.url('issue-2'), { waitUntil: 'networkidle' });
      await expect.poll(() => currency(page).textContent()).toBe('Superseded by issue 4 of 20 June 2026.');
      expect(await page.evaluate(() => 'wasRun' in window)).toBe(false);
      const policy = await page.locator('meta[http-equiv]').getAttribute('content');
      expect(policy).toMatch(/script-src 'self' file:;/u);
      const blocked = await page.evaluate(
        (src) =>
          new Promise((done) => {
            const loaded = document.createElement('script');
            loaded.onload = () => done(false);
            loaded.onerror = () => done(true);
            loaded.src = src;
            document.head.append(loaded);
          }),
        (await page.locator('html').getAttribute('data-current')) ?? '',
      );
      expect(blocked).toBe(true);
    });
  });

  test('asks for its own job alone', async () => {
    copies.answerWith(imageOf(copies.handoutAt(4)));
    await copies.visit({}, async (page) => {
      await page.goto(copies.url('other-job'), { waitUntil: 'networkidle' });
      expect(await currency(page).textContent()).toMatch(/^This copy is of 20 April 2026\./);
      expect(copies.asked()).toEqual(['/larch/handout/current/9999/masonry.svg no referrer']);
    });
  });

  test('says of which day it is when there is no network', async () => {
    copies.answerWith(imageOf(copies.handoutAt(4)));
    await copies.visit({ offline: true }, async (page) => {
      await page.goto(copies.url('issue-2'), { waitUntil: 'networkidle' });
      expect(await currency(page).textContent()).toMatch(/^This copy is of 20 April 2026\./);
      expect(copies.asked()).toEqual([]);
    });
  });

  test('asks nobody when the house names no site', async () => {
    await copies.visit({}, async (page) => {
      const requests: string[] = [];
      page.on('request', (request) => requests.push(request.url()));
      await page.goto(copies.url('no-site'), { waitUntil: 'networkidle' });
      expect(requests.filter((one) => !/^(?:file|data):/u.test(one))).toEqual([]);
      expect(await currency(page).textContent()).toMatch(/^This copy is of 20 April 2026\./);
    });
  });
});

describe('the page that the code of a printed sheet opens', () => {
  const current = 'Your printed sheet is current by this page: issue 2 of 20 April 2026.';
  const sheet = (page: Page) => page.locator('[data-sheet]');
  const open = (copy: Copy, query: string) => `${copies.url(copy)}?${query}`;

  test.each([
    ['is current', 'issue-2', 'issue=2&digest=22222', 'current', current],
    ['is current, more of its digest given', 'issue-2', `issue=2&digest=${'2'.repeat(64)}`, 'current', current],
    [
      'is superseded, by which issue',
      'issue-2',
      'issue=1&digest=11111',
      'superseded',
      'Your printed sheet, of issue 1, is superseded by issue 2 of 20 April 2026.',
    ],
    ['has another digest', 'issue-2', 'issue=2&digest=22223', 'unknown', /a digest that is not that issue’s\. Ask/u],
    ['has no digest', 'issue-2', 'issue=2', 'unknown', /names no issue and digest/u],
    ['has a digest too short to tell', 'issue-2', 'issue=2&digest=2', 'unknown', /names no issue and digest/u],
    ['has what is no issue', 'issue-2', 'issue=<b>2</b>&digest=22222', 'unknown', /names no issue and digest/u],
    ['is of a later issue than the page', 'issue-2', 'issue=3&digest=33333', 'unknown', /this page of issue 2 only/u],
    ['was never issued', 'issue-2', 'issue=none', 'superseded', /never issued\. Use issue 2 of 20 April 2026\.$/u],
    ['was never issued, nor the page', 'records', 'issue=none', 'superseded', /never issued\. Ask the builder/u],
    ['is of an issue, the page of later records', 'records', 'issue=1&digest=11111', 'unknown', /of later records/u],
    ['is of the last issue, records went on', 'since-2', 'issue=2&digest=22222', 'unknown', /of later records/u],
    ['is of one before the last', 'since-2', 'issue=1&digest=11111', 'superseded', /is superseded by issue 2\.$/u],
  ] as const)('says of a sheet that %s', async (_name, copy, query, state, words) => {
    copies.answerWith(undefined);
    await copies.visit({ bypassCSP: true }, async (page) => {
      await page.goto(open(copy, query));
      await expect.poll(() => sheet(page).textContent()).toMatch(words);
      expect(await sheet(page).getAttribute('data-state')).toBe(state);
      if (query.endsWith('=11111') || query.endsWith('3')) {
        const { light, dark } = await axeViolations(page);
        expect([...light, ...dark]).toEqual([]);
      }
    });
  });

  test('is sure of what is current where the site says the same', async () => {
    const query = 'issue=2&digest=22222';
    for (const [digest, words] of [
      ['2', 'Your printed sheet is current: issue 2 of 20 April 2026.'],
      ['9', /a digest that is not that issue’s/u],
    ] as const) {
      copies.answerWith(imageOf(copies.handoutAt(2, digest.repeat(64))));
      await copies.visit({}, async (page) => {
        await page.goto(open('issue-2', query));
        await expect.poll(() => sheet(page).textContent()).toMatch(words);
      });
    }
  });

  test('follows the site where a page is older than it', async () => {
    copies.answerWith(imageOf(copies.handoutAt(4)));
    await copies.visit({}, async (page) => {
      const now = 'issue 4 of 20 June 2026.';
      await page.goto(open('issue-2', 'issue=2&digest=22222'));
      await expect
        .poll(() => sheet(page).textContent())
        .toBe(`Your printed sheet, of issue 2, is superseded by ${now}`);
      await page.goto(open('issue-2', 'issue=4&digest=44444'));
      await expect.poll(() => sheet(page).textContent()).toBe(`Your printed sheet is current: ${now}`);
    });
  });

  test('says nothing of sheets where it was not asked, and its own standing without a script', async () => {
    await copies.visit({}, async (page) => {
      await page.goto(copies.url('issue-2'));
      expect(await sheet(page).textContent()).toBe('');
      await page.goto(`${copies.url('no-site')}?issue=2&digest=22222`);
      expect(await sheet(page).count()).toBe(0);
    });
    await copies.visit({ javaScriptEnabled: false }, async (page) => {
      await page.goto(open('issue-2', 'issue=1&digest=11111'));
      expect(await page.locator('.standing').innerText()).toMatch(
        /^Issue 2\. Issued for construction on 20 April 2026/u,
      );
    });
  });
});
