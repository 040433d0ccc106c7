/** Whatever form a table is read in, each of its rows says the same in each of its columns. */
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { lookUp } from '../../src/core/book/index.js';
import { makeHandout } from '../../src/handout/index.js';
import { withoutNames } from '../../src/handout/who.js';
import { makeChangeOrderPdf, makeHandoutPdf, makeSheetPdf } from '../../src/print/index.js';
import { rowsOf, tablesOf, type Block } from '../../src/sheet/index.js';
import { handoutFolders } from '../../src/site/handout/index.js';
import {
  agreedSections,
  changeOrderDetails,
  changeOrderSheet,
  dataTables,
  houseSheets,
} from '../../src/table/index.js';
import { anchorOf, BlocksHtml, blocksText, SheetHtml, tableText } from '../../src/write/index.js';
import { demoBook } from '../demo-house.js';
import { agreedBook, comparedBlocks, roomBlocks } from './more-tables.js';
import { readHtmlTables } from './read-html.js';
import { fewRows, inParts, tagged, wrongInData, wrongInPrint, wrongInText, wrongOnPage } from './said.js';
import { cutForPrint, tradeDifferences, tradeTablesOf } from './trade.js';

const book = await demoBook('2026-04-20');
const look = lookUp(book);

describe.each(houseSheets(look).map((sheet) => [sheet.id, sheet] as const))('%s', (_, sheet) => {
  const tables = tablesOf(sheet.blocks);

  test('has tables with unique ids, each row with an id of its own', () => {
    expect(tables.length).toBeGreaterThan(0);
    for (const table of tables) {
      const ids = rowsOf(table).map(({ id }) => anchorOf(table.anchor, id));
      expect(new Set(ids).size, table.id).toBe(ids.length);
      expect(table.columns.map(({ key }) => key)).toContain(table.named);
    }
    expect(new Set(tables.map(({ id }) => id)).size).toBe(tables.length);
  });

  test('says the same on the page', () => {
    const page = readHtmlTables(render(<SheetHtml sheet={sheet} links={() => undefined} />));
    expect(tables.flatMap((table) => wrongOnPage(table, page.get(table.id)))).toEqual([]);
  });

  test('says the same in data, to the last digit', () => {
    expect(tables.flatMap(wrongInData)).toEqual([]);
  });

  test('says the same in a terminal', () => {
    expect(tables.flatMap(wrongInText)).toEqual([]);
  });

  test('says the same in print, by its tags, with a caption and a head for each row', async () => {
    for (const part of inParts(sheet)) {
      const few = tablesOf(part.blocks);
      if (few.length === 0) continue;
      const print = tagged((await makeSheetPdf(book, part)).pdf);
      expect(few.flatMap((table) => wrongInPrint(table, print))).toEqual([]);
    }
  }, 60_000);
});

/** Tables that stand on designed pages, in files or in a terminal alone. */
const agreed = lookUp(agreedBook);
const others: readonly (readonly [string, readonly Block[]])[] = [
  ['what was agreed', agreedSections(agreed)],
  ...agreedBook.changeOrders.map(
    (order) => [`change order ${order.number}`, changeOrderSheet(order, agreed).blocks] as const,
  ),
  ['a comparison', comparedBlocks],
  ['a room', roomBlocks(look)],
  ['files of the demo', [...dataTables(look).values()]],
  ['files of a house with issues and change orders', [...dataTables(agreed).values()]],
];

describe.each(others)('%s', (_, blocks) => {
  const tables = tablesOf(blocks);

  test('says the same on a page, in data and in a terminal', () => {
    expect(tables.length).toBeGreaterThan(0);
    const page = readHtmlTables(render(<BlocksHtml blocks={blocks} links={() => undefined} />));
    expect(tables.flatMap((table) => wrongOnPage(table, page.get(table.id)))).toEqual([]);
    expect(tables.flatMap(wrongInData)).toEqual([]);
    const text = blocksText(blocks);
    expect(tables.flatMap(wrongInText)).toEqual([]);
    for (const table of tables) expect(text).toContain(tableText(table));
  });
});

test.each(agreedBook.changeOrders.map((order) => [order.number, order] as const))(
  'change order %i says the same in print',
  async (_, order) => {
    const print = tagged((await makeChangeOrderPdf(agreedBook, order)).pdf);
    const [first, details] = [changeOrderSheet(order, agreed), changeOrderDetails(order, agreed)];
    const tables = tablesOf([...first.blocks, ...details.blocks]);
    const ids = tables.map(({ id }) => String(id));
    expect(ids).toEqual(expect.arrayContaining(['contract-sum', `change-${order.number}-lines`]));
    expect(tables.flatMap((table) => wrongInPrint(table, print))).toEqual([]);
  },
  60_000,
);

const handouts = book.trades.map((trade) => makeHandout(book, trade));
/** The house as trades read it: by role. */
const roles = lookUp(withoutNames(book));
// Rooms and their drawings hold no tables of sheets, and take most of the time.
const pages = await handoutFolders(handouts.map((handout) => ({ ...handout, rooms: [] })));

/** Printed with every row; of the others a few rows stand for all. */
const printedWhole = 'insulation';

describe.each(handouts.map((handout) => [handout.cover.trade.slug, handout] as const))(
  'handout of %s',
  (slug, handout) => {
    const tables = tradeTablesOf(handout);

    test("holds what the house's tables hold, in the trade's cells", () => {
      expect(tables.length).toBeGreaterThan(1);
      expect(tradeDifferences(handout, roles)).toEqual([]);
    });

    test('says the same on its pages', () => {
      const htmls = ['index', 'products', 'schedules'].map((name) => String(pages.get(`${slug}/${name}.html`) ?? ''));
      const read = new Map(htmls.flatMap((html) => [...readHtmlTables(html)]));
      expect(tables.flatMap((table) => wrongOnPage(table, read.get(table.id)))).toEqual([]);
      expect([...read.keys()].toSorted()).toEqual(tables.map(({ id }) => String(id)).toSorted());
    });

    test('says the same in print, by its tags', async () => {
      const cut = cutForPrint(handout, slug === printedWhole ? (table) => table : (table) => fewRows(table, 1));
      const print = tagged((await makeHandoutPdf(cut)).pdf);
      expect(tradeTablesOf(cut).flatMap((table) => wrongInPrint(table, print))).toEqual([]);
    }, 60_000);
  },
);
