import { read, unread, type Reading } from '../base/units/index.js';
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

/** The most bytes that a photograph may have: it is kept in git for good, and a page loads it over a phone. */
export const largestPhoto = 6_000_000;

/** The longest side, in pixels; a picture of both needs 256 MB where it is shown. */
const longestSide = 8000;

const strips: Readonly<Record<PhotoKind, (bytes: Uint8Array) => Reading<Stripped>>> = {
  jpg: stripJpeg,
  png: stripPng,
  webp: stripWebp,
};

/** Reads a photograph by what is in it, whatever it is called, and takes out what tells of its taking. */
export function readPhoto(bytes: Uint8Array): Reading<Photo> {
  if (bytes.length === 0) return unread('the file is empty', 'choose a photograph');
  if (bytes.length > largestPhoto) {
    const size = (bytes.length / 1_000_000).toFixed(1);
    return unread(`it has ${size} MB; a photograph has ${largestPhoto / 1_000_000} MB at most`, 'make it smaller');
  }
  const kind = kindOf(bytes);
  if (kind === undefined) return unread(whatElse(bytes), 'save it as JPEG, PNG or WebP');
  const stripped = strips[kind](bytes);
  if (!stripped.ok) return stripped;
  const { width, height } = stripped.value;
  if (width === 0 || height === 0) return unread('it has no size', 'take another one');
  if (Math.max(width, height) > longestSide)
    return unread(`it is ${width} × ${height} pixels; ${longestSide} a side are the most`, 'make it smaller');
  return read({ kind, ...stripped.value });
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
  if (/^.{4}ftyp(?:hei|hev|mif|msf|avi)/su.test(start)) return 'it is HEIC or AVIF, as some phones keep pictures';
  if (start.startsWith('GIF8')) return 'it is a GIF';
  if (start.startsWith('%PDF')) return 'it is a PDF';
  return 'it is no JPEG, PNG or WebP';
}
