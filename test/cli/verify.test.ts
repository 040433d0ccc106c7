import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { stamp } from '../signoff/issued-house.js';
import { makeCertificate } from '../signoff/make-certificate.js';
import { askPoppler, askQpdf } from '../signoff/outside-tools.js';
import { seeded } from '../signoff/seeded.js';
import { owner, sign } from '../signoff/signed.js';
import { makeSmallPdf } from '../signoff/small-pdf.js';
import { bookmatch } from './command-line.js';
import { accepted, faults, SignedHouse } from './signed-house.js';

let signed: SignedHouse;
beforeAll(async () => {
  signed = await SignedHouse.make();
});
afterAll(() => signed.remove());

describe('all holds', () => {
  test('one signer: what is left to sign is said', async () => {
    const ran = await signed.verify(signed.one);
    expect(ran.said).toContain(': whole\n1 signature; not signed: builder-signature\n');
    expect([ran.code, ran.said.endsWith('All of this holds.\n')]).toEqual([0, true]);
  });

  test('two signers, each with what came afterwards, the issue, and who vouches', async () => {
    signed.house.record({ signatures: accepted });
    const ran = await signed.verify(signed.two);
    signed.house.record();
    expect(ran.code).toBe(0);
    expect(
      ran.said.replace(/^.*: whole/u, 'FILE: whole').replaceAll(/(?:[0-9A-F]{2}:){31}[0-9A-F]{2}/gu, 'PRINT'),
    ).toBe(
      `FILE: whole
2 signatures

owner-signature: whole
  signed by    The owner, 2026-05-01 10:00 UTC by the signer's clock
  says         Agreed as issue 1
  certificate  issued by The owner, valid when it signed
               PRINT
  vouched for  by the house's record
  afterwards   signed in builder-signature

builder-signature: whole
  signed by    Project manager, 2026-05-03 08:30 UTC by the signer's clock
  says         Agreed as issue 1
  certificate  issued by Project manager, valid when it signed
               PRINT
  vouched for  by the house's record

issue: 1 for sign-off, 20 April 2026, signed by owner and builder as recorded
  data         that of the issue, SHA-256 ${signed.house.digest}
  printed      ${signed.house.digest
    .slice(0, 12)
    .toUpperCase()
    .replace(/(.{4})(.{4})/u, '$1-$2-')} on every page
  pages        the issued PDF, byte for byte, with signatures added

All of this holds.
`,
    );
    expect(askQpdf(signed.two)).toContain('No syntax or stream encoding errors');
    expect(askPoppler(signed.two).map(({ isValid }) => isValid)).toEqual([true, true]);
  });

  test('as data for other programs', async () => {
    const { code, said } = await signed.verify(signed.two, '--json');
    expect(code).toBe(0);
    expect(JSON.parse(said)).toMatchObject({
      holds: true,
      verdict: 'whole',
      signatures: [
        {
          field: 'owner-signature',
          role: 'owner',
          signer: 'The owner',
          vouchedFor: 'house',
          at: '2026-05-01T10:00:00.000Z',
        },
        { field: 'builder-signature', role: 'builder', certificate: { validAtSigning: true } },
      ],
      toSign: [],
      issue: { number: 1, purpose: 'sign-off', date: '2026-04-20', digest: signed.house.digest },
      data: 'matches',
      printed: 'matches',
      pages: 'same',
      bookSha256: signed.house.digest,
      problems: [],
    });
  });

  test('from the data and the print alone, when the folder has no PDF of the issue', async () => {
    const bare = join(signed.dir, 'bare');
    cpSync(join(signed.house.dir, 'content'), join(bare, 'content'), { recursive: true });
    const ran = await signed.verify(signed.one, '--house', bare);
    expect([ran.code, ran.said]).toEqual([0, expect.stringContaining('not compared: the folder has no PDF')]);
  });
});

