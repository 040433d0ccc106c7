import process from 'node:process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readListFile, readWorkbook, workbookKind } from '../../src/disk/store/index.js';
import { packed, workbook, workbookParts } from '../draft/list/workbook.js';
import { atMost, processorTimeSince } from '../processor-time.js';

const dir = mkdtempSync(join(tmpdir(), 'bookmatch-list-'));
afterAll(() => rmSync(dir, { recursive: true }));

describe('a workbook', () => {
  test('gives the values that its cells had when it was saved', async () => {
    const bytes = workbook([
      ['Product', 'Price', 'Since', 'Sum', 'Open', 'In stock'],
      ['  Ash & oak ', 12.4, { day: 46_132 }, { formula: '1/3', value: 1 / 3 }, { formula: 'A1' }, true],
    ]);
    expect(workbookKind(bytes)).toBe('xlsx');
    // 46 132 days after 30 December 1899 is 20 April 2026.
    expect(await readWorkbook(bytes)).toEqual({
      ok: true,
      value: [
        ['Product', 'Price', 'Since', 'Sum', 'Open', 'In stock'],
        ['Ash & oak', 12.4, '2026-04-20', 1 / 3, '', 'yes'],
      ],
    });
  });

  test('has its sheets by name', async () => {
    const bytes = workbook([['a']]);
    expect(await readWorkbook(bytes, 'Prices')).toEqual({ ok: true, value: [['a']] });
    expect(await readWorkbook(bytes, 'Price')).toMatchObject({ ok: false, why: "it has no sheet 'Price'" });
  });

  test.each([
    ['nothing', new Uint8Array()],
    ['no ZIP', new TextEncoder().encode('PK\u0003\u0004 and then something else')],
    ['another archive', packed({ 'a.txt': 'a' })],
    ['no sheet', packed({ ...workbookParts([]), 'xl/worksheets/sheet1.xml': '' })],
    ['broken XML', workbook([], '<row r="1"><c r="A1"><v>1</row>')],
    ['cells without a place', workbook([], '<row r="1"><c><v>1</v></c></row>')],
    ['the half of one', workbook([['a', 1]]).subarray(0, 300)],
  ])('that holds %s is refused in words', async (_, bytes) => {
    const grid = await readWorkbook(bytes);
    if (grid.ok) expect(grid.value).toEqual([]);
    else expect(grid.why).toMatch(/^the workbook /u);
  });
});

describe('what grows is refused before it does', () => {
  const far = (row: string, cell: string): Uint8Array =>
    workbook([], `<row r="${row}"><c r="${cell}"><v>1</v></c></row>`);
  const blank = '<row r="1"><c r="A1"><v>1</v></c></row>' + ' '.repeat(60_000_000);

  test.each([
    ['a row far below', far('9999999', 'A9999999'), 'it has more than 20000 rows'],
    ['a row farther than any', far('99999999999', 'A1'), 'the workbook has cells without a place'],
    ['a column far out', far('1', 'ZZZ1'), 'it has more than 200 columns'],
    ['a column farther than any', far('1', 'ZZZZZZZZ1'), 'the workbook has cells without a place'],
    ['a place behind signs of XML', far('&#57;999999', 'A1'), 'the workbook has cells without a place'],
    ['sixty megabytes in sixty kilobytes', workbook([], blank), 'it unpacks to more than a list of prices has'],
    [
      'the same, and says that it has ten bytes',
      lying(workbook([], blank)),
      'it unpacks to more than a list of prices has',
    ],
    [
      'very many parts',
      packed({ ...Object.fromEntries(Array.from({ length: 600 }, (__, at) => [`x${at}`, ''])), ...workbookParts([]) }),
      'it unpacks to more than a list of prices has',
    ],
  ])('%s', async (_, bytes, why) => {
    const start = process.cpuUsage();
    expect(await readWorkbook(bytes)).toMatchObject({ ok: false, why });
    const took = processorTimeSince(start);
    expect(took).toBeLessThan(atMost(2500, took));
  });

  test('a file of more than ten megabytes is not read', async () => {
    const path = join(dir, 'large.csv');
    writeFileSync(path, Buffer.alloc(10_000_001, 'a'));
    expect(await readListFile(path)).toMatchObject({ ok: false, why: 'it has 10.0 MB; a list has 10 MB at most' });
  });

  test('a folder is no list', async () => {
    expect(await readListFile(dir)).toMatchObject({ ok: false, why: 'it is no file' });
  });
});

/** A ZIP whose parts all say that they unpack to ten bytes. */
function lying(zip: Uint8Array): Uint8Array {
  const bytes = Buffer.from(zip);
  // The size unpacked stands 22 bytes into the head of a part, and 24 into its entry in the list at the end. Source: APPNOTE.TXT 4.3.7, 4.3.12.
  for (const [mark, at] of [
    [0x04034b50, 22],
    [0x02014b50, 24],
  ] as const)
    for (let from = 0; from < bytes.length - 30; from += 1)
      if (bytes.readUInt32LE(from) === mark) bytes.writeUInt32LE(10, from + at);
  return new Uint8Array(bytes);
}
