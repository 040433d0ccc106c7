import { deflateSync } from 'node:zlib';
import { encode } from 'uqr';

/** Pixels of a module. */
const module = 6;

/** A PNG of codes with these texts, one beneath another on white, and of nothing else. */
export function codedPicture(...texts: readonly string[]): Uint8Array {
  const codes = texts.map((text) => encode(text, { ecc: 'M', border: 4 }).data);
  const width = Math.max(...codes.map(({ length }) => length)) * module;
  const rows = codes.flatMap((code) =>
    code.flatMap((line) => {
      const row = Buffer.alloc(width + 1, 255);
      // No filter.
      row[0] = 0;
      for (let x = 0; x < line.length * module; x += 1) if (line[Math.floor(x / module)] === true) row[x + 1] = 0;
      return Array.from({ length: module }, () => row);
    }),
  );
  return grayPng(width, rows.length, deflateSync(Buffer.concat(rows)));
}

/** A PNG of eight bits of gray with packed data that need not be those of its size. Check sums are left out: nothing looks at them. */
export function grayPng(width: number, height: number, packed: Uint8Array): Uint8Array {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.writeUInt8(8, 8);
  return Buffer.concat([
    Buffer.from('\u0089PNG\r\n\u001a\n', 'latin1'),
    chunk('IHDR', head),
    chunk('IDAT', packed),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Uint8Array): Buffer {
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  return Buffer.concat([length, Buffer.from(type, 'latin1'), data, sum]);
}
