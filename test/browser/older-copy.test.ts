import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { imageOf, openCopies, type Copies } from './handout-copies.js';

vi.setConfig({ testTimeout: 180_000, hookTimeout: 180_000 });

let copies: Copies;
beforeAll(async () => {
  copies = await openCopies('issue-2', 'records', 'other-job', 'no-site');
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
