import { inflateSync } from 'node:zlib';
import { PDFArray, PDFDict, PDFName, PDFNumber, type PDFObject, type PDFRawStream } from 'pdf-lib';
import { Malformed, type Allowance } from './malformed.js';

/** The bytes that a stream holds: as they are, or inflated, with the PNG predictors that cross-reference streams use
 *  (ISO 32000-1, 7.4.4). Other filters have no place where this program looks. */
export function unpack(stream: PDFRawStream, allowance: Allowance): Uint8Array {
  const filter = onlyOne(stream.dict.get(PDFName.of('Filter')));
  if (filter === undefined) return stream.contents;
  if (filter !== PDFName.of('FlateDecode')) throw new Malformed(`a stream is packed by ${filter.toString()}`);
  const bytes = inflate(stream.contents, allowance);
  const parameters = onlyOne(stream.dict.get(PDFName.of('DecodeParms')));
  return parameters instanceof PDFDict ? undoPredictor(bytes, parameters) : bytes;
}

function onlyOne(object: PDFObject | undefined): PDFObject | undefined {
  if (!(object instanceof PDFArray)) return object;
  if (object.size() > 1) throw new Malformed('a stream is packed more than once');
  return object.size() === 0 ? undefined : object.get(0);
}

function inflate(bytes: Uint8Array, allowance: Allowance): Uint8Array {
  try {
    const inflated = inflateSync(bytes, { maxOutputLength: Math.max(1, allowance.left) });
    allowance.take(inflated.length);
    return inflated;
  } catch (error) {
    if (error instanceof RangeError) allowance.take(allowance.left);
    throw error instanceof Error && 'code' in error ? new Malformed('a stream cannot be unpacked') : error;
  }
}

function undoPredictor(bytes: Uint8Array, parameters: PDFDict): Uint8Array {
  const number = (key: string, otherwise: number): number => {
    const value = parameters.get(PDFName.of(key));
    return value instanceof PDFNumber ? value.asNumber() : otherwise;
  };
  const predictor = number('Predictor', 1);
  if (predictor === 1) return bytes;
  const width = number('Columns', 1);
  const isKnown = predictor >= 10 && number('Colors', 1) === 1 && number('BitsPerComponent', 8) === 8;
  if (!isKnown || !Number.isInteger(width) || width < 1 || width > 1024) throw new Malformed('unknown predictor');
  const rows = Math.floor(bytes.length / (width + 1));
  const out = new Uint8Array(rows * width);
  for (let row = 0; row < rows; row += 1) undoRow(bytes, out, row, width);
  return out;
}

/** One row by PNG's rules: the byte before it names the filter. Source: PNG specification, 9.2. */
function undoRow(bytes: Uint8Array, out: Uint8Array, row: number, width: number): void {
  const start = row * (width + 1);
  const kind = bytes[start] ?? 0;
  for (let column = 0; column < width; column += 1) {
    const at = row * width + column;
    const left = column > 0 ? (out[at - 1] ?? 0) : 0;
    const up = row > 0 ? (out[at - width] ?? 0) : 0;
    const corner = column > 0 && row > 0 ? (out[at - width - 1] ?? 0) : 0;
    const guess = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][kind];
    if (guess === undefined) throw new Malformed('unknown predictor');
    out[at] = ((bytes[start + 1 + column] ?? 0) + guess) & 0xff;
  }
}

function paeth(left: number, up: number, corner: number): number {
  const target = left + up - corner;
  const [a, b, c] = [Math.abs(target - left), Math.abs(target - up), Math.abs(target - corner)];
  if (a <= b && a <= c) return left;
  return b <= c ? up : corner;
}
