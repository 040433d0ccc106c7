import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { BookChangeOrder } from '../../src/core/book/index.js';
import { shortDigest, type Cents } from '../../src/base/units/index.js';
import { changeOrderDigest } from '../../src/signoff/index.js';
import { makeChangeOrderPdf } from '../../src/print/index.js';
import { changedBook } from './changed-book.js';
import { putDown } from './tool.js';

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-change-'));
afterAll(() => rmSync(scratch, { recursive: true }));

const book = changedBook();
const texts: string[] = [];

beforeAll(async () => {
  for (const one of book.changeOrders) {
    const path = join(scratch, `${one.number}.pdf`);
    writeFileSync(path, (await makeChangeOrderPdf(book, one)).pdf);
    execFileSync('qpdf', ['--check', path], { stdio: 'pipe' });
    texts.push(execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' }));
  }
});

describe('a printed change order', () => {
  test('says what, why, how much, and the contract sum with it', () => {
    expect(texts[0]).toMatch(/Change order 1: Oak in the study/);
    expect(texts[0]).toMatch(/The sample looked better\./);
    expect(texts[0]).toMatch(/101 Study +Floor: Pine → Oak +\+\$120\.25/);
    expect(texts[0]).toMatch(/Requested by +The owner/);
    expect(texts[0]).toMatch(/Valid until +1 May 2026/);
    expect(texts[0]).toMatch(/Study +AAAA-AAAA-AAAA +BBBB-BBBB-BBBB/);
  });

  test('a declined one moves nothing for those after it', () => {
    expect(texts[1]).toMatch(/Declined\. It changes nothing/);
    // $100,000.00 + $120.25 − $20.50, and 2 + 2 days.
    expect(texts[2]).toMatch(/first agreed +\$100,000\.00 +as agreed/);
    expect(texts[2]).toMatch(/Net of earlier change orders +\+\$120\.25 +\+2/);
    expect(texts[2]).toMatch(/Before this change order +\$100,120\.25 +\+2/);
    expect(texts[2]).toMatch(/This change order, number 3 +−\$20\.50 +\+2/);
    expect(texts[2]).toMatch(/With this change order +\$100,099\.75 +\+4/);
  });

  test('the amount and the signatures stand on page 1, the lines after it, its digest on every page', () => {
    for (const [index, text] of texts.entries()) {
      const pages = text.split('\f').slice(0, -1);
      expect(pages).toHaveLength(2);
      expect(pages[0]).toContain('With this change order');
      expect(pages[0]?.match(/SIGNATURE/g)).toHaveLength(2);
      expect(pages[1]).toContain('Floor: Pine → Oak');
      const order = book.changeOrders[index];
      const digest = shortDigest(changeOrderDigest(book.house.number, order as BookChangeOrder));
      for (const page of pages) expect(page).toContain(digest);
    }
  });

  test.each([
    ['Letter', 'customary', /letter/u],
    ['A4', 'metric', /A4/u],
  ] as const)(
    'on %s has amount, sum and both signatures on page 1, with the longest reason that stands there',
    async (_, units, size) => {
      const [order] = book.changeOrders;
      if (!order) throw new Error('the house has no change order');
      const reason = 'word '.repeat(100).trim();
      const { pdf } = await makeChangeOrderPdf({ ...book, house: { ...book.house, units } }, { ...order, reason });
      const printed = putDown(pdf);
      expect(printed.info()).toMatch(new RegExp(`^Page size: .*${size.source}`, 'mu'));
      const first = printed.text(1, 1);
      expect(first).toMatch(/Added to the contract sum +\+\$120\.25/u);
      expect(first).toMatch(/This change order, number 1 +\+\$120\.25/u);
      expect(first).toContain('With this change order');
      expect(first.match(/word/gu)).toHaveLength(100);
      expect(first.match(/SIGNATURE/gu)).toHaveLength(2);
      const off = printed
        .boxes()
        .filter(({ left, right, bottom, page }) => left < 0 || right > page.width || bottom > page.height);
      expect(off).toEqual([]);
    },
  );

  test('carries what it agrees to, and whoever decided it since is no part of that', () => {
    const path = join(scratch, '3.pdf');
    execFileSync('pdfdetach', ['-save', '1', '-o', join(scratch, 'out.json'), path]);
    const sha = execFileSync('sha256sum', [join(scratch, 'out.json')], { encoding: 'utf8' }).slice(0, 64);
    const [, , third] = book.changeOrders as [BookChangeOrder, BookChangeOrder, BookChangeOrder];
    expect(changeOrderDigest('1', third)).toBe(sha);
    expect(
      changeOrderDigest('1', { ...third, state: 'approved', decidedOn: '2026-04-30', decidedBy: 'The owner' }),
    ).toBe(sha);
    expect(changeOrderDigest('1', { ...third, amount: 1 as Cents })).not.toBe(sha);
    expect(changeOrderDigest('1', { ...third, validUntil: '2026-06-01' })).not.toBe(sha);
  });

  test('both parties can sign it', () => {
    const fields = execFileSync('qpdf', ['--json', '--json-key=acroform', join(scratch, '1.pdf')], {
      encoding: 'utf8',
    });
    for (const name of ['owner-signature', 'builder-signature', 'owner-name', 'builder-date'])
      expect(fields).toContain(`"fullname": "${name}"`);
  });

  test('the contract follows the approved ones alone', () => {
    const { agreed, today } = book.money;
    expect(agreed).toMatchObject({ changeOrders: 12025, current: 10_012_025, notCovered: today - 10_012_025 });
  });
});
