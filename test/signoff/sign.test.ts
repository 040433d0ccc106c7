import { beforeAll, describe, expect, test } from 'vitest';
import { makeBookPdf } from '../../src/print/index.js';
import { openCertificate, signPdf } from '../../src/signoff/sign/index.js';
import { verifyPdf } from '../../src/signoff/verify/index.js';
import { demoBook } from '../demo-house.js';
import { makeCertificate } from './make-certificate.js';
import { askPoppler, askQpdf } from './outside-tools.js';
import { builder, day, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

describe.each([
  ['a stream', true],
  ['a table', false],
])('a PDF with cross-references in %s', (_form, streams) => {
  let pdf: Uint8Array;
  beforeAll(async () => {
    pdf = await makeSmallPdf({ streams });
  });

  test('one signer, in the field of the form', async () => {
    const signed = await sign(pdf, owner, { field: 'owner-signature', fill: { 'owner-name': 'J. Example' } });
    expect(Buffer.compare(signed.subarray(0, pdf.length), pdf)).toBe(0);
    expect(askQpdf(signed)).toContain('No syntax or stream encoding errors');
    expect(askPoppler(signed)).toEqual([
      { field: 'owner-signature', signer: 'The owner', isValid: true, coversAll: true },
    ]);
    const { verdict, signatures } = await verifyPdf(signed);
    expect(verdict).toBe('whole');
    expect(signatures).toHaveLength(1);
    expect(signatures[0]).toMatchObject({
      field: 'owner-signature',
      signer: 'The owner',
      at: day,
      trust: 'self-signed',
    });
  });

  test('two signers: the first stays valid', async () => {
    const first = await sign(pdf, owner, { field: 'owner-signature' });
    const later = new Date('2026-05-03T08:30:00Z');
    const second = await sign(first, builder, {
      field: 'builder-signature',
      at: later,
      fill: { 'initials-101': 'PM' },
    });
    expect(Buffer.compare(second.subarray(0, first.length), first)).toBe(0);
    expect(askQpdf(second)).toContain('No syntax or stream encoding errors');
    expect(askPoppler(second)).toEqual([
      { field: 'owner-signature', signer: 'The owner', isValid: true, coversAll: false },
      { field: 'builder-signature', signer: 'Project manager', isValid: true, coversAll: true },
    ]);
    const { verdict, signatures } = await verifyPdf(second);
    expect(verdict).toBe('whole');
    expect(signatures.map(({ signer, at, state }) => [signer, at, state])).toEqual([
      ['The owner', day, 'whole'],
      ['Project manager', later, 'whole'],
    ]);
    expect(signatures[0]?.after).toEqual([
      { kind: 'filled', fields: ['initials-101'] },
      { kind: 'signature', fields: ['builder-signature'] },
    ]);
  });

  test('without a field, and without a form', async () => {
    const plain = await makeSmallPdf({ streams, withFields: false });
    const second = await sign(await sign(plain, owner, { field: 'owner-signature' }), builder);
    expect(askQpdf(second)).toContain('No syntax or stream encoding errors');
    expect(askPoppler(second).map(({ field, isValid }) => [field, isValid])).toEqual([
      ['owner-signature', true],
      ['signature-1', true],
    ]);
    expect((await verifyPdf(second)).verdict).toBe('whole');
  });
});

test('the demo house’s printed book, by two signers', async () => {
  const book = await demoBook('2026-04-20');
  const { pdf } = await makeBookPdf(book);
  const fill = { 'owner-name': 'The owners', 'owner-date': '1 May 2026' };
  const first = await sign(pdf, owner, { field: 'owner-signature', fill });
  const second = await sign(first, builder, { field: 'builder-signature' });
  expect(askQpdf(second)).toContain('No syntax or stream encoding errors');
  expect(askPoppler(second).map(({ isValid }) => isValid)).toEqual([true, true]);
  const report = await verifyPdf(second);
  expect(report.verdict).toBe('whole');
  expect(JSON.parse(Buffer.from(report.book?.bytes ?? []).toString('utf8'))).toEqual(JSON.parse(JSON.stringify(book)));
});

describe('refused, in words, without the passphrase', () => {
  const secret = 'Zwetschge-9';
  const expired = makeCertificate('Last year', { from: '2024-01-01', to: '2025-01-01' });
  const early = makeCertificate('Next year', { from: '2027-01-01', to: '2028-01-01' });
  const cases: readonly (readonly [string, Partial<Parameters<typeof signPdf>[1]>])[] = [
    ['wrong-passphrase', { passphrase: `${secret}x` }],
    ['wrong-passphrase', { passphrase: '' }],
    ['not-p12', { p12: Buffer.from(`not a certificate ${secret}`) }],
    ['not-p12', { p12: new Uint8Array() }],
    ['not-p12', { p12: owner.p12.subarray(0, 900) }],
    ['no-key', { p12: makeCertificate('Keyless', { withoutKey: true }).p12 }],
    ['no-certificate', { p12: makeCertificate('Bare', { certificateOf: owner }).p12 }],
    ['expired', { p12: expired.p12 }],
    ['not-yet-valid', { p12: early.p12 }],
    ['field-unknown', { field: 'owner.signature' }],
    ['field-unknown', { field: 'owner-name' }],
    ['field-unknown', { fill: { nobody: 'x' } }],
    ['field-filled', { fill: { prefilled: 'x' } }],
  ];
  test.each(cases)('%s', async (code, wish) => {
    const pdf = await makeSmallPdf();
    const refused = await signPdf(pdf, { p12: owner.p12, passphrase: secret, reason: 'Agreed', at: day, ...wish });
    expect(refused).toMatchObject({ ok: false, code });
    expect(JSON.stringify(refused)).not.toContain(secret);
    expect(refused.ok ? '' : refused.message).toMatch(/^[a-z][^\n]{20,}$/u);
  });

  test('an expired certificate may be allowed', async () => {
    const signed = await sign(await makeSmallPdf(), expired, { allowExpired: true });
    const { verdict, signatures } = await verifyPdf(signed);
    expect([verdict, signatures[0]?.certificate?.validAtSigning]).toEqual(['whole', false]);
  });

  test('a PDF that is none, is cut off, is encrypted, is not ours', async () => {
    const pdf = await makeSmallPdf();
    const code = async (bytes: Uint8Array): Promise<string> => {
      const { p12, passphrase } = owner;
      const refused = await signPdf(bytes, { p12, passphrase, reason: 'Agreed', at: day });
      return refused.ok ? 'signed' : refused.code;
    };
    expect(await code(Buffer.from('hello'))).toBe('not-pdf');
    expect(await code(new Uint8Array())).toBe('not-pdf');
    expect(await code(pdf.subarray(0, pdf.length - 40))).toBe('not-pdf');
    expect(await code(await makeSmallPdf({ withBook: false }))).toBe('not-ours');
    const table = Buffer.from(await makeSmallPdf({ streams: false })).toString('latin1');
    expect(await code(Buffer.from(table.replace('/Root', '/Encrypt 1 0 R\n/Root'), 'latin1'))).toBe('encrypted');
  });

  test('a field that is signed, and a PDF that was altered', async () => {
    const signed = await sign(await makeSmallPdf(), owner, { field: 'owner-signature' });
    await expect(sign(signed, builder, { field: 'owner-signature' })).rejects.toThrow('field-signed');
    const altered = Buffer.from(signed);
    altered[20] = (altered[20] ?? 0) ^ 1;
    await expect(sign(altered, builder, { field: 'builder-signature' })).rejects.toThrow(/altered|not-pdf/u);
  });
});

test('a certificate tells its name and days before anything is signed', () => {
  const opened = openCertificate(owner.p12, owner.passphrase);
  expect(opened).toMatchObject({
    ok: true,
    certificate: { facts: { name: 'The owner', selfSigned: true, to: new Date('2027-01-01T00:00:00Z') } },
  });
});
