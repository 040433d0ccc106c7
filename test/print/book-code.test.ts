import { execFileSync } from 'node:child_process';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { loadBook } from '../../src/disk/load/index.js';
import { makeBookPdf, makeChangeOrderPdf } from '../../src/print/index.js';
import { changeOrderDigest } from '../../src/signoff/index.js';
import { readCodes } from '../../src/signoff/codes/index.js';
import { changedBook } from './changed-book.js';
import { putDown, type Printed } from './tool.js';
import { expectTagged } from './ua/expect-tagged.js';

vi.setConfig({ testTimeout: 300_000, hookTimeout: 300_000 });

const site = 'https://house.example';
const stamp = { number: 2, purpose: 'construction', date: '2026-04-18', digest: '1a2b3c4d'.repeat(8) } as const;
const address = `${site}/book/agreed.html?issue=2&digest=1a2b3`;
const sited = (book: Book): Book => ({ ...book, house: { ...book.house, site } });

const pagesIn = (printed: Printed): number => Number(/^Pages: +(\d+)$/mu.exec(printed.info())?.[1]);

/** The codes on each of some pages, as a camera reads them off the drawn page. */
async function codesOn({ path }: Printed, pages: readonly number[]): Promise<readonly (readonly string[])[]> {
  const found: (readonly string[])[] = [];
  for (const page of pages) {
    const only = ['-f', String(page), '-l', String(page), '-singlefile'];
    const png = execFileSync('pdftoppm', ['-r', '150', '-gray', '-png', ...only, path], { maxBuffer: 1 << 26 });
    const codes = await readCodes(png);
    if (!codes.ok) throw new Error(codes.why);
    found.push(codes.value.flatMap(({ text, count }) => Array.from({ length: count }, () => text)));
  }
  return found;
}

const all = (count: number): readonly number[] => Array.from({ length: count }, (_, index) => index + 1);

/** Words that stand where the code of a page is, with its quiet: by the margins of `page.typ` and `levels.typ`, the widest of a sheet that lies. */
function inCode(printed: Printed): readonly string[] {
  return printed
    .boxes()
    .filter(({ right, bottom, page }) => {
      const beside = page.width > page.height ? 1.23 : 1.2;
      return right > page.width - beside * 72 && bottom > page.height - 0.9 * 72;
    })
    .map(({ text }) => text);
}

describe('with the address of the house’s site', () => {
  let pdf: Uint8Array;
  let printed: Printed;
  beforeAll(async () => {
    ({ pdf } = await makeBookPdf(sited(changedBook()), stamp));
    printed = putDown(pdf);
  });

  test('each sheet of the book has one code, of address, issue and digest, and says the same in letters', async () => {
    const pages = all(pagesIn(printed));
    expect(pages.length).toBeGreaterThan(10);
    expect(await codesOn(printed, pages)).toEqual(pages.map(() => [address]));
    for (const page of pages) expect(printed.text(page, page).replaceAll(/\s/gu, '')).toContain(address);
  });

  test('it is drawn in lines, not in dots', () => {
    const list = (path: string): string => execFileSync('pdfimages', ['-list', path], { encoding: 'utf8' });
    expect(list(printed.path).trim().split('\n')).toHaveLength(2);
  });

  test('the cover leads there by a link that is in the tags; what is on feet is no part of them', async () => {
    expect(printed.addresses()).toContain(address);
    expect(printed.tags().replaceAll(/\s+/gu, '').split(address)).toHaveLength(2);
    expect(printed.check()).toContain('No syntax or stream encoding errors');
    await expectTagged(pdf);
  });

  test('it takes no sheet more than without, and nothing stands in it', async () => {
    const plain = putDown((await makeBookPdf(changedBook(), stamp)).pdf);
    expect(pagesIn(printed)).toBeLessThanOrEqual(pagesIn(plain));
    expect(inCode(printed)).toEqual([]);
    // Where a code would be, the foot without one has words.
    expect(inCode(plain)).not.toEqual([]);
    expect(plain.text()).not.toMatch(/https:|camera|Is this sheet current/u);
    expect(await codesOn(plain, [1, 2, pagesIn(plain)])).toEqual([[], [], []]);
  });

  test('a book that was not issued says so by its code', async () => {
    const other = putDown((await makeBookPdf(sited(changedBook()))).pdf);
    expect(await codesOn(other, [1, 5])).toEqual([
      [`${site}/book/agreed.html?issue=none`],
      [`${site}/book/agreed.html?issue=none`],
    ]);
  });

  test('of a metric house, on A4', async () => {
    const { book } = await loadBook('test/houses/cabin', '2026-04-23');
    if (!book) throw new Error('the cabin has errors');
    const cabin = putDown((await makeBookPdf(sited(book), stamp)).pdf);
    expect(inCode(cabin)).toEqual([]);
    const pages = [1, 3, 8, pagesIn(cabin)];
    expect(await codesOn(cabin, pages)).toEqual(pages.map(() => [address]));
  });

  test('an address as long as an address may be takes from the text, and stays readable', async () => {
    const book = changedBook();
    const long = `${site}/${'a'.repeat(180)}`;
    const other = putDown((await makeBookPdf({ ...book, house: { ...book.house, site: long } }, stamp)).pdf);
    const pages = [1, 2, 6];
    expect(await codesOn(other, pages)).toEqual(pages.map(() => [`${long}/book/agreed.html?issue=2&digest=1a2b3`]));
  });
});

describe('a change order', () => {
  const book = sited(changedBook());
  const [order] = book.changeOrders;
  if (!order) throw new Error('there is no change order');
  const digest = changeOrderDigest(book.house.number, order);
  const itsAddress = `${site}/book/agreed.html?change=1&digest=${digest.slice(0, 5)}`;

  test('has a code of its number and digest on each sheet, and a link in the tags', async () => {
    const { pdf } = await makeChangeOrderPdf(book, order);
    const printed = putDown(pdf);
    expect(await codesOn(printed, all(pagesIn(printed)))).toEqual([[itsAddress], [itsAddress]]);
    expect(printed.addresses()).toContain(itsAddress);
    expect(printed.tags().replaceAll(/\s+/gu, '').split(itsAddress)).toHaveLength(2);
    expect(inCode(printed)).toEqual([]);
    await expectTagged(pdf);
  });

  test('a title of any length leaves the foot its two rows', async () => {
    const title = 'Timber, insulation, doors, hardware, stone of the chimney breast and the floors of four rooms';
    const printed = putDown((await makeChangeOrderPdf(book, { ...order, title })).pdf);
    const foot = printed.boxes().filter(({ bottom, page }) => bottom > page.height - 72);
    const lines = new Set(foot.map(({ bottom }) => Math.round(bottom)));
    // Two rows of a name and a value, and the address.
    expect(lines.size).toBe(5);
    expect(inCode(printed)).toEqual([]);
  });

  test('has none without a site', async () => {
    const printed = putDown((await makeChangeOrderPdf(changedBook(), order)).pdf);
    expect(printed.text()).not.toMatch(/https:|camera|Is this sheet current/u);
    expect(await codesOn(printed, [1, 2])).toEqual([[], []]);
  });
});
