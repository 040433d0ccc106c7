import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { makeBookPdf, makeChangeOrderPdf } from '../../src/print/index.js';
import { changedBook } from './changed-book.js';
import { makeFixture } from './fixture.js';
import { expectTagged } from './ua/expect-tagged.js';
import { faultsOf, rules } from './ua/rules.js';
import { readTagged } from './ua/tagged.js';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const open = (pdf: Uint8Array): Promise<PDFDocument> => PDFDocument.load(pdf, { updateMetadata: false });

/** The demo's book and a handout of it are held against them in `demo-pdfs.test.ts`, where they are made anyway. */
test('what can be told of PDF/UA-1 without a person holds for a change order', async () => {
  const book = changedBook();
  const [order] = book.changeOrders;
  if (!order) throw new Error('the house has no change order');
  await expectTagged((await makeChangeOrderPdf(book, order)).pdf);
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
