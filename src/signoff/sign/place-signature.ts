import { PDFArray, PDFDict, PDFHexString, PDFName, PDFNumber, PDFString, type PDFObject, type PDFRef } from 'pdf-lib';
import { pagesOf, rectOf, type Additions, type FormField, type PdfFile, type Revision } from '../pdf/index.js';
import { entryFont, makeAppearance, type EntryFont } from './appearance.js';

interface Placing {
  readonly file: PdfFile;
  readonly revision: Revision;
  readonly additions: Additions;
}

interface Words {
  readonly name: string;
  readonly reason: string;
  readonly location?: string;
  readonly at: Date;
  /** Bytes that are kept free for the signature. */
  readonly room: number;
  /** It is the last one: no field may be filled in or signed after it. */
  readonly locks?: boolean;
}

/** Puts an unsigned signature into a field that there is, with the name and day to be seen in its box. */
export function signField(placing: Placing, field: FormField, words: Words): void {
  const { file, revision, additions } = placing;
  const dict = field.dict.clone(file.context);
  dict.set(PDFName.of('V'), additions.add(signatureText(words, revision)));
  setAppearance(placing, dict, [words.name, printInstant(words.at), words.reason], false);
  additions.put(numberOf(field), dict);
  markSigned(placing, formOf(revision), []);
}

/** Puts an unsigned signature into a new field that is not seen. */
export function signInvisibly(placing: Placing, name: string, words: Words): void {
  const { file, revision, additions } = placing;
  const [page] = pagesOf(revision);
  const dict = file.context.obj({
    Type: 'Annot',
    Subtype: 'Widget',
    FT: 'Sig',
    T: PDFHexString.fromText(name),
    TU: PDFHexString.fromText(`Signature of ${words.name}`),
    Rect: [0, 0, 0, 0],
    // Printed and locked.
    F: 132,
  });
  dict.set(PDFName.of('V'), additions.add(signatureText(words, revision)));
  const widget = additions.add(dict);
  if (page) {
    const old = page.dict.get(PDFName.of('Annots'));
    const list = revision.resolve(old);
    const annotations = file.context.obj([...(list instanceof PDFArray ? list.asArray() : []), widget]);
    const changed = page.dict.clone(file.context);
    changed.set(PDFName.of('Annots'), annotations);
    additions.put(page.number, changed);
  }
  markSigned(placing, formOf(revision), [widget]);
}

/** Fills a text field in. */
export function fillField(placing: Placing, field: FormField, text: string): void {
  const dict = field.dict.clone(placing.file.context);
  dict.set(PDFName.of('V'), PDFHexString.fromText(text));
  setAppearance(placing, dict, [text], true);
  placing.additions.put(numberOf(field), dict);
}

/** `2026-04-20 15:04 UTC`. */
export function printInstant(at: Date): string {
  return `${at.toISOString().slice(0, 16).replace('T', ' ')} UTC`;
}

function setAppearance(placing: Placing, dict: PDFDict, lines: readonly string[], isEntry: boolean): void {
  const { file, revision, additions } = placing;
  const [left = 0, bottom = 0, right = 0, top = 0] = rectOf(revision, dict) ?? [];
  const [width, height] = [Math.abs(right - left), Math.abs(top - bottom)];
  if (width === 0 || height === 0) return;
  const look = { width, height, lines, size: 10, isEntry };
  const appearance = additions.add(makeAppearance(file.context, fontOf(placing), look));
  dict.set(PDFName.of('AP'), file.context.obj({ N: appearance }));
}

function fontOf({ file, revision, additions }: Placing): EntryFont {
  const font = entryFont(file.context, revision, formOf(revision).dict);
  return font.font instanceof PDFDict ? { ...font, font: additions.add(font.font) } : font;
}

interface Form {
  readonly dict: PDFDict | undefined;
  readonly number?: number;
}

function formOf(revision: Revision): Form {
  const held = revision.dict(revision.trailer.get(PDFName.of('Root')))?.get(PDFName.of('AcroForm'));
  const dict = revision.dict(held);
  return { dict, ...(dict && held && isRef(held) && { number: held.objectNumber }) };
}

/** Marks the form as signed and to be added to only; new fields join its list. */
function markSigned({ file, revision, additions }: Placing, form: Form, fields: readonly PDFRef[]): void {
  const changed = form.dict?.clone(file.context) ?? PDFDict.withContext(file.context);
  changed.set(PDFName.of('SigFlags'), PDFNumber.of(3));
  const list = revision.resolve(changed.get(PDFName.of('Fields')));
  const all = [...(list instanceof PDFArray ? list.asArray() : []), ...fields];
  if (fields.length > 0 || !(list instanceof PDFArray)) changed.set(PDFName.of('Fields'), file.context.obj(all));
  if (form.number !== undefined) return additions.put(form.number, changed);
  const root = revision.trailer.get(PDFName.of('Root'));
  const catalog = revision.dict(root)?.clone(file.context);
  if (!catalog || !root || !isRef(root)) return;
  catalog.set(PDFName.of('AcroForm'), form.dict ? changed : additions.add(changed));
  additions.put(root.objectNumber, catalog);
}

/** A signature dictionary with room for what the signer makes, as PAdES wants it (EN 319 142-1, 6.3, from memory): its kind, and the time in `M` and
 *  nowhere else. It is written as text: the signer looks for these words. */
function signatureText({ name, reason, location, at, room, locks = false }: Words, revision: Revision): string {
  const text = (value: string): string => PDFHexString.fromText(value).toString();
  return [
    '<< /Type /Sig /Filter /Adobe.PPKLite /SubFilter /ETSI.CAdES.detached',
    '/ByteRange [0 /********** /********** /**********]',
    `/Contents <${'00'.repeat(room)}>`,
    `/M ${PDFString.fromDate(at).toString()}`,
    `/Name ${text(name)}`,
    `/Reason ${text(reason)}`,
    ...(location === undefined ? [] : [`/Location ${text(location)}`]),
    ...(locks ? [lockText(revision)] : []),
    '/Prop_Build << /Filter << /Name /Adobe.PPKLite >> /App << /Name /Bookmatch >> >> >>',
  ].join('\n');
}

/** Locks every field by what the signature says itself (FieldMDP; ISO 32000-2, 12.8.2.4). A lock in the field's own dictionary (12.7.5.5) would be a
 *  change to a field that others have signed with. */
function lockText(revision: Revision): string {
  const root = String(revision.trailer.get(PDFName.of('Root')));
  const all = '<< /Type /TransformParams /V /1.2 /Action /All >>';
  return `/Reference [<< /Type /SigRef /TransformMethod /FieldMDP /TransformParams ${all} /Data ${root} >>]`;
}

function isRef(object: PDFObject): object is PDFRef {
  return 'objectNumber' in object;
}

function numberOf({ number, name }: FormField): number {
  if (number === undefined) throw new TypeError(`the field ${name} is not an object of its own`);
  return number;
}
