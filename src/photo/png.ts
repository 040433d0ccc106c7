import { read, unread, type Reading } from '../base/units/index.js';
import { joined, lettersAt, viewOf, type Stripped } from './bytes.js';

/** Chunks that a still picture and its colors need. Source: W3C PNG, third edition, clause 11. */
const kept: readonly string[] = [
  'IHDR',
  'PLTE',
  'IDAT',
  'IEND',
  'tRNS',
  'cHRM',
  'gAMA',
  'iCCP',
  'sBIT',
  'sRGB',
  'cICP',
  'bKGD',
  'pHYs',
];

/** A PNG without its texts, days and Exif data; of one that moves, its still picture. */
export function stripPng(bytes: Uint8Array): Reading<Stripped> {
  const broken = unread('the PNG is cut off or broken', 'copy it again');
  const view = viewOf(bytes);
  const parts = [bytes.subarray(0, 8)];
  let size: { readonly width: number; readonly height: number } | undefined;
  let hasPicture = false;
  for (let at = 8; at + 12 <= bytes.length;) {
    const [length, type] = [view.getUint32(at), lettersAt(bytes, at + 4, 4)];
    const end = at + 12 + length;
    if (end > bytes.length) return broken;
    if (!size && (type !== 'IHDR' || length !== 13)) return broken;
    size ??= { width: view.getUint32(at + 8), height: view.getUint32(at + 12) };
    hasPicture ||= type === 'IDAT';
    if (kept.includes(type)) parts.push(bytes.subarray(at, end));
    if (type === 'IEND') return hasPicture ? read({ ...size, bytes: joined(parts) }) : broken;
    at = end;
  }
  return broken;
}
