import { PDFDict, PDFName, PDFNumber } from 'pdf-lib';
import { expect, test } from 'vitest';
import { comparePages, verifyPdf } from '../../src/signoff/verify/index.js';
import { addRevision, Allowance, openPdf, pagesOf, startAdditions } from '../../src/signoff/pdf/index.js';
import { builder, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

const issued = await makeSmallPdf();
const one = await sign(issued, owner, { field: 'owner-signature', fill: { 'owner-name': 'The owner' } });
const two = await sign(one, builder, { field: 'builder-signature' });

/** Turns the first page on its head, by an added revision. */
function turnPage(pdf: Uint8Array): Uint8Array {
  const file = openPdf(pdf, new Allowance(5000));
  const [now] = file.revisions;
  const [page] = now ? pagesOf(now) : [];
  if (!(page?.dict instanceof PDFDict)) throw new Error('no page');
  const dict = page.dict.clone(file.context);
  dict.set(PDFName.of('Rotate'), PDFNumber.of(180));
  const additions = startAdditions(file);
  additions.put(page.number, dict);
  return addRevision(file, additions);
}

test('the issued file, with no, one or two signatures and entries added, is the same', () => {
  for (const pdf of [issued, one, two]) expect(comparePages(pdf, issued)).toEqual({ kind: 'same' });
});

test('a page changed before anybody signed is found, though every signature holds', async () => {
  const turned = await sign(turnPage(issued), owner, { field: 'owner-signature' });
  expect((await verifyPdf(turned)).verdict).toBe('whole');
  expect(comparePages(turned, issued)).toMatchObject({ kind: 'altered', why: expect.stringMatching(/\w/u) });
});

test('a page changed in the midst of signing is found', async () => {
  expect(comparePages(turnPage(one), issued).kind).toBe('altered');
});

test.each([
  ['nothing', new Uint8Array()],
  ['a part of it', issued.subarray(0, issued.length - 30)],
  ['another', await makeSmallPdf({ streams: false })],
])('%s is not the issued file', (_what, other) => {
  expect(comparePages(one, other).kind).not.toBe('same');
  if (other.length > 0) expect(comparePages(other, issued)).toEqual({ kind: 'other-file' });
});

test('bytes added behind the issued file', () => {
  expect(comparePages(Buffer.concat([issued, Buffer.from('\nhello')]), issued).kind).toBe('altered');
});
