import { readFile } from 'node:fs/promises';
import { Unzlib } from 'fflate';
import decodeWebp, { init } from '@jsquash/webp/decode.js';
import { packagePath } from '../../disk/program/index.js';
import { read, unread, type Reading } from '../../base/units/index.js';
import type { Photo } from '../../photo/index.js';

/** Bytes that a PNG may unpack to: 64 million pixels of red, green, blue and alpha. */
const largestUnpacked = 260_000_000;

/** Bytes unpacked at once: a thousand times as many may come of them. */
const aLittle = 16_384;

/** A photograph as what finds codes takes it: JPEG and PNG as they are, WebP as its pixels. What a PNG unpacks to is counted first: its size is a
 *  promise that it need not keep. */
export async function pixelsOf({ kind, bytes }: Photo): Promise<Reading<Uint8Array | ImageData>> {
  if (kind === 'webp') return webpPixels(bytes);
  if (kind === 'png' && !unpacksWithin(bytes, largestUnpacked))
    return unread('the PNG is broken, or unpacks to more than any photograph has', 'save it anew, as JPEG');
  return read(bytes);
}

async function webpPixels(bytes: Uint8Array): Promise<Reading<ImageData>> {
  try {
    await prepare();
    return read(await decodeWebp(Uint8Array.from(bytes).buffer));
  } catch {
    return unread('the WebP is broken', 'take the photograph again, or save it as JPEG');
  }
}

let prepared: Promise<unknown> | undefined;

/** Hands the decoder its program from the disk. */
function prepare(): Promise<unknown> {
  return (prepared ??= readFile(packagePath('@jsquash/webp', 'codec/dec/webp_dec.wasm')).then((wasm) =>
    init({ wasmBinary: Uint8Array.from(wasm).buffer }),
  ));
}

/** Source: W3C PNG, third edition, clauses 5.3 and 10. */
function unpacksWithin(png: Uint8Array, most: number): boolean {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  let size = 0;
  const unpack = new Unzlib((piece) => {
    size += piece.length;
  });
  try {
    for (let at = 8; at + 12 <= png.length;) {
      const length = view.getUint32(at);
      const isData = view.getUint32(at + 4) === 0x49444154;
      for (let from = at + 8; isData && from < at + 8 + length; from += aLittle) {
        unpack.push(png.subarray(from, Math.min(from + aLittle, at + 8 + length)));
        if (size > most) return false;
      }
      at += 12 + length;
    }
    return true;
  } catch {
    return false;
  }
}
