import { PDFDocument, PDFName } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { makeHandout, type Handout } from '../../src/handout/index.js';
import { makeHandoutPdf } from '../../src/print/index.js';
import { rowsOf } from '../../src/sheet/index.js';
import { smallBook } from '../book/small-house.js';
import { putDown, type Printed } from './tool.js';

const stamp = { number: 3, purpose: 'construction', date: '2026-04-18', digest: '0123456789abcdef'.repeat(4) } as const;

function handoutOf(issued: boolean): Handout {
  const book = smallBook({
    'content/rooms/study.md': [
      ['    chosen: pine\n', '    chosen: pine\n    note: "Start *here*, not #there[x] or $x$."\n'],
    ],
    'content/trades/carpentry.md': [['name: Carpentry\n', 'name: Carpentry\nschedules: [doors, openings]\n']],
  });
  const trade = book.trades[0];
  if (!trade) throw new Error('the small house has no trade');
  return makeHandout(book, trade, issued ? { stamp } : {});
}

describe('a printed handout', () => {
  let printed: Printed;
  let pdf: Uint8Array;
  beforeAll(async () => {
    ({ pdf } = await makeHandoutPdf(handoutOf(true)));
    printed = putDown(pdf);
  }, 60_000);

  it('is sound, tagged, and says what it is on the day of its issue', () => {
    expect(printed.check()).toContain('No syntax or stream encoding errors found');
    const info = printed.info();
    expect(info).toMatch(/^Title: +Small House: handout, Carpentry$/m);
    expect(info).toMatch(/^Subject: +Job 1, Anywhere\. Issue 3\. Issued for construction on 18 April 2026$/m);
    expect(info).toMatch(/^Tagged: +yes$/m);
    expect(info).toMatch(/^CreationDate: +Sat Apr 18 00:00:00 2026/m);
  });

  it('has its stamp on the foot of every page', async () => {
    const pages = (await PDFDocument.load(pdf, { updateMetadata: false })).getPageCount();
    expect(pages).toBeGreaterThanOrEqual(3);
    for (let page = 1; page <= pages; page += 1) {
      const text = printed.text(page, page).replaceAll(/\s+/gu, ' ');
      for (const word of ['Issue 3', '18 April 2026', '0123', `${page} of ${pages}`]) expect(text).toContain(word);
    }
  });

  it('has contents, bookmarks, all its parts, and prose as it was written', async () => {
    const text = printed.text();
    for (const part of [
      'Scope',
      'Order of work',
      'With other trades',
      'Questions open',
      'Rooms in order of work',
      'Products',
      'Specification',
      'Part 1',
      'Order list',
      'Schedules',
      'As built',
    ])
      expect(text).toContain(part);
    expect(text.replaceAll(/\s+/gu, ' ')).toContain('#there[x] or $x$');
    expect(text).toMatch(/101\s+Study/);
    expect(printed.tags()).toContain('TOC');
    const document = await PDFDocument.load(pdf, { updateMetadata: false });
    expect(document.catalog.has(PDFName.of('Outlines'))).toBe(true);
  });

  it('has the schedules that its trade asks for, row by row, with their captions', () => {
    const { schedules } = handoutOf(true);
    const text = printed.text().replaceAll(/\s+/gu, ' ');
    expect(schedules.map(({ id }) => id)).toContain('doors');
    for (const table of schedules) {
      expect(text).toContain(table.caption);
      for (const { id } of rowsOf(table)) expect(text).toContain(id);
    }
  });

  it('says of a choice that is open what it would be, and by when', () => {
    const text = printed.text().replaceAll(/\s+/gu, ' ');
    expect(text).toMatch(/, if chosen/);
    expect(text).toMatch(/By 9 June 2026/);
  });

  it('attaches its data and nothing else', () => {
    expect(printed.attachments()).toMatch(/^1 embedded files/u);
    expect(printed.attachments()).toContain('handout.json');
    expect(JSON.parse(printed.attachment())).toEqual(JSON.parse(JSON.stringify(handoutOf(true))));
  });

  it('has an as-built sheet to fill in', async () => {
    const form = (await PDFDocument.load(pdf, { updateMetadata: false })).getForm();
    expect(form.getFields().map((field) => field.getName())).toEqual(['as-built-study', 'lots-study', 'date-study']);
  });

  it('is the same, byte for byte, when made again', async () => {
    const again = await makeHandoutPdf(handoutOf(true));
    expect(Buffer.from(again.pdf).equals(Buffer.from(pdf))).toBe(true);
  });

  it('says on every page when it is not issued', async () => {
    const { pdf: draft } = await makeHandoutPdf(handoutOf(false));
    const text = putDown(draft);
    const pages = (await PDFDocument.load(draft, { updateMetadata: false })).getPageCount();
    for (let page = 1; page <= pages; page += 1) expect(text.text(page, page)).toMatch(/Not issued/);
    expect(text.text(1, 1)).toContain('Build from an issue for construction only');
  });
});
