import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { verifyPdf } from '../../src/signoff/verify/index.js';
import { askPoppler, askQpdf } from '../signoff/outside-tools.js';
import { builder, owner, sign } from '../signoff/signed.js';
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
  const fill = { 'owner-name': 'The owner', 'owner-date': '1 May 2026' };
  const one = await sign(paper, owner, { field: 'owner-signature', fill });
  signed = await sign(one, builder, { field: 'builder-signature', at: new Date('2026-05-03T08:30:00Z') });
});
afterAll(() => house.remove());

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
