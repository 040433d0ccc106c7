import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeCertificate } from '../signoff/make-certificate.js';
import { signAnyhow } from '../signoff/sign-anyhow.js';
import { builder, owner, sign } from '../signoff/signed.js';
import { accepted, bothSigners, faults, fingerprint, nameSigners, SignedHouse } from './signed-house.js';

let signed: SignedHouse;
beforeAll(async () => {
  signed = await SignedHouse.make();
});
afterAll(() => signed.remove());

describe('who vouches', () => {
  test('nobody: a self-signed certificate alone is not enough', async () => {
    nameSigners(signed.house.dir, []);
    const ran = await signed.verify(signed.one);
    expect([ran.code, faults(ran)]).toEqual([
      1,
      ['owner-signature, The owner: not vouched for: anybody can make a certificate in this name'],
    ]);
    expect((await signed.verify(signed.two, '--trust', join(signed.dir, 'owner.pem'))).code).toBe(1);
    const trusted = await signed.verify(
      signed.two,
      '--trust',
      join(signed.dir, 'owner.pem'),
      '--trust',
      join(signed.dir, 'builder.pem'),
    );
    expect([trusted.code, trusted.said]).toEqual([0, expect.stringContaining('vouched for  by --trust')]);
  });

  test("another in the owner's name, and the builder in the owner's field", async () => {
    nameSigners(signed.house.dir, bothSigners);
    const namesake = makeCertificate('The owner');
    expect(faults(await signed.verify(await sign(signed.house.pdf, namesake, { field: 'owner-signature' })))).toEqual([
      "owner-signature, The owner: not vouched for: it is not the certificate that the house's record names for the owner",
    ]);
    expect(faults(await signed.verify(await sign(signed.house.pdf, builder, { field: 'owner-signature' })))).toEqual([
      "owner-signature, Project manager: signed with the certificate that the house's record names for the builder",
    ]);
  });

  test('a certificate that was not valid when it signed', async () => {
    const old = makeCertificate('The owner', { from: '2024-01-01', to: '2025-01-01' });
    signed.putDown('old.pem', old.pem);
    const late = await sign(signed.house.pdf, old, { field: 'owner-signature', allowExpired: true });
    expect(faults(await signed.verify(late, '--trust', join(signed.dir, 'old.pem')))).toEqual([
      'owner-signature, The owner: the certificate was not valid when it signed, 2026-05-01 10:00 UTC; ' +
        'it is valid from 2024-01-01 00:00 UTC to 2025-01-01 00:00 UTC',
    ]);
  });

  test.each([
    ['before the issue', '2026-04-18T09:00:00Z', '2026-04-18 09:00 UTC, before the day of issue 1, 20 April 2026'],
    ['after today', '2026-05-06T09:00:00Z', '2026-05-06 09:00 UTC, which is after today, 4 May 2026'],
  ])('a day %s proves nothing', async (_what, time, told) => {
    nameSigners(signed.house.dir, bothSigners);
    const pdf = await sign(signed.house.pdf, owner, { field: 'owner-signature', at: new Date(time) });
    const ran = await signed.verify(pdf);
    expect([ran.code, faults(ran)]).toEqual([
      1,
      [`owner-signature, The owner: it says that it was made on ${told}, so that it is not proven when`],
    ]);
  });

  test('a day that is only another place’s is taken', async () => {
    for (const time of ['2026-04-19T11:00:00Z', '2026-05-05T11:00:00Z']) {
      const pdf = await sign(signed.house.pdf, owner, { field: 'owner-signature', at: new Date(time) });
      expect(faults(await signed.verify(pdf))).toEqual([]);
    }
  });

  test('one certificate for both, by another program: told whoever vouches', async () => {
    const both = await signAnyhow(signed.one, 'builder-signature', owner);
    const one =
      'owner-signature and builder-signature were signed with one certificate, which proves one person and not 2';
    nameSigners(signed.house.dir, [bothSigners[0], ['builder', bothSigners[0][1]]]);
    expect(faults(await signed.verify(both))).toEqual([one]);
    nameSigners(signed.house.dir, []);
    expect(faults(await signed.verify(both, '--trust', join(signed.dir, 'owner.pem')))).toEqual([one]);
    nameSigners(signed.house.dir, bothSigners);
  });

  test('an entry of signers that cannot be read', async () => {
    const home = join(signed.dir, 'misspelt');
    cpSync(signed.house.dir, home, { recursive: true });
    nameSigners(home, [
      ['owner', fingerprint(owner.pem)],
      ['builder', 'AB:CD'],
    ]);
    expect(faults(await signed.verify(signed.one, '--house', home))).toEqual([
      'signers in content/house.md cannot all be read: bookmatch check says why',
    ]);
  });
});

describe('what the record says of signatures', () => {
  test('one by hand is not looked for in the PDF', async () => {
    signed.house.record({
      signatures: accepted.replace(/role: builder(.*)how: certificate/u, 'role: builder$1how: hand'),
    });
    const ran = await signed.verify(signed.one);
    signed.house.record();
    expect([ran.code, ran.said]).toEqual([
      0,
      expect.stringContaining('signed by owner and builder by hand as recorded'),
    ]);
  });

  test('another certificate in the same field is not the signature that was accepted', async () => {
    const other = makeCertificate('The owner');
    signed.putDown('other.pem', other.pem);
    signed.house.record({ signatures: accepted.replace(/.*role: builder.*\n/u, '') });
    const ran = await signed.verify(
      await sign(signed.house.pdf, other, { field: 'owner-signature' }),
      '--trust',
      join(signed.dir, 'other.pem'),
    );
    signed.house.record();
    expect(faults(ran)).toEqual([
      expect.stringMatching(/^the record of issue 1 says that the owner signed; that signature/u),
    ]);
  });

  test('a record that cannot be read is said', async () => {
    signed.house.record({ digest: 'no digest' });
    const ran = await signed.verify(signed.one);
    signed.house.record();
    expect(faults(ran)).toEqual([
      'content/issues/001.md cannot be read: bookmatch check says why',
      'the house has no issues to compare it with',
    ]);
  });
});
