import { deflateSync, strToU8 } from 'fflate';
import { crc32 } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { readCodeLine, writeCodeLine } from '../../src/slip/code-line.js';
import { decodeSlip } from '../../src/slip/index.js';

describe('what a code line packs', () => {
  test('ends with its CRC-32, the lowest byte first, as zlib figures it', () => {
    const line = writeCodeLine('2614\nand so on');
    const bytes = Buffer.from(line.slice('slip1:'.length, -1), 'base64');
    expect(bytes.readUInt32LE(bytes.length - 4)).toBe(crc32(bytes.subarray(0, -4)));
  });

  test('that would fill a disk ends where the longest slip does', () => {
    const burst = writeCodeLine('A'.repeat(40_000_000));
    expect(burst.length).toBeLessThan(64_000);
    const read = readCodeLine(burst);
    expect(read.ok && read.text.length).toBe(512_000);
    expect(decodeSlip(burst).ok).toBe(false);
  });

  test.each([
    ['nothing', ''],
    ['another thing', 'The quick brown fox'],
    ['half a choice', '2614\n4f2a\nowner\n2026-11-28\n\na/b/c\nx'],
    ['a day that there is not', '2614\n4f2a\nowner\n2026-11-31\n\na/b/c\nx\ny'],
    ['a quote that ends too soon', '2614\n4f2a\n"owner\n2026-11-28\n\na/b/c\nx\ny'],
    ['a choice of no place', '2614\n4f2a\nowner\n2026-11-28\n\n\nx\ny'],
  ])('with %s in it is no slip', (_, text) => {
    expect(decodeSlip(writeCodeLine(text))).toEqual({
      ok: false,
      why: 'its code line holds something else than a slip',
    });
  });

  test('with one place twice is refused', () => {
    const text = '2614\n4f2a\nowner\n2026-11-28\n\na/b/c\nx\ny\n/b/c\nx\nz';
    expect(decodeSlip(writeCodeLine(text))).toEqual({ ok: false, why: 'it chooses one place twice' });
  });

  test('with more choices than any house has is refused', () => {
    const choices = Array.from({ length: 2001 }, (_, index) => `a/b/${index}\n\ny`);
    const text = ['2614', '4f2a', 'owner', '2026-11-28', '', ...choices].join('\n');
    expect(decodeSlip(writeCodeLine(text))).toEqual({ ok: false, why: 'it holds more choices than any house has' });
  });

  test('of letters that are no packed text is refused', () => {
    const bytes = Buffer.alloc(24, 7);
    bytes.writeUInt32LE(crc32(bytes.subarray(0, -4)), 20);
    expect(readCodeLine(`slip1:${bytes.toString('base64').replaceAll('=', '')}.`).ok).toBe(false);
    const cut = deflateSync(strToU8('words that are many enough')).subarray(0, -3);
    const sum = Buffer.alloc(4);
    sum.writeUInt32LE(crc32(cut));
    expect(readCodeLine(`slip1:${Buffer.concat([cut, sum]).toString('base64').replaceAll('=', '')}.`).ok).toBe(false);
  });
});