describe('a byte altered anywhere', () => {
  test('30 seeded places in each file: exit 1, and never whole', async () => {
    const random = seeded(20260503);
    const missed: number[] = [];
    for (const pdf of [signed.one, signed.two]) {
      const text = Buffer.from(pdf).toString('latin1');
      const hole = text.lastIndexOf('/Contents <');
      for (let done = 0; done < 30;) {
        const at = Math.floor(random() * pdf.length);
        // The newest signature itself is what nobody signed.
        if (at >= hole && at <= text.indexOf('>', hole)) continue;
        const altered = Buffer.from(pdf);
        altered[at] = (altered[at] ?? 0) ^ (1 + Math.floor(random() * 255));
        const { code, said } = await signed.verify(altered);
        if (code !== 1 || /^.*: whole/u.test(said)) missed.push(at);
        // One of each dozen is shown to another program too.
        if (done % 12 === 0) expect(askPoppler(altered).every(({ isValid }) => isValid)).toBe(false);
        done += 1;
      }
    }
    expect(missed).toEqual([]);
  });

  test('it is said after which signature', async () => {
    const altered = Buffer.from(signed.two);
    const at = altered.indexOf('/Reason <', signed.one.length) + 20;
    altered[at] = (altered[at] ?? 0) ^ 1;
    const ran = await signed.verify(altered);
    expect(ran.said).toMatch(/owner-signature: whole[^]*builder-signature: altered/u);
    expect(faults(ran)).toContain('builder-signature: the bytes are not those that were signed');
    const added = await signed.verify(Buffer.concat([signed.one, Buffer.from('\n99 0 obj\n(hello)\nendobj\n%%EOF\n')]));
    expect(faults(added)[0]).toMatch(/^owner-signature: after this signature it was altered: /u);
  });
});

describe('not the issue', () => {
  test('a file cut back to its first signer is whole, but not what the record says was signed', async () => {
    signed.house.record({ signatures: accepted });
    const ran = await signed.verify(signed.two.subarray(0, signed.one.length));
    signed.house.record();
    expect(ran.said).toContain(': whole\n1 signature; not signed: builder-signature\n');
    expect([ran.code, faults(ran)]).toEqual([
      1,
      [
        'the record of issue 1 says that the builder signed; that signature is not in this file, which may have been cut back',
      ],
    ]);
  });

  test('other data, pages without the digest, and no issue at all', async () => {
    signed.house.record({ digest: 'a'.repeat(64) });
    expect(faults(await signed.verify(signed.one))).toEqual([
      'the data attached to it is that of no issue of the house',
    ]);
    signed.house.record();
    const foreign = await sign(await makeSmallPdf(), owner, { field: 'owner-signature' });
    expect(faults(await signed.verify(foreign))).toEqual(['the data attached to it is that of no issue of the house']);
    // Printed with the issue's digest, but with data of its own.
    const digest = signed.house.digest
      .slice(0, 12)
      .toUpperCase()
      .replace(/(.{4})(.{4})/u, '$1-$2-');
    const stamped = await stamp(await makeSmallPdf(), digest, [2]);
    const forged = await sign(stamped, owner, { field: 'owner-signature' });
    expect(faults(await signed.verify(forged))).toEqual([
      'the data attached to it is not that of issue 1, whose digest is printed on it',
      `the digest of issue 1, ${digest}, is not printed on page 2`,
      'its pages cannot be proven: it is not the PDF of issue 1 in the house folder with signatures added, but another file or one written anew',
    ]);
  });

  test('other pages under the right data and the right digest', async () => {
    const other = await stamp(signed.house.pdf, 'Total today $9.00');
    const ran = await signed.verify(await sign(other, owner, { field: 'owner-signature' }));
    expect([ran.code, faults(ran).length]).toEqual([1, 1]);
    expect(ran.said).toMatch(/data +that of the issue[^]*printed +[^\n]* on every page\n +pages +not proven/u);
  });

  test('without a signature, without a house, no PDF', async () => {
    expect(faults(await signed.verify(signed.house.pdf))).toEqual(['it is not signed']);
    expect((await signed.verify(signed.house.pdf)).code).toBe(1);
    const text = await signed.verify(Buffer.from('hello'));
    expect([text.code, text.said]).toEqual([
      1,
      expect.stringMatching(/^\S+\.pdf: it is no PDF; name the PDF .*\nNothing is proven by it\.\n$/u),
    ]);
    const usage = await bookmatch(['verify', join(signed.dir, 'nowhere.pdf'), '--house', signed.house.dir]);
    expect([usage.code, usage.said]).toEqual([2, expect.stringContaining('there is no such file')]);
    const noHouse = await signed.verify(signed.one, '--house', signed.dir);
    expect([noHouse.code, noHouse.said]).toEqual([2, `there is no content/house.md in ${signed.dir}\n`]);
    const noCertificate = await signed.verify(signed.one, '--trust', join(signed.house.dir, 'content', 'house.md'));
    expect([noCertificate.code, noCertificate.said]).toEqual([2, expect.stringContaining('there is none in it')]);
  });
});

test('a name in a certificate does not reach the terminal as it is', async () => {
  const sly = makeCertificate('\u001b[2JThe owner\nAll of this holds.');
  const ran = await signed.verify(await sign(signed.house.pdf, sly, { field: 'owner-signature' }));
  expect(ran.said).not.toContain('\u001b');
  expect(ran.said.split('\n')).not.toContain('All of this holds.');
});
