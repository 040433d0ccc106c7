import { P12Signer } from '@signpdf/signer-p12';
import { expect, test } from 'vitest';
import { openCertificate } from '../../src/signoff/sign/index.js';
import { verifyPdf, type PdfReport } from '../../src/signoff/verify/index.js';
import { makeCertificate, type CertificateWish, type MadeCertificate } from './make-certificate.js';
import { askPoppler, askQpdf } from './outside-tools.js';
import { signAnyhow } from './sign-anyhow.js';
import { day, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

const pdf = await makeSmallPdf();

/** A PDF signed as books were signed before. */
function signAsBefore({ p12, passphrase }: MadeCertificate): Promise<Uint8Array> {
  return signAnyhow(pdf, 'owner-signature', owner, {
    signer: new P12Signer(Buffer.from(p12), { passphrase }),
    alter: (text) => text.replace('/ETSI.CAdES.detached', '/adbe.pkcs7.detached '),
  });
}

const told = ({ verdict, problems }: PdfReport): readonly string[] => [verdict, ...problems];

test('ours is PAdES: of its kind, without the time among the attributes, with the time in the PDF', async () => {
  const signed = await sign(pdf, owner, { field: 'owner-signature' });
  const text = Buffer.from(signed).toString('latin1');
  expect(text).toContain('/SubFilter /ETSI.CAdES.detached');
  // DER of the object identifiers 1.2.840.113549.1.9.5 and 1.2.840.113549.1.9.16.2.47.
  expect(text).not.toContain('06092a864886f70d010905');
  expect(text).toContain('060b2a864886f70d010910022f');
  expect(await verifyPdf(signed)).toMatchObject({ verdict: 'whole', signatures: [{ at: day }] });
  expect(askPoppler(signed)).toMatchObject([{ isValid: true, coversAll: true }]);
  expect(askQpdf(signed)).toContain('No syntax or stream encoding errors');
});

test('a signature of the older kind, with the time among its attributes, still holds', async () => {
  const signed = await signAsBefore(owner);
  expect(Buffer.from(signed).toString('latin1')).toContain('06092a864886f70d010905');
  expect(await verifyPdf(signed)).toMatchObject({ verdict: 'whole', problems: [], signatures: [{ at: day }] });
  expect(askPoppler(signed)).toMatchObject([{ isValid: true, coversAll: true }]);
});

test('PAdES without a time says so', async () => {
  const timeless = await signAnyhow(pdf, 'owner-signature', owner, {
    alter: (text) => text.replace('/M (D:', '/X (D:'),
  });
  expect(told(await verifyPdf(timeless))).toEqual([
    'unproven',
    'owner-signature: it does not say when it was made, as its kind has to',
  ]);
});

const unfit: readonly (readonly [string, CertificateWish, string])[] = [
  ['a short key', { bits: 1024 }, 'has an RSA key of 1024 bits, which can be broken: 2048 are the least'],
  ['SHA-1', { digest: 'sha1' }, 'was issued with SHA-1, which no longer proves anything'],
  ['MD5', { digest: 'md5' }, 'was issued with MD5, which no longer proves anything'],
  [
    'an authority',
    { isAuthority: true },
    'is one of an authority: it issues certificates to others and is not to sign with',
  ],
  [
    'another use of the key',
    { extensions: [{ name: 'keyUsage', keyEncipherment: true }] },
    'is not meant for signing: its key usage has neither digitalSignature nor nonRepudiation',
  ],
  [
    'a server',
    { extensions: [{ name: 'extKeyUsage', serverAuth: true }] },
    'is meant for servers, programs or time-stamps, not for what a person signs',
  ],
];

test.each(unfit)('a certificate that is not to sign with: %s', async (_what, wish, why) => {
  const made = makeCertificate('Somebody', wish);
  expect(openCertificate(made.p12, made.passphrase)).toMatchObject({
    ok: false,
    code: 'unfit',
    message: `the certificate of Somebody ${why}; sign with another one`,
  });
  const report = await verifyPdf(await signAnyhow(pdf, 'owner-signature', made), { roots: [made.pem] });
  expect(told(report)).toEqual(['unproven', `owner-signature: its certificate ${why}`]);
});
