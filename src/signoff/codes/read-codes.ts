import { readFile } from 'node:fs/promises';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { packagePath } from '../../disk/program/index.js';
import { read, unread, type Reading } from '../../base/units/index.js';
import { readPhoto, seenOnce, type Photo } from '../../photo/index.js';
import { pixelsOf } from './pixels.js';

/** More sheets than lie on a table. */
const mostCodes = 64;

export interface FoundCode {
  readonly text: string;
  /** How many codes in the picture say it. */
  readonly count: number;
}

/** The codes (QR, ISO/IEC 18004) in a photograph, each text once, in the order in which they were found; none where there is none that can be read. The
 *  texts are whatever somebody wrote into a code. Nothing is asked over the network. */
export async function readCodes(bytes: Uint8Array): Promise<Reading<readonly FoundCode[]>> {
  const photo = readPhoto(bytes, seenOnce);
  if (!photo.ok) return photo;
  const pixels = await pixelsOf(photo.value);
  if (!pixels.ok) return pixels;
  const found = await decode(pixels.value);
  if (!found) return undecoded(photo.value);
  const texts = new Map<string, number>();
  for (const text of found) texts.set(text, (texts.get(text) ?? 0) + 1);
  return read([...texts].map(([text, count]) => ({ text, count })));
}

/** Undefined where the picture cannot be decoded. */
async function decode(picture: Uint8Array | ImageData): Promise<readonly string[] | undefined> {
  await prepare();
  try {
    const results = await readBarcodes(picture, {
      formats: ['QRCode'],
      maxNumberOfSymbols: mostCodes,
      // What is printed is dark on white.
      tryInvert: false,
      textMode: 'Plain',
    });
    return results.some(({ error }) => error !== '') ? undefined : results.map(({ text }) => text);
  } catch {
    // It ran out of the memory that it may have.
    return undefined;
  }
}

function undecoded({ kind }: Photo): Reading<never> {
  const name = { jpg: 'JPEG', png: 'PNG', webp: 'WebP' }[kind];
  return unread(`the ${name} is broken, or of a sort that few programs read`, 'take the photograph again');
}

let prepared: Promise<unknown> | undefined;

/** Hands the decoder its program from the disk: left to itself, it would load it from an address. */
function prepare(): Promise<unknown> {
  return (prepared ??= readFile(packagePath('zxing-wasm/reader/zxing_reader.wasm', 'zxing_reader.wasm')).then((wasm) =>
    prepareZXingModule({ overrides: { wasmBinary: Uint8Array.from(wasm).buffer }, fireImmediately: true }),
  ));
}
