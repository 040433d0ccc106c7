import { beforeAll, expect, test } from 'vitest';
import { makeBookPdf } from '../../src/print/index.js';
import { printedText } from '../../src/signoff/verify/index.js';
import { makeFixture } from '../print/fixture.js';
import { putDown } from '../print/tool.js';
import { issueSmallHouse } from './issued-house.js';
import { owner, sign } from './signed.js';

let issued: Uint8Array;
beforeAll(async () => {
  issued = (await issueSmallHouse()).pdf;
});

/** Two readers may take the words of a page in another order: the letters are the same. */
function letters(text: string): string {
  return [...text.replace(/\s+/gu, '').replace(/[\u2010\u2011]/gu, '-')].sort().join('');
}

test('each page has the letters that pdftotext finds on it', async () => {
  const { pdf } = await makeBookPdf(makeFixture());
  for (const one of [pdf, issued]) {
    const pages = printedText(one) ?? [];
    const outside = putDown(one).text().split('\f').slice(0, -1);
    expect(pages.length).toBeGreaterThan(10);
    expect(pages.map(letters)).toEqual(outside.map(letters));
  }
});

test('a line of a page stands in the text as it is printed', () => {
  // After the cover, the summary, a sheet for the level, the contents and the house's tables.
  expect(printedText(issued)?.[5]).toContain('HOUSESmallHouseJOB1SHEETRooms');
});

test('what is filled in or signed is no part of a page', async () => {
  const signed = await sign(issued, owner, { field: 'owner-signature', fill: { 'owner-name': 'J. Example' } });
  expect(printedText(signed)).toEqual(printedText(issued));
});

test('a file that is none has no text', () => {
  expect(printedText(Buffer.from('hello'))).toBeUndefined();
});
