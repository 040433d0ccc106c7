import {
  PDFArray,
  PDFDict,
  PDFHexString,
  PDFNumber,
  PDFRawStream,
  PDFString,
  type PDFName,
  type PDFObject,
} from 'pdf-lib';

/** Do two objects say the same? Order of keys and way of writing a string or a number do not count; what they refer to is
 *  not looked into. */
export function sameObject(a: PDFObject | undefined, b: PDFObject | undefined): boolean {
  if (a === undefined || b === undefined || a === b) return a === b;
  if (a instanceof PDFDict) return b instanceof PDFDict && changedKeys(a, b).length === 0;
  if (a instanceof PDFArray) return b instanceof PDFArray && sameList(a.asArray(), b.asArray());
  if (a instanceof PDFRawStream) {
    return b instanceof PDFRawStream && sameObject(a.dict, b.dict) && sameBytes(a.contents, b.contents);
  }
  if (isString(a)) return isString(b) && sameBytes(a.asBytes(), b.asBytes());
  if (a instanceof PDFNumber) return b instanceof PDFNumber && a.asNumber() === b.asNumber();
  return a.toString() === b.toString();
}

/** Names, without the slash, of the keys whose values differ or that only one has. */
export function changedKeys(before: PDFDict | undefined, after: PDFDict): readonly string[] {
  const names = new Set<PDFName>([...(before?.keys() ?? []), ...after.keys()]);
  return [...names].filter((name) => !sameObject(before?.get(name), after.get(name))).map((name) => name.decodeText());
}

function sameList(a: readonly PDFObject[], b: readonly PDFObject[]): boolean {
  return a.length === b.length && a.every((one, index) => sameObject(one, b[index]));
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return Buffer.compare(a, b) === 0;
}

function isString(object: PDFObject): object is PDFString | PDFHexString {
  return object instanceof PDFString || object instanceof PDFHexString;
}
