import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFString } from 'pdf-lib';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { verifyPdf } from '../../src/signoff/verify/index.js';
import { askPoppler, askQpdf } from '../signoff/outside-tools.js';
import { addTo, changeField } from '../signoff/add-to.js';
import { builder, owner, sign } from '../signoff/signed.js';
import { signAnyhow } from '../signoff/sign-anyhow.js';
import { bookmatch } from './command-line.js';
import { HouseUnderGit } from './house-under-git.js';
import { bothSigners, faults, nameSigners } from './signed-house.js';

let house: HouseUnderGit;
let paper: Uint8Array;
let signed: Uint8Array;

beforeAll(async () => {
  house = new HouseUnderGit();
  nameSigners(house.dir, bothSigners);
  house.commit('Signers');
  house.edit('content/rooms/study.md', 'chosen: pine', 'chosen: oak');
  house.commit('The owner takes oak');
  await house.run(
    'compare HEAD~1 HEAD --draft --reason "The sample." --requested-by "The owner" --valid-until 2026-06-01',
  );
  const printed = await house.run('print-change 1');
  expect(printed).toMatchObject({ code: 0, error: '' });
  expect(printed.out).toMatch(/HOUSE\/issued\/change-001\.pdf {2}to sign, digest [0-9A-F]{4}-/);
  paper = readFileSync(join(house.dir, 'issued/change-001.pdf'));
  signed = readFileSync(await signBoth(join(house.dir, 'issued/change-001.pdf')));
});
afterAll(() => house.remove());

/** By the command, one after the other; returns where it put the last. */
async function signBoth(path: string): Promise<string> {
  const both = [
    ['owner', owner, '2026-05-01T10:00:00Z'],
    ['builder', builder, '2026-05-03T08:30:00Z'],
  ] as const;
  let file = path;
  for (const [role, { p12, passphrase }, time] of both) {
    const key = join(house.dir, `${role}.p12`);
    writeFileSync(key, p12);
    const words = ['sign', file, '--certificate', key, '--as', role];
    const ran = await bookmatch(words, { typed: passphrase, now: new Date(time) });
    expect([ran.code, ran.said]).toEqual([0, expect.stringContaining(`names it under signers, as ${role}.`)]);
    file = ran.said.slice(0, ran.said.indexOf('  signed as'));
  }
  return file;
}

const verify = (pdf: Uint8Array): ReturnType<typeof bookmatch> => {
  const path = join(house.dir, 'signed.pdf');
  writeFileSync(path, pdf);
  return bookmatch(['verify', path, '--house', house.dir], { now: new Date('2026-05-04T09:00:00Z') });
};

test('both signatures are whole for poppler and qpdf too', () => {
  expect(askPoppler(signed).map(({ field, isValid }) => [field, isValid])).toEqual([
    ['owner-signature', true],
    ['builder-signature', true],
  ]);
  expect(askPoppler(signed).at(-1)?.coversAll).toBe(true);
  expect(() => askQpdf(signed)).not.toThrow();
});

test('verify names the change order, its data, its digest and its pages, and all of it holds', async () => {
  const verified = await verify(signed);
  const { code, said } = verified;
  expect(faults(verified)).toEqual([]);
  expect(code).toBe(0);
  expect(said).toMatch(/change order: 1, proposed, 20 April 2026/);
  expect(said).toMatch(/data +that of the change order, SHA-256 [0-9a-f]{64}/);
  expect(said).toMatch(/pages +the issued PDF, byte for byte, with signatures added/);
});

test('signed beside the paper, with names and days in it, and locked by the second', async () => {
  expect(readdirSync(join(house.dir, 'issued')).sort()).toEqual([
    'change-001-signed-owner-builder.pdf',
    'change-001-signed-owner.pdf',
    'change-001.pdf',
  ]);
  expect(Buffer.from(signed).toString('latin1').split('/FieldMDP')).toHaveLength(2);
  const late = addTo(
    signed,
    changeField('owner-name', () => ({ V: PDFString.of('Somebody else') })),
  );
  const ran = await verify(late);
  expect(ran.code).toBe(1);
  expect(faults(ran)[0]).toMatch(/^owner-signature: after this signature it was altered/u);
});

test('one certificate for both is told, and so is a day before the change order', async () => {
  const one = readFileSync(join(house.dir, 'issued/change-001-signed-owner.pdf'));
  const twice = await signAnyhow(one, 'builder-signature', owner);
  expect(faults(await verify(twice)).at(-1)).toMatch(/were signed with one certificate, which proves one person/u);
  const early = await sign(paper, owner, { field: 'owner-signature', at: new Date('2026-04-10T10:00:00Z') });
  expect(faults(await verify(early))).toEqual([
    'owner-signature, The owner: it says that it was made on 2026-04-10 10:00 UTC, before the day of change order 1, 20 April 2026, ' +
      'so that it is not proven when',
  ]);
});

test('it holds after the decision, which is no part of what was signed', async () => {
  await house.run('approve 1 --by owner');
  expect(house.git('show', '--name-only', '--format=', 'HEAD').trim().split('\n')).toEqual([
    'content/changes/001.md',
    'issued/change-001.pdf',
  ]);
  expect((await verify(signed)).code).toBe(0);
  expect((await house.run('print-change 1')).code).toBe(1);
});

test('accept takes it for no issue, not even one of the same number', async () => {
  await house.run('issue --for pricing');
  const path = join(house.dir, 'signed.pdf');
  writeFileSync(path, signed);
  const { code, said } = await bookmatch(['accept', path, '--house', house.dir]);
  expect(code).toBe(1);
  expect(said).toContain('bookmatch approve 1');
  expect(house.read('content/issues/001.md')).not.toContain('signatures:');
});

test('another amount in the record is another change order', async () => {
  const path = 'content/changes/001.md';
  const record = house.read(path);
  const amount = /^amount: (.*)$/mu.exec(record)?.[1] ?? '';
  writeFileSync(join(house.dir, path), record.replaceAll(`amount: ${amount}`, 'amount: $1.00'));
  const { code, said } = await verify(signed);
  expect(code).toBe(1);
  expect(said).toContain('the data attached to it is that of no change order of the house');
  writeFileSync(join(house.dir, path), record);
});

test('unsigned it is a change order too, and a book is none', async () => {
  const report = await verifyPdf(paper);
  expect(report).toMatchObject({ verdict: 'unsigned', toSign: ['owner-signature', 'builder-signature'] });
  expect(report.book).toBeUndefined();
  expect(report.changeOrder?.sha256).toMatch(/^[0-9a-f]{64}$/);
});
