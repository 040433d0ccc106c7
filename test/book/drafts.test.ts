import { beforeAll, describe, expect, test } from 'vitest';
import { lookUp, type Book } from '../../src/core/book/index.js';
import { tableCsv } from '../../src/write/index.js';
import { makeHandout } from '../../src/handout/index.js';
import { issueBlockers } from '../../src/signoff/index.js';
import { makeBookPdf, makeHandoutPdf } from '../../src/print/index.js';
import { handoutFolders } from '../../src/site/index.js';
import { renderPage } from '../../src/site/render-page.js';
import { allSheets } from '../../src/site/sheets.js';
import { makeView } from '../../src/site/view.js';
import { orders } from '../../src/table/index.js';
import { smallBook, type Edits } from './small-house.js';

/** What a person has of an option on the day it is first spoken of. */
const cork = `---
name: Cork tile
price: { material: $6.00 / sq ft, labor: $4.00 / sq ft }
---
`;

const isDraft = ({ code }: { readonly code: string }): boolean => code === 'option-draft';

const considered: Edits = {
  'content/options/floor/cork.md': cork,
  'content/rooms/study.md': [['    considering: [oak, pine]\n    chosen: pine\n', '    considering: [pine, cork]\n']],
};

const pagesOf = (book: Book): Map<string, string> => {
  const view = makeView(book);
  return new Map(
    allSheets(view).map((sheet) => [sheet.path, renderPage(sheet, view, (_, text) => `<pre>${text}</pre>`)]),
  );
};
const plain = (html: string | undefined): string => (html ?? '').replace(/<[^>]+>/gu, ' ').replace(/\s+/gu, ' ');

describe('an option of a name and a price', () => {
  let book: Book;
  let pages: Map<string, string>;
  beforeAll(() => {
    book = smallBook(considered, '2026-02-02', isDraft);
    pages = pagesOf(book);
  });

  test('is priced beside the others', () => {
    const floor = book.selections.find(({ category }) => category === 'floor');
    const cost = floor?.alternatives.find(({ option }) => option === 'cork')?.cost;
    // 10' × 12' = 120 sq ft at $6.00 and $4.00, no waste and no pack, 8.25 % tax on nothing but what the contract says.
    expect([cost?.material, cost?.labor]).toEqual([72_000, 48_000]);
  });

  test('does not pass for one from stock: the day of the choice says that its lead time is missing', () => {
    const bounds = book.selections.find(({ category }) => category === 'floor')?.decision.bounds ?? [];
    const lead = bounds.find(({ because }) => because === 'lead-time');
    expect(lead?.reason).toMatch(
      /^(Oak|Pine) strip takes 20 working days to come, the longest of 2 considered; the lead time of Cork tile is not told yet:/u,
    );
  });

  test('says on its page what is not told, and its sample is hatched with its name', () => {
    const page = plain(pages.get('options/floor/cork.html'));
    expect(page).toContain('maker not told yet');
    expect(page).toContain('Lead time not told yet');
    expect(page.match(/Not told yet\./gu)).toHaveLength(4);
  });

  test('prints nowhere what is no word, on pages and in print', async () => {
    for (const [path, html] of pages) expect(/undefined|NaN/u.test(plain(html)), path).toBe(false);
    expect((await makeBookPdf(book)).pdf.length).toBeGreaterThan(1000);
  });

  test('stands in a handout without a maker, with words in place of its specification', async () => {
    const trade = book.trades.find(({ slug }) => slug === 'carpentry');
    if (!trade) throw new Error('no trade');
    const handout = makeHandout(book, trade, {});
    const product = handout.products.find(({ name }) => name === 'Cork tile');
    expect(product).toMatchObject({ lead: 'not told yet' });
    expect(product).not.toHaveProperty('maker');
    const specified = handout.sections.flatMap(({ products }) => products);
    expect(specified.find(({ id }) => id === product?.id)).toMatchObject({
      parts: [],
      untold: ['general', 'products', 'execution'],
    });
    for (const [path, text] of await handoutFolders([handout]))
      if (path.endsWith('.html')) expect(/undefined|NaN/u.test(plain(String(text))), path).toBe(false);
    expect((await makeHandoutPdf(handout)).pdf.length).toBeGreaterThan(1000);
  });
});

