import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { OpenDesk } from '../../src/cli/desk.js';
import { violationsOn } from './axe.js';
import { deskInBrowser } from './desk-in-browser.js';

let dir: string;
let desk: OpenDesk;
let browser: Browser;
let page: Page;
const wrong: string[] = [];

beforeAll(async () => {
  ({ dir, desk, browser, page } = await deskInBrowser());
  page.on('pageerror', ({ message }) => wrong.push(message));
  page.on('console', (said) => {
    if (said.type() === 'error') wrong.push(said.text());
  });
  await page.goto(desk.address);
});

afterAll(async () => {
  await browser.close();
  await desk.close();
  await rm(dir, { recursive: true, force: true });
});

const urlOf = (path: string): string => new URL(path, desk.address).href.split('?key')[0] ?? '';
const own = [
  'desk/index.html',
  'desk/add.html',
  'desk/walk.html',
  'desk/slip.html',
  'desk/agree.html',
  'desk/record.html?path=content/rooms/study.md',
];
const record = (): Promise<string> => readFile(join(dir, 'content/rooms/study.md'), 'utf8');

describe('a desk in a browser', () => {
  let begun = '';
  beforeAll(async () => void (begun = await record()));
  // Each begins with the record as it was, and with nothing picked: a pick that was made, chosen and taken back is still tried where its script had not seen it chosen.
  beforeEach(async () => {
    if ((await record()) !== begun) await writeFile(join(dir, 'content/rooms/study.md'), begun);
    await page.goto(urlOf('desk/index.html'));
    await page.evaluate(() => {
      sessionStorage.clear();
      localStorage.clear();
    });
  });

  it('has no violation that axe finds, on its own pages and above those of the book', async () => {
    const choice = 'choices/study/ceiling-board/ceiling.html';
    expect(await violationsOn(page, [...own, choice, 'rooms/study.html'], urlOf)).toEqual({ light: [], dark: [] });
    expect(wrong).toEqual([]);
  });

  it('fits a phone', async () => {
    await page.setViewportSize({ width: 390, height: 800 });
    for (const path of own) {
      await page.goto(urlOf(path));
      expect(await page.evaluate(() => document.documentElement.scrollWidth), path).toBeLessThanOrEqual(390);
    }
    await page.setViewportSize({ width: 1280, height: 900 });
  });

  it('gives headings and what is picked the room that they have in the book', async () => {
    for (const path of ['desk/index.html', 'desk/agree.html', 'choices/study/ceiling-board/ceiling.html']) {
      await page.goto(urlOf(path));
      const gaps = await page.evaluate(() => {
        const rest = (one: Element, sign: 'before' | 'after'): number[] => {
          const beside = sign === 'before' ? one.previousElementSibling : one.nextElementSibling;
          if (!beside) return [];
          const [of, other] = [one.getBoundingClientRect(), beside.getBoundingClientRect()];
          return [sign === 'before' ? of.top - other.bottom : other.top - of.bottom];
        };
        const sections = Array.from(document.querySelectorAll('.desk-page > section')).flatMap((one) =>
          rest(one, 'before'),
        );
        const others = Array.from(document.querySelectorAll('.try-others')).flatMap((one) => [
          ...rest(one, 'before'),
          ...rest(one, 'after'),
        ]);
        return [sections, others].map((all) => Math.round(Math.min(99, ...all)));
      });
      expect(gaps[0], path).toBeGreaterThanOrEqual(15);
      expect(gaps[1], path).toBeGreaterThanOrEqual(10);
    }
  });

  it('chooses by keyboard in the pictures of the page, tells it, and takes it back from there', async () => {
    const before = await record();
    await page.goto(urlOf('desk/index.html'));
    await page
      .getByRole('link', { name: /Ceiling/u })
      .first()
      .click();
    const fir = page.getByRole('radio', { name: /fir/iu });
    await fir.first().waitFor();
    // What the page shows is asked there, and not once more.
    await expect.poll(() => fir.count()).toBe(1);
    await fir.focus();
    await page.keyboard.press('Space');
    await page.getByRole('button', { name: 'Write the choice' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('status').getByText('Done.').waitFor();
    expect(await record()).toContain('chosen: fir-tg-1x6');
    expect(page.url()).toBe(urlOf('choices/study/ceiling-board/ceiling.html'));
    // What was picked is chosen: nothing of it is left to be tried.
    expect(await page.getByText('moved on since').count()).toBe(0);
    await page.getByRole('button', { name: 'Take it back' }).click();
    await page.getByText('Taken back').waitFor();
    expect(await record()).toBe(before);
  });

  it('says that nothing was picked, and picks by all of a picture', async () => {
    const before = await record();
    await page.goto(urlOf('choices/study/ceiling-board/ceiling.html'));
    await page.getByText('Write the choice').click();
    await page.getByRole('alert').getByText('Nothing else was picked. The choice is open, as it was').waitFor();
    expect(await record()).toBe(before);
    const firs = page.getByRole('radio', { name: /fir/iu });
    // What the pictures show is asked there alone, once the script is there.
    await expect.poll(() => firs.count()).toBe(1);
    const [fir] = await firs.all();
    const at = await page
      .locator('.try-head input')
      .evaluateAll((all, id) => all.findIndex((one) => one.id === id), (await fir?.getAttribute('id')) ?? '');
    await page
      .locator('.side-pictures td')
      .nth(at + 1)
      .click();
    expect(await fir?.isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Clear' }).click();
  });

  it('leaves open by its own button what no picture shows', async () => {
    const before = await record();
    await page.goto(urlOf('choices/study/ceiling-board/ceiling.html'));
    await writeFile(
      join(dir, 'content/rooms/study.md'),
      before.replace(/(considering: \[)(.*fir-tg-1x6.*\])/u, '$1$2\n    chosen: fir-tg-1x6'),
    );
    await page.getByText('Or, where none of those').waitFor();
    // Buttons and pictures are one group: what was tried is taken back.
    await page.locator('.try-head input:not(:checked)').first().check();
    await page.getByText('Trying 1 choice').waitFor();
    await page.getByRole('radio', { name: 'Still open' }).check();
    await page.getByText('Trying 1 choice').waitFor({ state: 'detached' });
    expect(await page.locator('[data-try] input:checked').count()).toBe(0);
    await page.getByRole('button', { name: 'Write the choice' }).click();
    await page.getByRole('status').getByText('Done.').waitFor();
    expect(await record()).not.toContain('chosen: fir-tg-1x6');
    await writeFile(join(dir, 'content/rooms/study.md'), before);
  });

  it('remembers who chose and on which day, for the next choice in the window', async () => {
    const before = await record();
    await page.goto(urlOf('choices/study/ceiling-board/ceiling.html'));
    const day = page.getByRole('textbox', { name: 'On', exact: true });
    await day.fill('2026-04-15');
    const who = page.getByLabel('Who chooses');
    const last = (await who.locator('option').last().getAttribute('value')) ?? '';
    await who.selectOption(last);
    await page.getByRole('button', { name: 'Write the choice' }).click();
    await page.locator('.desk-said').waitFor();
    // The script that fills them in runs after the words of the page are there.
    await expect.poll(() => day.inputValue()).toBe('2026-04-15');
    await expect.poll(() => who.inputValue()).toBe(last);
    await writeFile(join(dir, 'content/rooms/study.md'), before);
  });

  it('hears of nothing in a window that is not seen, and of what it missed when it is', async () => {
    const before = await record();
    await page.goto(urlOf('rooms/study.html'));
    const see = (hidden: boolean): Promise<void> =>
      page.evaluate((isHidden) => {
        Object.defineProperty(document, 'hidden', { configurable: true, value: isHidden });
        document.dispatchEvent(new Event('visibilitychange'));
      }, hidden);
    await see(true);
    await writeFile(join(dir, 'content/rooms/study.md'), before.replace('name: Study', 'name: Den'));
    await page.waitForTimeout(500);
    expect(await page.getByRole('heading', { name: 'Den' }).count()).toBe(0);
    await see(false);
    await page.getByRole('heading', { name: 'Den' }).waitFor();
    await writeFile(join(dir, 'content/rooms/study.md'), before);
    await page.getByRole('heading', { name: 'Study' }).first().waitFor();
  });

  it('tells every window at once, of more than a browser keeps ways open for, also when the one that heard is closed', async () => {
    const before = await record();
    const context = page.context();
    const first = await context.newPage();
    await first.goto(urlOf('rooms/study.html'));
    const others = await Promise.all(Array.from({ length: 7 }, () => context.newPage()));
    for (const one of others) await one.goto(urlOf('rooms/study.html'));
    const all = (name: string): Promise<unknown> =>
      Promise.all(others.map((one) => one.getByRole('heading', { name }).first().waitFor()));
    await writeFile(join(dir, 'content/rooms/study.md'), before.replace('name: Study', 'name: Snug'));
    await all('Snug');
    await first.close();
    await writeFile(join(dir, 'content/rooms/study.md'), before);
    await all('Study');
    for (const one of others) await one.close();
  });

  it('tries choices, and writes them by the slip that comes of it', async () => {
    const before = await record();
    await page.goto(urlOf('choices/study/ceiling-board/ceiling.html'));
    await page
      .getByRole('group', { name: /Ceiling/u })
      .getByRole('radio', { name: /fir/iu })
      .first()
      .check();
    await page.getByRole('button', { name: /Send/u }).click();
    // Chosen on the desk's day, whatever the browser's is.
    expect(await page.locator('.try-slip').inputValue()).toContain('20 April 2026');
    await page.getByRole('button', { name: 'Take it in here' }).click();
    await page.getByText('It can be taken in. Nothing is written yet.').waitFor();
    expect(await record()).toBe(before);
    await page.getByRole('button', { name: 'Write these choices' }).click();
    await page.getByText('Done.').waitFor();
    expect(await record()).toMatch(/chosen: fir-tg-1x6\n(?:.*\n)*?.*slip: /u);
    await writeFile(join(dir, 'content/rooms/study.md'), before);
    // The page loads itself again: nothing else may be loaded before that.
    await page.getByText('Done.').waitFor({ state: 'hidden' });
    expect(wrong).toEqual([]);
  });

  it('draws a room as it is walked', async () => {
    await page.goto(urlOf('desk/walk.html'));
    await page.getByLabel('Walls').pressSequentially("east 14'\nsouth 10'\nwest 13'\n");
    await page.getByText('1\'-0" short going west', { exact: false }).waitFor();
    expect(await page.locator('#walked svg').count()).toBe(1);
    // What is refused stands there as it was, with its plan.
    await page.getByLabel('Name').fill('Loft as study');
    await page.getByLabel('Height of its ceiling').fill("8'");
    await page.getByRole('button', { name: 'Add the room' }).click();
    await page.getByRole('alert').getByText('Not done.').waitFor();
    await page.locator('#walked svg').waitFor();
    expect(await page.locator('#walked').innerText()).toContain("At wall 3 (west 13')");
  });

  it('shows a record that changed by itself, and keeps what is being written', async () => {
    const before = await record();
    await page.goto(urlOf('rooms/study.html'));
    await writeFile(join(dir, 'content/rooms/study.md'), before.replace('name: Study', 'name: Library'));
    await page.getByRole('heading', { name: 'Library' }).waitFor();
    await page.goto(urlOf('desk/record.html?path=content/rooms/study.md'));
    await page.getByLabel('Text of the record').fill('half written');
    await writeFile(join(dir, 'content/rooms/study.md'), before);
    await page.getByText('The records changed meanwhile').waitFor();
    expect(await page.getByLabel('Text of the record').inputValue()).toBe('half written');
    expect(wrong).toEqual([]);
  });
});
