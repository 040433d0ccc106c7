import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { makeHandout } from '../../src/handout/index.js';
import { makeBookPdf, makeChangeOrderPdf, makeHandoutPdf } from '../../src/print/index.js';
import { demoBook } from '../demo-house.js';
import { changedBook } from './changed-book.js';
import { makeFixture } from './fixture.js';
import { putDown } from './tool.js';
import { faultsOf, rules } from './ua/rules.js';
import { readTagged } from './ua/tagged.js';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const open = (pdf: Uint8Array): Promise<PDFDocument> => PDFDocument.load(pdf, { updateMetadata: false });

describe('what can be told of PDF/UA-1 without a person holds', () => {
  test.each([
    ['the demo’s book', async () => (await makeBookPdf(await demoBook('2026-04-20'))).pdf],
    [
      'a handout',
      async () => {
        const book = await demoBook('2026-04-20');
        const trade = book.trades.find(({ slug }) => slug === 'finish-carpentry');
        if (!trade) throw new Error('the demo house has no finish carpentry');
        return (await makeHandoutPdf(makeHandout(book, trade))).pdf;
      },
    ],
    [
      'a change order',
      async () => {
        const book = changedBook();
        const [order] = book.changeOrders;
        if (!order) throw new Error('the house has no change order');
        return (await makeChangeOrderPdf(book, order)).pdf;
      },
    ],
  ])('for %s', async (_, make) => {
    const pdf = await make();
    const tagged = readTagged(await open(pdf));
    expect(faultsOf(tagged)).toEqual([]);
    expect(tagged.tags.length).toBeGreaterThan(100);
    for (const { pieces } of tagged.pages) expect(pieces.length).toBeGreaterThan(0);
    expect(putDown(pdf).complaints()).toBe('');
    expect(putDown(pdf).info()).toMatch(/^Tagged: +yes$/mu);
    expect(putDown(pdf).info()).toMatch(/^Suspects: +no$/mu);
  });
});

describe('each rule', () => {
  let sound: Uint8Array;
  beforeAll(async () => {
    sound = (await makeBookPdf(makeFixture())).pdf;
  });

  test('is silent on a file without a fault, and stands once', async () => {
    expect(faultsOf(readTagged(await open(sound)))).toEqual([]);
    expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
    expect(rules.length).toBeGreaterThanOrEqual(40);
  });

  test.each(rules.map((rule) => [`${rule.id}, ${rule.source}: ${rule.says}`, rule] as const))(
    'finds its fault: %s',
    async (_, rule) => {
      const document = await open(sound);
      rule.plant(document);
      expect(rule.faults(readTagged(document))).not.toEqual([]);
    },
  );
});
