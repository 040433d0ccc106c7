import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { makeHandout } from '../../src/handout/index.js';
import { makeBookPdf, makeHandoutPdf } from '../../src/print/index.js';
import { bookOf, openHouse } from '../../src/disk/load/index.js';
import { demoBook } from '../demo-house.js';
import { chapterPages, fillOf, type Fill } from './fill.js';
import { putDown } from './tool.js';
import { expectTagged } from './ua/expect-tagged.js';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

/** Inches of the margins above and beneath what is read. */
const bookMargins = { top: 0.45, foot: 0.95 };
const handoutMargins = { top: 0.45, foot: 0.75 };

const least = 0.25;
const book = await demoBook('2026-04-20');

/** A PDF with how full its sheets are, looked at once. */
interface Looked {
  readonly pdf: Uint8Array;
  readonly sheets: readonly Fill[];
}

function look(pdf: Uint8Array, margins: typeof bookMargins): Looked {
  return { pdf, sheets: fillOf(putDown(pdf).path, margins) };
}

/** Sheets with little on them that begin no chapter. */
async function thin({ pdf, sheets }: Looked): Promise<readonly Fill[]> {
  const chapters = chapterPages(await PDFDocument.load(pdf, { updateMetadata: false }));
  expect(chapters.size).toBeGreaterThan(3);
  return sheets.filter(({ page, whole }) => whole < least && !chapters.has(page));
}

describe('the demo’s book', () => {
  let made: Looked;
  beforeAll(async () => {
    made = look((await makeBookPdf(book)).pdf, bookMargins);
  });

  test('has no sheet that is less than a quarter full, but where a chapter begins', async () => {
    expect(await thin(made)).toEqual([]);
  });

  test('keeps what can be told of PDF/UA-1 without a person', () => expectTagged(made.pdf));
});

describe.each(book.trades.map((trade) => [trade.slug, trade] as const))('the handout of %s', (slug, trade) => {
  let made: Looked;
  beforeAll(async () => {
    made = look((await makeHandoutPdf(makeHandout(book, trade))).pdf, handoutMargins);
  });

  test('has no sheet that is less than a quarter full, but where a chapter begins', async () => {
    expect(await thin(made)).toEqual([]);
  });

  test('has no column half empty beside a full one', () => expectBalanced(made));

  if (slug === 'finish-carpentry') {
    test('keeps what can be told of PDF/UA-1 without a person', () => expectTagged(made.pdf));
    test('is short enough to be carried', () => {
      expect(made.sheets.filter(({ isUpright }) => isUpright).length).toBeLessThan(15);
    });
  }
});

function expectBalanced({ sheets }: Looked): void {
  const wide = sheets.findIndex(({ isUpright }) => !isUpright);
  const inColumns = sheets.slice(0, wide < 0 ? -1 : wide);
  expect(inColumns.length).toBeGreaterThanOrEqual(2);
  expect(inColumns.filter(({ left, right, whole }) => whole === 0 || Math.min(left, right) < whole / 2)).toEqual([]);
}

test.each(['insulation', 'lime'])(
  'columns end alike in the cabin’s handout of %s, whose sheets are short, and none is left empty',
  async (slug) => {
    const { book: cabin } = await bookOf(openHouse(join(import.meta.dirname, '../houses/cabin')), '2026-04-20');
    const trade = cabin?.trades.find((one) => one.slug === slug);
    if (!cabin || !trade) throw new Error(`the cabin has no trade ${slug}`);
    expectBalanced(look((await makeHandoutPdf(makeHandout(cabin, trade))).pdf, handoutMargins));
  },
);

test('a sheet is as full as its tallest empty strip leaves it, half by half', async () => {
  const document = await PDFDocument.create();
  const line = (height: number, from = 0, to = 600): void => {
    document
      .getPages()
      .at(-1)
      ?.drawRectangle({ x: from, y: 792 - height * 792, width: to - from, height: 10 });
  };
  document.addPage([612, 792]);
  line(0.1);
  line(0.95);
  document.addPage([612, 792]);
  for (let height = 0.05; height < 0.96; height += 0.05) line(height, 0, 200);
  line(0.5, 400, 600);
  document.addPage([792, 612]);
  const [little, half, none] = fillOf(putDown(await document.save()).path, { top: 0, foot: 0 });
  expect(little?.whole).toBeCloseTo(0.15, 1);
  expect(half?.left).toBeGreaterThan(0.9);
  expect(half?.right).toBeCloseTo(0.5, 1);
  expect(none).toEqual({ page: 3, whole: 0, left: 0, right: 0, isUpright: false });
});
