import { PDFArray, PDFHexString, PDFName, PDFNumber, type PDFDict } from 'pdf-lib';
import { lastStart, type PdfFile, type Revision } from '../pdf/index.js';

/** The bytes a signature speaks of, and the signature itself. */
export interface SignedRange {
  /** Offset and end of the hole that holds the signature. */
  readonly hole: readonly [number, number];
  /** End of the signed bytes. */
  readonly end: number;
  /** The CMS message, without the zeros that fill the hole. */
  readonly contents: Uint8Array;
  /** The revision that ends there. */
  readonly revision: number;
}

/** Reads and proves the range: from the file's first byte to the end of a revision, with one hole that is exactly the
 *  signature's own `Contents` and stands inside its own object. Returns what is wrong, in words. */
export function readSignedRange(
  { bytes, revisions }: PdfFile,
  revision: Revision,
  dict: PDFDict,
  object: number,
): SignedRange | string {
  const ranges = revision.resolve(dict.get(PDFName.of('ByteRange')));
  const values = ranges instanceof PDFArray ? ranges.asArray() : [];
  const numbers = values.map((value) => (value instanceof PDFNumber ? value.asNumber() : -1));
  if (numbers.length !== 4 || numbers.some((value) => !Number.isInteger(value) || value < 0)) {
    return 'its byte range is not four numbers';
  }
  const [first = 0, holeStart = 0, holeEnd = 0, rest = 0] = numbers;
  const end = holeEnd + rest;
  if (first !== 0 || holeStart >= holeEnd || end > bytes.length) return 'its byte range does not fit the file';
  const span = revision.span(object);
  if (!span || holeStart < span.start || holeEnd > span.end)
    return 'the hole in its byte range is not in the signature';
  const held = dict.get(PDFName.of('Contents'));
  const text = Buffer.from(bytes.buffer, bytes.byteOffset + holeStart, holeEnd - holeStart).toString('latin1');
  if (!(held instanceof PDFHexString) || text !== held.toString() || !/^<(?:[0-9a-fA-F]{2})+>$/u.test(text)) {
    return 'the hole in its byte range is not its contents';
  }
  const contents = withoutFilling(Buffer.from(text.slice(1, -1), 'hex'));
  if (!contents) return 'its contents are not one message and zeros';
  const at = revisions.findIndex(({ section }) => section.start === lastStart(bytes, end));
  if (at < 0 || !endsFile(bytes, end)) return 'its byte range does not reach the end of a revision';
  return { hole: [holeStart, holeEnd], end, contents, revision: at };
}

/** Do the bytes before `end` end a file: `%%EOF` and at most one end of line? */
export function endsFile(bytes: Uint8Array, end: number): boolean {
  const tail = Buffer.from(bytes.buffer, bytes.byteOffset + Math.max(0, end - 8), Math.min(8, end)).toString('latin1');
  return /%%EOF(?:\r\n|\n|\r)?$/u.test(tail);
}

/** The first DER value, when only zeros follow it (ITU-T X.690, 8.1.3). */
function withoutFilling(bytes: Uint8Array): Uint8Array | undefined {
  const first = bytes[1] ?? 0;
  const count = first < 0x80 ? 0 : first & 0x7f;
  if (bytes[0] !== 0x30 || count > 4 || first === 0x80) return undefined;
  let length = count === 0 ? first : 0;
  for (let index = 0; index < count; index += 1) length = length * 256 + (bytes[2 + index] ?? 0);
  const end = 2 + count + length;
  if (end > bytes.length || bytes.subarray(end).some((byte) => byte !== 0)) return undefined;
  return bytes.subarray(0, end);
}
