import { expect, test } from 'vitest';
import { Allowance, openPdf, pagesOf } from '../../src/signoff/pdf/index.js';
import { verifyPdf } from '../../src/signoff/verify/index.js';
import { addSection, addTo } from './add-to.js';
import { added, late } from './added-attacks.js';
import { builder, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

/** What can be done to a signed PDF: its name, what verify says of it after its verdict, and what is done. `signed` has the owner's signature, `both` the
 *  builder's too, which is the last. */

const plain = await makeSmallPdf({ streams: false });
const fill = { 'owner-name': 'The owners' };
const signed = await sign(plain, owner, { field: 'owner-signature', fill });
const both = await sign(signed, builder, { field: 'builder-signature' });
const other = await sign(await makeSmallPdf({ streams: false, withBook: false }), owner, {
  field: 'owner-signature',
  isOurs: () => true,
});

const atEnd = (text: string) => (): Uint8Array => Buffer.concat([signed, Buffer.from(text)]);

/** Another text of the same length in the signature or the pages. */
const inPlace = (from: RegExp, to: (found: string) => string) => (): Uint8Array => {
  const text = Buffer.from(signed).toString('latin1');
  const changed = text.replace(from, to);
  if (changed === text || changed.length !== text.length) throw new Error('nothing was changed, or the length was');
  return Buffer.from(changed, 'latin1');
};

const isOther = 'the bytes are not those that were signed';

const bytes: readonly (readonly [string, string, string, () => Uint8Array])[] = [
  ['a word at the end', 'altered', 'bytes were added that are no part of the document', atEnd('hello')],
  ['an end of line at the end', 'altered', 'bytes were added', atEnd('\n')],
  ['a second end', 'altered', 'bytes were added', atEnd('\n%%EOF\n')],
  ['a loose object at the end', 'altered', 'bytes were added', atEnd('\n99 0 obj\n(hello)\nendobj\n%%EOF\n')],
  ['a start that leads nowhere', 'altered', 'is damaged', atEnd('\nstartxref\n7\n%%EOF\n')],
  [
    'cut off in the signature',
    'altered',
    'the signature that it holds is no longer part of it',
    () => signed.subarray(0, plain.length + 900),
  ],
  ['cut back to before the first signature', 'unsigned', '', () => signed.subarray(0, plain.length)],
  [
    'a hole that begins before the signature',
    'altered',
    'the hole in its byte range is not in the signature',
    inPlace(/\/ByteRange \[0 (\d)/u, (found) => `${found.slice(0, -1)}1`),
  ],
  [
    'a range that leaves out the beginning',
    'altered',
    'its byte range does not fit the file',
    inPlace(/\/ByteRange \[0/u, () => '/ByteRange [9'),
  ],
  ['no range', 'altered', 'its byte range is not four numbers', inPlace(/\/ByteRange \[/u, () => '/ByteRangs [')],
  [
    'contents of zeros',
    'altered',
    'its contents are not one message and zeros',
    inPlace(/\/Contents <[0-9a-f]+>/u, (found) => found.replace(/[1-9a-f](?=[0-9a-f]*>)/gu, '0')),
  ],
  ['no contents', 'altered', 'is not its contents', inPlace(/\/Contents <3/u, () => '/Contentz <3')],
  ['a reason in other words', 'altered', isOther, inPlace(/\/Reason <FEFF0041/u, () => '/Reason <FEFF0042')],
  ['an earlier day', 'altered', isOther, inPlace(/\/M \(D:2026/u, () => '/M (D:2025')],
  ['another kind of signature', 'altered', isOther, inPlace(/ETSI\.CAdES\.detached/u, () => 'adbe.pkcs7.detached')],
  [
    'a message from another file',
    'altered',
    isOther,
    () => {
      const message = (pdf: Uint8Array): string =>
        /\/Contents <([0-9a-f]+)>/u.exec(Buffer.from(pdf).toString('latin1'))?.[1] ?? '';
      return inPlace(/\/Contents <[0-9a-f]+>/u, () => `/Contents <${message(other)}>`)();
    },
  ],
  [
    'another document by the trailer',
    'altered',
    'another document was put in its place',
    () => addSection(signed, '0 0\n', '', '1 0 R'),
  ],
  [
    'encrypted by the trailer',
    'unreadable',
    'the PDF is encrypted',
    () => addSection(signed, '0 0\n', '/Encrypt << >>'),
  ],
  [
    'cross-references that can be read in two ways',
    'altered',
    'is damaged',
    () => addSection(signed, '0 0\n', '/XRefStm 9'),
  ],
  [
    'an object taken out of the table',
    'altered',
    'was taken out',
    () => {
      const [now] = openPdf(signed, new Allowance(5000)).revisions;
      const page = now && pagesOf(now)[1]?.number;
      return addSection(signed, `${page ?? 0} 1\n0000000000 00001 f \n`);
    },
  ],
];

const all = [
  ...added.map(([name, words, change]) => [name, 'altered', words, () => addTo(signed, change)] as const),
  ...late.map(([name, words, change]) => [name, 'altered', words, () => addTo(both, change)] as const),
  ...bytes,
];

test.each(all)('%s: %s, %s', async (_name, word, words, attack) => {
  const { verdict, problems } = await verifyPdf(attack());
  expect([verdict, problems.join('; ')]).toEqual([word, expect.stringContaining(words)]);
});

test('what was added leaves the signature itself as it is: only what came after it tells', async () => {
  for (const [name, , change] of added) {
    const { signatures } = await verifyPdf(addTo(signed, change));
    const [first] = signatures;
    expect([name, first?.digestMatches, first?.signatureVerifies, first?.state]).toEqual([name, true, true, 'altered']);
    expect(first?.after.at(-1)?.kind, name).toBe('altered');
  }
});

test('what nobody did anything to is whole', async () => {
  for (const pdf of [signed, both]) expect(await verifyPdf(pdf)).toMatchObject({ verdict: 'whole', problems: [] });
  expect(all.length).toBeGreaterThan(50);
});
