import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { OpenDesk } from '../../src/cli/desk.js';
import { quietDesk, smallHouse, study } from '../desk/small-house.js';
import { deskInBrowser } from './desk-in-browser.js';

let dir: string;
let desk: OpenDesk;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  ({ dir, desk, browser, page } = await deskInBrowser());
  await page.goto(desk.address);
});

afterAll(async () => {
  await browser.close();
  await desk.close();
  await rm(dir, { recursive: true, force: true });
});

const urlOf = (path: string): string => new URL(path, desk.address).href.split('?key')[0] ?? '';
/** What says that the desk is not there; within two seconds. */
const says = (words: string, of: Page = page): Promise<void> =>
  of.locator('.desk-gone').getByText(words).waitFor({ timeout: 2000 });
const openInAnother = async (): Promise<Page> => {
  const other = await page.context().newPage();
  await other.goto(desk.address);
  return other;
};
const text = (): ReturnType<Page['getByLabel']> => page.getByLabel('Text of the record');

describe('a desk that ends while its pages are open', () => {
  it('is told in each window, with how it is started again, and nothing is sent into nowhere', async () => {
    const other = await openInAnother();
    await page.goto(urlOf(`desk/record.html?path=${study}`));
    const before = await text().inputValue();
    await text().fill(before.replace('name: Study', 'name: Den'));
    await desk.close();
    await says('The desk has ended');
    await says('The desk has ended', other);
    await says(`bookmatch desk --house ${dir}`);
    await says('Nothing that is typed here is sent or lost');
    expect(await page.locator('.desk-gone').getAttribute('role')).toBe('alert');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('link', { name: 'Walk a room' }).click();
    await page.waitForTimeout(300);
    expect(page.url()).toBe(urlOf(`desk/record.html?path=${study}`));
    expect(await text().inputValue()).toContain('name: Den');
    await other.close();
  });

  it('goes on in its open pages when it is started again and opened: what was typed is sent', async () => {
    const [before] = desk.address.split('?');
    desk = await quietDesk(dir, 'last');
    expect(desk.address.split('?')[0]).toBe(before);
    await says('The desk was started again');
    const other = await openInAnother();
    await says('The desk is there again');
    expect(await text().inputValue()).toContain('name: Den');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('status').getByText('Done.').waitFor();
    expect(await readFile(join(dir, study), 'utf8')).toContain('name: Den');
    await other.close();
  });

  it('leads to where it is when it was started at another address', async () => {
    await page.goto(urlOf('desk/walk.html'));
    await page.getByLabel('Walls').fill("east 14'");
    await desk.close();
    await says('The desk has ended');
    desk = await quietDesk(dir);
    const other = await openInAnother();
    await says('The desk is at another address now');
    expect(await page.getByLabel('Walls').inputValue()).toBe("east 14'");
    page.once('dialog', (dialog) => void dialog.accept());
    await page.locator('.desk-gone').getByRole('link').click();
    await page.getByRole('heading', { name: 'Walk a room' }).waitFor();
    expect(page.url()).toBe(urlOf('desk/walk.html'));
    await other.close();
  });

  it('takes another port where its last one is not free', async () => {
    const second = await quietDesk(dir, 'last');
    expect(new URL(second.address).port).not.toBe(new URL(desk.address).port);
    await second.close();
  });

  it('sends nothing to the desk of another house that has taken its address', async () => {
    const port = Number(new URL(desk.address).port);
    const neighbour = await smallHouse();
    const before = await readFile(join(neighbour, study), 'utf8');
    await page.goto(urlOf(`desk/record.html?path=${study}`));
    await text().fill((await text().inputValue()).replace('name: Den', 'name: Meant for the first'));
    await desk.close();
    const theirs = await quietDesk(neighbour, port);
    const other = await page.context().newPage();
    await other.goto(theirs.address);
    await says('The desk of another house is at this address now');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.waitForTimeout(300);
    expect(await readFile(join(neighbour, study), 'utf8')).toBe(before);
    expect(await text().inputValue()).toContain('Meant for the first');
    await other.close();
    await theirs.close();
    await rm(neighbour, { recursive: true, force: true });
    desk = await quietDesk(dir, port);
    await (await openInAnother()).close();
  });

  it('fills what was typed and not answered into the form of the same record alone', async () => {
    const values = { ask: ['save'], path: [study], back: [''], text: ['Of the study'] };
    const house = await page.locator('[data-house]').getAttribute('data-house');
    const board = 'content/options/floor/oak.md';
    await page.evaluate(
      ([kept = '']) => sessionStorage.setItem('desk-refused', kept),
      [JSON.stringify({ house, values })],
    );
    page.once('dialog', (dialog) => void dialog.accept());
    await page.goto(urlOf(`desk/record.html?path=${board}`));
    expect(await text().inputValue()).not.toBe('Of the study');
    const back = await page.locator('form:has(textarea) input[name="back"]').inputValue();
    const shown = { ...values, back: [back], path: [board], digest: ['of before'], text: ['Of the oak'] };
    await page.evaluate(
      ([kept = '']) => sessionStorage.setItem('desk-refused', kept),
      [JSON.stringify({ house, values: shown })],
    );
    await page.reload();
    expect(await text().inputValue()).toBe('Of the oak');
    // Held against what it was written for.
    expect(await page.locator('form:has(textarea) input[name="digest"]').inputValue()).toBe('of before');
  });
});
