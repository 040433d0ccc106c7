import { read, unread, type Reading } from '../base/units/index.js';
import { joined, lettersAt, viewOf, type Stripped } from './bytes.js';
import { orientationIn, orientationSegment } from './orientation.js';

const [startOfScan, endOfImage] = [0xda, 0xd9];

/** A camera makes one or some ten; each goes over the whole picture once more. A bound of ours. */
const mostScans = 100;

interface Segment {
  readonly marker: number;
  /** With its marker and length, and behind the start of a scan what is scanned. */
  readonly whole: Uint8Array;
  readonly data: Uint8Array;
}

/** A JPEG without its remarks and application segments, but for what its colors need and which way is up. Whatever stands behind its end is
 *  left out. Source: ITU-T T.81, annex B. */
export function stripJpeg(bytes: Uint8Array): Reading<Stripped> {
  const segments = segmentsOf(bytes);
  if (!segments) return unread('the JPEG is cut off or broken', 'copy it from the camera again');
  const frames = segments.filter(({ marker }) => isFrame(marker));
  const [frame] = frames;
  if (!frame || frames.length > 1 || frame.data.length < 6)
    return unread('the JPEG has no picture', 'take another one');
  if (segments.filter(({ marker }) => marker === startOfScan).length > mostScans)
    return unread('the JPEG is drawn in more passes than any camera makes', 'save it anew');
  const turned = segments.map(({ marker, data }) => (marker === 0xe1 ? orientationIn(data) : undefined));
  const orientation = turned.find((one) => one !== undefined) ?? 1;
  const view = viewOf(frame.data);
  const [height, width] = [view.getUint16(1), view.getUint16(3)];
  const [first, ...rest] = segments.flatMap(kept);
  const leads = first?.marker === 0xe0 ? [first] : [];
  const others = first && leads.length === 0 ? [first, ...rest] : rest;
  const parts = [
    Uint8Array.of(0xff, 0xd8),
    ...leads.map(({ whole }) => whole),
    ...(orientation === 1 ? [] : [orientationSegment(orientation)]),
    ...others.map(({ whole }) => whole),
    Uint8Array.of(0xff, endOfImage),
  ];
  const isTurned = orientation >= 5;
  return read({ width: isTurned ? height : width, height: isTurned ? width : height, bytes: joined(parts) });
}

/** Frames of every kind; 0xc4, 0xc8 and 0xcc among them are tables. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

/** The segments up to the end of the image; undefined where they do not lead there. */
function segmentsOf(bytes: Uint8Array): readonly Segment[] | undefined {
  const segments: Segment[] = [];
  let at = 2;
  while (at + 1 < bytes.length) {
    if (bytes[at] !== 0xff) return undefined;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === endOfImage) return segments;
    if (at + 4 > bytes.length) return undefined;
    const length = viewOf(bytes).getUint16(at + 2);
    const behind = at + 2 + length;
    if (length < 2 || behind > bytes.length) return undefined;
    const end = marker === startOfScan ? endOfScan(bytes, behind) : behind;
    if (end === undefined) return undefined;
    segments.push({ marker, whole: bytes.subarray(at, end), data: bytes.subarray(at + 4, behind) });
    at = end;
  }
  return undefined;
}

/** Where the next marker stands that is none of a scan's own. */
function endOfScan(bytes: Uint8Array, from: number): number | undefined {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1];
    if (next === undefined) return undefined;
    const isOwn = next === 0 || next === 0xff || (next >= 0xd0 && next <= 0xd7);
    if (!isOwn) return at;
  }
  return undefined;
}

/** What of a segment stays: pictures and tables as they are; of what programs add, what colors need. */
function kept(segment: Segment): readonly Segment[] {
  const { marker, data } = segment;
  const isProgram = (marker >= 0xe0 && marker <= 0xef) || marker === 0xfe;
  if (!isProgram) return [segment];
  if (marker === 0xe0 && lettersAt(data, 0, 5) === 'JFIF\0' && data.length >= 14)
    return [{ ...segment, whole: jfif(data) }];
  if (marker === 0xe2 && lettersAt(data, 0, 12) === 'ICC_PROFILE\0') return [segment];
  return marker === 0xee && lettersAt(data, 0, 5) === 'Adobe' ? [segment] : [];
}

/** Without the small picture that may be in it, which is of before the last cut. */
function jfif(data: Uint8Array): Uint8Array {
  return joined([Uint8Array.of(0xff, 0xe0, 0, 16), data.subarray(0, 12), Uint8Array.of(0, 0)]);
}
