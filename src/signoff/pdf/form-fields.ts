import { PDFArray, PDFHexString, PDFName, PDFNumber, PDFRef, PDFString, type PDFObject, type PDFDict } from 'pdf-lib';
import { Malformed } from './malformed.js';
import type { Revision } from './pdf-file.js';

/** A field to fill in or to sign, or one of the boxes of a field that has several. */
export interface FormField {
  /** Full name: `owner-signature`, or `parent.kid`. */
  readonly name: string;
  readonly type: 'signature' | 'text' | 'button' | 'choice' | 'unknown';
  /** Object number; undefined when the dictionary stands in the list itself. */
  readonly number?: number;
  readonly dict: PDFDict;
  /** Its own value or the one of the field above. */
  readonly value?: PDFObject;
}

const types: Readonly<Record<string, FormField['type']>> = {
  '/Sig': 'signature',
  '/Tx': 'text',
  '/Btn': 'button',
  '/Ch': 'choice',
};

const mostFields = 50_000;

/** Every field of the form, and each box of a field, in order. */
export function formFields(revision: Revision): readonly FormField[] {
  const form = revision.dict(revision.dict(revision.trailer.get(PDFName.of('Root')))?.get(PDFName.of('AcroForm')));
  const list = revision.resolve(form?.get(PDFName.of('Fields')));
  if (!(list instanceof PDFArray)) return [];
  const fields: FormField[] = [];
  const seen = new Set<number>();

  const walk = (value: PDFObject, above: Partial<FormField>, depth: number): void => {
    if (depth > 32 || fields.length > mostFields) throw new Malformed('the form has too many fields');
    const number = value instanceof PDFRef ? value.objectNumber : undefined;
    if (number !== undefined && seen.has(number)) return;
    if (number !== undefined) seen.add(number);
    const dict = revision.dict(value);
    if (!dict) return;
    const own = textOf(revision.resolve(dict.get(PDFName.of('T'))));
    const name = [above.name, own].filter((part) => part !== undefined && part !== '').join('.');
    const type = types[String(revision.resolve(dict.get(PDFName.of('FT'))))] ?? above.type ?? 'unknown';
    const held = dict.get(PDFName.of('V')) ?? above.value;
    const field = { name, type, dict, ...(number !== undefined && { number }), ...(held && { value: held }) };
    fields.push(field);
    const kids = revision.resolve(dict.get(PDFName.of('Kids')));
    if (kids instanceof PDFArray) for (const kid of kids.asArray()) walk(kid, field, depth + 1);
  };

  for (const value of list.asArray()) walk(value, {}, 0);
  return fields;
}

/** The text of a string object; undefined for anything else. */
export function textOf(value: PDFObject | undefined): string | undefined {
  if (!(value instanceof PDFString) && !(value instanceof PDFHexString)) return undefined;
  try {
    return value.decodeText();
  } catch {
    return undefined;
  }
}

/** Has somebody filled the field in? An unticked box (`/Off`) and an empty text are empty. */
export function isFilled(revision: Revision, { value, type }: FormField): boolean {
  const held = revision.resolve(value);
  if (held === undefined) return false;
  if (type === 'button') return held !== PDFName.of('Off');
  return type === 'text' ? textOf(held) !== '' : true;
}

/** Left, bottom, right, top in points; undefined when it is not four numbers. */
export function rectOf(revision: Revision, dict: PDFDict): readonly number[] | undefined {
  const rect = revision.resolve(dict.get(PDFName.of('Rect')));
  const sides = rect instanceof PDFArray ? rect.asArray().map((side) => revision.resolve(side)) : [];
  const numbers = sides.flatMap((side) => (side instanceof PDFNumber ? [side.asNumber()] : []));
  return numbers.length === 4 ? numbers : undefined;
}
