import { deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { openCertificate } from '../../src/signoff/sign/index.js';
import { verifyPdf } from '../../src/signoff/verify/index.js';
import { atMost, leastTime } from '../processor-time.js';
import { seeded } from './seeded.js';
import { builder, owner, sign } from './signed.js';
import { makeSmallPdf } from './small-pdf.js';

const table = await sign(await makeSmallPdf({ streams: false }), owner, { field: 'owner-signature' });
const two = await sign(table, builder, { field: 'builder-signature' });
const streams = await sign(await makeSmallPdf(), owner);

test('600 files broken by chance: never an exception, never whole', async () => {
  const random = seeded(424242);
  const pick = (below: number): number => Math.floor(random() * below);
  for (let round = 0; round < 600; round += 1) {
    const from = [table, two, streams][round % 3] ?? table;
    const broken = breakUp(Buffer.from(from), round % 4, pick);
    const report = await verifyPdf(broken);
    if (Buffer.compare(broken, Buffer.from(from)) !== 0) expect([round, report.verdict]).not.toEqual([round, 'whole']);
  }
});

function breakUp(bytes: Buffer, way: number, pick: (below: number) => number): Buffer {
  const at = pick(bytes.length);
  const length = 1 + pick(60);
  if (way === 0) return Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + length)]);
  if (way === 1) return Buffer.concat([bytes.subarray(0, at), bytes.subarray(at, at + length), bytes.subarray(at)]);
  const copy = Buffer.from(bytes);
  if (way === 2) bytes.copy(copy, at, pick(bytes.length), bytes.length);
  else for (let count = 0; count < length; count += 1) copy[pick(copy.length)] = pick(256);
  // A copy onto itself changes nothing.
  return copy;
}

const head = '%PDF-1.7\n';

/** A file whose objects stand in order, with a table that is right. */
function file(objects: readonly (string | Buffer)[], trailer = '/Root 1 0 R'): Buffer {
  const chunks = [Buffer.from(head)];
  const offsets: number[] = [];
  let length = head.length;
  objects.forEach((object, index) => {
    const chunk = Buffer.concat([Buffer.from(`${index + 1} 0 obj\n`), Buffer.from(object), Buffer.from('\nendobj\n')]);
    offsets.push(length);
    length += chunk.length;
    chunks.push(chunk);
  });
  const rows = offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n \n`).join('');
  const end = `xref\n1 ${objects.length}\n${rows}trailer\n<< /Size ${objects.length + 1} ${trailer} >>\nstartxref\n${length}\n%%EOF\n`;
  return Buffer.concat([...chunks, Buffer.from(end)]);
}

const stream = (dict: string, bytes: Buffer): Buffer =>
  Buffer.concat([Buffer.from(`<< ${dict} /Length ${bytes.length} >>\nstream\n`), bytes, Buffer.from('\nendstream')]);

const form = (fields: string): string => `<< /Type /Catalog /AcroForm << /Fields [${fields}] >> >>`;
const bomb = deflateSync(Buffer.alloc(300 * 1024 * 1024));

const hostile: readonly (readonly [string, () => Buffer])[] = [
  ['nothing', () => Buffer.alloc(0)],
  ['only a head', () => Buffer.from(head)],
  [
    'cross-references that lead to themselves',
    () => Buffer.from(`${head}xref\n0 0\ntrailer\n<< /Prev 9 >>\nstartxref\n9\n%%EOF\n`),
  ],
  [
    'a table of a thousand million rows',
    () => Buffer.from(`${head}xref\n0 1000000000\ntrailer\n<<>>\nstartxref\n9\n%%EOF\n`),
  ],
  ['arrays in arrays', () => file([`<< /Type /Catalog /AcroForm ${'['.repeat(200_000)} >>`])],
  ['fields in a ring', () => file([form('2 0 R'), '<< /FT /Sig /T (a) /Kids [2 0 R 3 0 R] >>', '<< /Kids [2 0 R] >>'])],
  ['a reference to itself', () => file([form('2 0 R'), '2 0 R'])],
  ['an object that is not there', () => file(['<< /Type /Catalog >>'], '/Root 77 0 R')],
  ['a signature without contents', () => file([form('2 0 R'), '<< /FT /Sig /T (a) /V << /ByteRange [0 1 2 3] >> >>'])],
  [
    'a signature of a kind that is not known',
    () =>
      file([
        form('2 0 R'),
        '<< /FT /Sig /T (a) /V 3 0 R >>',
        '<< /SubFilter /Other /ByteRange [0 -1 2 3] /Contents <00> >>',
      ]),
  ],
  [
    'a stream that unpacks to 300 MB',
    () =>
      file([
        '<< /Type /Catalog /Names << /EmbeddedFiles << /Names [(book.json) 2 0 R] >> >> >>',
        '<< /F (book.json) /EF << /F 3 0 R >> >>',
        stream('/Filter /FlateDecode', bomb),
      ]),
  ],
  ['a number of a thousand digits', () => file([`<< /Type /Catalog /X ${'9'.repeat(1000)} >>`])],
];

/** Milliseconds of the processor. */
const limit = 2000;

test.each(hostile)('%s: no exception, not whole, within two seconds of the processor', async (_what, make) => {
  const bytes = make();
  const took = await leastTime(async () => {
    const { verdict, problems } = await verifyPdf(bytes);
    expect(verdict).not.toBe('whole');
    if (verdict !== 'unsigned') expect(problems[0]).toMatch(/^[^\n]{10,200}$/u);
  }, limit);
  expect(took).toBeLessThan(atMost(limit, took));
});

test('it gives up when its time is over', async () => {
  const many = Array.from({ length: 40_000 }, (_, index) => `<< /T (${index}) /FT /Tx >>`);
  const refs = many.map((_, index) => `${index + 2} 0 R`).join(' ');
  const report = await verifyPdf(file([form(refs), ...many]), { milliseconds: 1 });
  expect(report).toMatchObject({ verdict: 'unreadable', problems: ['checking took too long'] });
});

test('certificate files broken by chance are refused without an exception', () => {
  const random = seeded(99);
  const codes = new Set<string>();
  for (let round = 0; round < 60; round += 1) {
    const broken = Buffer.from(owner.p12);
    for (let count = 0; count < 1 + (round % 5); count += 1) {
      broken[Math.floor(random() * broken.length)] = Math.floor(random() * 256);
    }
    const opened = openCertificate(broken, owner.passphrase);
    codes.add(opened.ok ? 'ok' : opened.code);
    expect(JSON.stringify(opened)).not.toContain(owner.passphrase);
  }
  expect([...codes]).toContain('wrong-passphrase');
});