describe('once it is chosen', () => {
  const chosen = (record: string): Edits => ({
    'content/options/floor/cork.md': record,
    'content/rooms/study.md': [
      ['    considering: [oak, pine]\n    chosen: pine\n', '    considering: [pine, cork]\n    chosen: cork\n'],
    ],
  });
  const withLead = cork.replace('---\nname', '---\nlead: 2 weeks\nname');

  test('what days are figured from is an error', () => {
    expect(() => smallBook(chosen(cork), '2026-02-02', isDraft)).toThrow(/option-untold/u);
  });

  test('the rest does not stop the Book, and stands in the way of issuing', () => {
    const book = smallBook(chosen(withLead), '2026-02-02', isDraft);
    const untold = issueBlockers(book, { hasSlots: true }).filter(({ kind }) => kind === 'untold');
    expect(untold.map(({ text }) => text)).toEqual([
      'content/options/floor/cork.md:1: Cork tile does not tell its maker and model (for the order list), summary (for its card), species (for its product data), swatch (for the drawn sample), specification (for the specification and the handout), care (for the hand-over)',
    ]);
    expect(issueBlockers(smallBook(), { hasSlots: true }).filter(({ kind }) => kind === 'untold')).toEqual([]);
  });

  test('a standard that does not tell its lead time says so in the order list', () => {
    const book = smallBook(
      {
        'content/options/floor/cork.md': cork,
        'content/rooms/study.md': [
          ['    standard: oak\n    considering: [oak, pine]\n    chosen: pine\n', '    standard: cork\n'],
        ],
      },
      '2026-02-02',
      isDraft,
    );
    const look = lookUp(book);
    expect(tableCsv(orders.lay(look))).toMatch(/^[^\n]*Cork tile,.*,maker not told yet,.*,not told yet$/mu);
  });
});

describe('without a price of its installation', () => {
  const unpriced = cork.replace(', labor: $4.00 / sq ft', '');
  const unpricedHouse: Edits = { ...considered, 'content/options/floor/cork.md': unpriced };

  test('its price says that it is without labor, wherever it is chosen from', () => {
    const book = smallBook(unpricedHouse, '2026-02-02', isDraft);
    const pages = pagesOf(book);
    const choice = plain(pages.get('choices/study/floor/floor.html'));
    expect(choice).toContain('Considered, labor not priced yet');
    expect(choice).toMatch(/[−+]\$[\d,.]+, without labor/u);
    expect(choice).toContain('Labor $600.00 $600.00 not priced yet');
    expect(plain(pages.get('rooms/study.html'))).toMatch(/Cork tile [−+]\$[\d,.]+, without labor/u);
    expect(plain(pages.get('options/floor/cork.html'))).toContain('not priced yet');
    for (const [path, html] of pages) expect(/undefined|NaN/u.test(plain(html)), path).toBe(false);
  });

  test('it is not chosen; one that costs nothing to install says so', () => {
    const chosen = (record: string): Edits => ({
      'content/options/floor/cork.md': record.replace('---\nname', '---\nlead: 2 weeks\nname'),
      'content/rooms/study.md': [
        ['    considering: [oak, pine]\n    chosen: pine\n', '    considering: [pine, cork]\n    chosen: cork\n'],
      ],
    });
    expect(() => smallBook(chosen(unpriced), '2026-02-02', isDraft)).toThrow(/does not tell its labor/u);
    const standard: Edits = {
      'content/options/floor/cork.md': unpriced,
      'content/rooms/study.md': [
        ['    standard: oak\n    considering: [oak, pine]\n    chosen: pine\n', '    standard: cork\n'],
      ],
    };
    expect(() => smallBook(standard, '2026-02-02', isDraft)).toThrow(/is the standard, and does not tell its labor/u);
    const free = unpriced.replace('$6.00 / sq ft', '$6.00 / sq ft, labor: $0 / sq ft');
    expect(smallBook(chosen(free), '2026-02-02', isDraft).selections.length).toBeGreaterThan(0);
  });
});
