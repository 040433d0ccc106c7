import { describe, expect, test } from 'vitest';
import { describeChange, verifyPdf } from '../../src/signoff/verify/index.js';
import { makeCertificate } from './make-certificate.js';
import { seeded } from './seeded.js';
import { builder, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

const one = await sign(await makeSmallPdf(), owner, { field: 'owner-signature' });
const two = await sign(one, builder, { field: 'builder-signature' });

test('a PDF without a signature is unsigned, and gives what it carries', async () => {
  const report = await verifyPdf(await makeSmallPdf());
  expect(report.verdict).toBe('unsigned');
  expect(report.attachments).toEqual([
    {
      name: 'book.json',
      size: 48,
      // printf '{"format":"bookmatch/book/1","total":148600000}\n' | sha256sum
      sha256: 'c4b96e95aa7f7142162e9e4b7400876ebe4c766ba2fb476bb32a195bf94ee9c0',
    },
  ]);
  expect(report.book?.sha256).toBe(report.attachments[0]?.sha256);
});

describe('who vouches for the signer', () => {
  const authority = makeCertificate('County authority', { isAuthority: true });
  const member = makeCertificate('Member', { issuer: authority });
  const sealed = makeSmallPdf().then((pdf) => sign(pdf, member));

  test('nobody that is known', async () => {
    expect((await verifyPdf(await sealed)).signatures[0]).toMatchObject({ state: 'whole', trust: 'unknown' });
    expect((await verifyPdf(await sealed, { roots: [owner.pem] })).signatures[0]?.trust).toBe('unknown');
  });

  test('a root that was given', async () => {
    const [signature] = (await verifyPdf(await sealed, { roots: [`${owner.pem}\n${authority.pem}`] })).signatures;
    expect(signature).toMatchObject({
      trust: 'given-root',
      signer: 'Member',
      certificate: { issuer: 'County authority' },
    });
  });

  test('the signer alone, or the signer as a root that was given', async () => {
    expect((await verifyPdf(one)).signatures[0]?.trust).toBe('self-signed');
    expect((await verifyPdf(one, { roots: [owner.pem, 'no certificate'] })).signatures[0]?.trust).toBe('given-root');
  });

  test('an authority whose name is borrowed vouches for nobody', async () => {
    const impostor = makeCertificate('County authority', { isAuthority: true });
    const forged = await sign(await makeSmallPdf(), makeCertificate('Member', { issuer: impostor }));
    expect((await verifyPdf(forged, { roots: [authority.pem] })).signatures[0]?.trust).toBe('unknown');
  });
});

describe('500 bytes altered one at a time, anywhere in the signed ranges', () => {
  test.each([
    ['one signer', one, 250],
    ['two signers', two, 250],
  ])('%s: all found', async (_what, signed, count) => {
    const random = seeded(20260501);
    const missed: string[] = [];
    // The hole of the last signature is the only part that nobody signed.
    const [start, end] = lastHole(signed);
    for (let done = 0; done < count;) {
      const at = Math.floor(random() * signed.length);
      if (at >= start && at < end) continue;
      const altered = Buffer.from(signed);
      altered[at] = (altered[at] ?? 0) ^ (1 + Math.floor(random() * 255));
      const { verdict } = await verifyPdf(altered);
      if (verdict !== 'altered')
        missed.push(`${verdict} at ${at}: ${Buffer.from(signed).toString('latin1', at - 12, at + 3)}`);
      done += 1;
    }
    expect(missed).toEqual([]);
  });

  test('and in the signature itself: found, or it says what it said', async () => {
    const random = seeded(7);
    const [start, end] = lastHole(one);
    const told = await verifyPdf(one);
    let found = 0;
    for (let done = 0; done < 300; done += 1) {
      const altered = Buffer.from(one);
      // The message itself is in the first half; zeros fill the rest.
      const at = start + 1 + Math.floor(random() * ((end - start) / 4));
      const digit = Number.parseInt(String.fromCharCode(altered[at] ?? 0), 16);
      altered.write(((digit + 1 + Math.floor(random() * 15)) % 16).toString(16), at, 'latin1');
      const report = await verifyPdf(altered);
      if (report.verdict === 'whole') expect(report).toEqual(told);
      else found += 1;
    }
    expect(found).toBeGreaterThan(290);
  });
});

test('what cannot be read is told by what is wrong with it', async () => {
  const why = async (bytes: Uint8Array): Promise<string> => (await verifyPdf(bytes)).problems.join();
  const pdf = await makeSmallPdf({ withFields: false });
  expect(await why(new Uint8Array())).toContain('the file is empty');
  expect(await why(Buffer.from('---\nname: Larch Hollow\n---\n'))).toContain('it is no PDF');
  expect(await why(pdf.subarray(0, pdf.length / 2))).toContain('its end is missing');
  expect(await why(Buffer.concat([pdf.subarray(0, 20), Buffer.from('\n%%EOF\n')]))).toContain('is damaged');
});

test('a file that is cut off anywhere is not whole', async () => {
  const random = seeded(11);
  const cuts = [1, 2, 6, 20, ...Array.from({ length: 80 }, () => 1 + Math.floor(random() * (one.length - 1)))];
  for (const cut of cuts) {
    const { verdict } = await verifyPdf(one.subarray(0, one.length - cut));
    expect([cut, verdict]).not.toEqual([cut, 'whole']);
  }
  // Cut where the second signer began, it is what the first signer signed.
  expect((await verifyPdf(two.subarray(0, one.length))).verdict).toBe('whole');
});

test('a byte of the first state altered is seen in both signatures, one of the second state only there', async () => {
  const states = async (at: number): Promise<readonly string[]> => {
    const altered = Buffer.from(two);
    altered[at] = (altered[at] ?? 0) ^ 1;
    return (await verifyPdf(altered)).signatures.map(({ digestMatches }) => String(digestMatches));
  };
  const inFirst = Buffer.from(two).indexOf('/Reason <', 0) + 20;
  const inSecond = Buffer.from(two).indexOf('/Reason <', one.length) + 20;
  expect(await states(inFirst)).toEqual(['false', 'false']);
  expect(await states(inSecond)).toEqual(['true', 'false']);
});

test('changes are told in words', () => {
  expect(describeChange({ kind: 'filled', fields: ['initials-101', 'initials-102'] })).toBe(
    'filled in: initials-101, initials-102',
  );
});

/** The part of the file that holds the newest signature: between `<` and `>`, both included. */
function lastHole(pdf: Uint8Array): readonly [number, number] {
  const text = Buffer.from(pdf).toString('latin1');
  const start = text.indexOf('<', text.lastIndexOf('/Contents <'));
  return [start, text.indexOf('>', start) + 1];
}
