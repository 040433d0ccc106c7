import { read, unread, type Reading, type Unread } from '../base/units/index.js';
import { lettersAt, type Stripped } from './bytes.js';
import { stripJpeg } from './jpeg.js';
import { stripPng } from './png.js';
import { stripWebp } from './webp.js';

export type PhotoKind = 'jpg' | 'png' | 'webp';

/** A photograph that may be shown. */
export interface Photo extends Stripped {
  readonly kind: PhotoKind;
}

/** What each kind is called where it is served. */
export const photoTypes: Readonly<Record<PhotoKind, string>> = {
  jpg: 'image/jpeg',
  png: 'image/png',
  webp: 'image/webp',
};

/** How large a photograph may be: in bytes, and in pixels a side or in all. */
export interface PhotoBounds {
  readonly bytes: number;
  readonly side?: number;
  readonly pixels?: number;
}

/** Of one that is kept: in git for good, and loaded by a page over a phone. A picture of both sides needs 256 MB where it is shown. */
const kept = { bytes: 6_000_000, side: 8000 } as const satisfies PhotoBounds;

/** Of one that is only looked at once: what telephones of some 50 million pixels take. */
export const seenOnce = { bytes: 30_000_000, pixels: 64_000_000 } as const satisfies PhotoBounds;

/** The most bytes that a photograph may have which is kept. */
export const largestPhoto = kept.bytes;

const strips: Readonly<Record<PhotoKind, (bytes: Uint8Array) => Reading<Stripped>>> = {
  jpg: stripJpeg,
  png: stripPng,
  webp: stripWebp,
};

/** Reads a photograph by what is in it, whatever it is called, and takes out what tells of its taking. */
export function readPhoto(bytes: Uint8Array, bounds: PhotoBounds = kept): Reading<Photo> {
  if (bytes.length === 0) return unread('the file is empty', 'choose a photograph');
  if (bytes.length > bounds.bytes) return tooManyBytes(bytes.length, bounds);
  const kind = kindOf(bytes);
  if (kind === undefined) return unread(whatElse(bytes), 'save it as JPEG, PNG or WebP');
  const stripped = strips[kind](bytes);
  if (!stripped.ok) return stripped;
  const { width, height } = stripped.value;
  if (width === 0 || height === 0) return unread('it has no size', 'take another one');
  const most = tooWide(width, height, bounds);
  if (most !== undefined) return unread(`it is ${width} × ${height} pixels; ${most}`, 'make it smaller');
  return read({ kind, ...stripped.value });
}

/** What is said of a file with more bytes than a photograph may have. */
export function tooManyBytes(bytes: number, bounds: PhotoBounds = kept): Unread {
  const size = (bytes / 1_000_000).toFixed(1);
  return unread(`it has ${size} MB; a photograph has ${bounds.bytes / 1_000_000} MB at most`, 'make it smaller');
}

function tooWide(
  width: number,
  height: number,
  { side = Infinity, pixels = Infinity }: PhotoBounds,
): string | undefined {
  if (Math.max(width, height) > side) return `${side} a side are the most`;
  return width * height > pixels ? `${pixels / 1_000_000} million are the most` : undefined;
}

/** Is it a picture by how it begins, be it one that can be read or another? */
export function isPicture(bytes: Uint8Array): boolean {
  return kindOf(bytes) !== undefined || otherPicture(lettersAt(bytes, 0, 64)) !== undefined;
}

function kindOf(bytes: Uint8Array): PhotoKind | undefined {
  if (lettersAt(bytes, 0, 3) === '\u00ff\u00d8\u00ff') return 'jpg';
  if (lettersAt(bytes, 0, 8) === '\u0089PNG\r\n\u001a\n') return 'png';
  return lettersAt(bytes, 0, 4) === 'RIFF' && lettersAt(bytes, 8, 4) === 'WEBP' && bytes.length > 20
    ? 'webp'
    : undefined;
}

/** What people take for photographs, by how it begins. */
function whatElse(bytes: Uint8Array): string {
  const start = lettersAt(bytes, 0, 64);
  if (/^\s*(?:\u00ef\u00bb\u00bf)?\s*<(?:\?xml|svg|!doctype|!--|html)/iu.test(start))
    return 'it is a drawing or a page in text, such as SVG, which may hold scripts';
  if (start.startsWith('%PDF')) return 'it is a PDF';
  return otherPicture(start) ?? 'it is no JPEG, PNG or WebP';
}

function otherPicture(start: string): string | undefined {
  if (/^.{4}ftyp(?:hei|hev|mif|msf|avi)/su.test(start)) return 'it is HEIC or AVIF, as some phones keep pictures';
  if (/^(?:II\*\0|MM\0\*)/u.test(start)) return 'it is a TIFF, as cameras keep what they saw';
  return start.startsWith('GIF8') ? 'it is a GIF' : undefined;
}
