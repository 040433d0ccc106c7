import { joined, lettersAt, viewOf } from './bytes.js';

/** Which way is up, 1 to 8, as an Exif segment says; undefined for another segment, and where it says nothing that is known. Source: Exif 2.3, tag
 *  0x0112 of the first directory. */
export function orientationIn(data: Uint8Array): number | undefined {
  if (lettersAt(data, 0, 6) !== 'Exif\0\0' || data.length < 16) return undefined;
  const view = viewOf(data.subarray(6));
  const isLittle = lettersAt(data, 6, 2) === 'II';
  const directory = view.getUint32(4, isLittle);
  if (directory + 2 > view.byteLength) return undefined;
  const count = view.getUint16(directory, isLittle);
  for (let entry = directory + 2, left = count; left > 0 && entry + 12 <= view.byteLength; entry += 12, left -= 1) {
    if (view.getUint16(entry, isLittle) !== 0x0112) continue;
    const turned = view.getUint16(entry + 8, isLittle);
    return turned >= 1 && turned <= 8 ? turned : undefined;
  }
  return undefined;
}

/** An Exif segment that says which way is up, and nothing else. */
export function orientationSegment(turned: number): Uint8Array {
  const exif = [0xff, 0xe1, 0, 34, ...[...'Exif\0\0'].map((letter) => letter.charCodeAt(0))];
  const head = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1];
  const entry = [0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, turned, 0, 0];
  return joined([Uint8Array.from(exif), Uint8Array.from(head), Uint8Array.from(entry), new Uint8Array(4)]);
}
