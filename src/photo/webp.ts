import { read, unread, type Reading } from '../base/units/index.js';
import { joined, lettersAt, viewOf, type Stripped } from './bytes.js';

const kept: readonly string[] = ['VP8 ', 'VP8L', 'VP8X', 'ALPH', 'ICCP'];

/** Bits of the first byte of `VP8X`. */
const [exif, xmp, moves] = [0x08, 0x04, 0x02];

/** A WebP without its Exif data and XMP. Source: RFC 9649, section 2. */
export function stripWebp(bytes: Uint8Array): Reading<Stripped> {
  const broken = unread('the WebP is cut off or broken', 'copy it again');
  const view = viewOf(bytes);
  const end = Math.min(bytes.length, 8 + view.getUint32(4, true));
  const parts: Uint8Array[] = [];
  let size: Size | undefined;
  for (let at = 12; at + 8 <= end;) {
    const [name, length] = [lettersAt(bytes, at, 4), view.getUint32(at + 4, true)];
    const next = at + 8 + length + (length % 2);
    if (at + 8 + length > end) return broken;
    const data = bytes.subarray(at + 8, at + 8 + length);
    if (name === 'ANMF' || (name === 'VP8X' && ((data[0] ?? 0) & moves) !== 0))
      return unread('the WebP moves', 'take a still picture of it');
    size ??= sizeOf(name, data);
    if (kept.includes(name)) parts.push(name === 'VP8X' ? still(bytes.subarray(at, next)) : bytes.subarray(at, next));
    at = next;
  }
  if (!size || !parts.some((part) => ['VP8 ', 'VP8L'].includes(lettersAt(part, 0, 4)))) return broken;
  const body = joined(parts);
  const head = joined([bytes.subarray(0, 4), new Uint8Array(4), bytes.subarray(8, 12)]);
  viewOf(head).setUint32(4, body.length + 4, true);
  return read({ ...size, bytes: joined([head, body]) });
}

interface Size {
  readonly width: number;
  readonly height: number;
}

function sizeOf(name: string, data: Uint8Array): Size | undefined {
  const view = viewOf(data);
  if (name === 'VP8X' && data.length >= 10)
    return { width: 1 + (view.getUint32(4, true) & 0xffffff), height: 1 + (view.getUint32(6, true) >>> 8) };
  if (name === 'VP8 ' && data.length >= 10 && lettersAt(data, 3, 3) === '\u009d\u0001*')
    return { width: view.getUint16(6, true) & 0x3fff, height: view.getUint16(8, true) & 0x3fff };
  if (name === 'VP8L' && data.length >= 5 && data[0] === 0x2f) {
    const bits = view.getUint32(1, true);
    return { width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) };
  }
  return undefined;
}

/** Without the word that there are Exif data or XMP. */
function still(chunk: Uint8Array): Uint8Array {
  const copy = chunk.slice();
  copy[8] = (copy[8] ?? 0) & ~(exif | xmp);
  return copy;
}
