import { PDFDocument } from 'pdf-lib';
import { expect } from 'vitest';
import { putDown } from '../tool.js';
import { faultsOf } from './rules.js';
import { readTagged } from './tagged.js';

/** No rule finds a fault, and poppler reads it as a tagged file of which nothing is suspect. */
export async function expectTagged(pdf: Uint8Array): Promise<void> {
  const tagged = readTagged(await PDFDocument.load(pdf, { updateMetadata: false }));
  expect(faultsOf(tagged)).toEqual([]);
  expect(tagged.tags.length).toBeGreaterThan(100);
  for (const { pieces } of tagged.pages) expect(pieces.length).toBeGreaterThan(0);
  const printed = putDown(pdf);
  expect(printed.complaints()).toBe('');
  expect(printed.info()).toMatch(/^Tagged: +yes$/mu);
  expect(printed.info()).toMatch(/^Suspects: +no$/mu);
}
