import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRef, type PDFObject } from 'pdf-lib';
import { formFields, isFilled, rectOf, textOf, type FormField, type Revision } from '../pdf/index.js';
import { changedKeys } from './same-object.js';

/** Judges the new state of one object: what is wrong with it, in words. */
export type Rule = (before: PDFObject, after: PDFObject) => string | undefined;

/** What was met on the way, for the report. */
export interface Met {
  readonly signed: Set<string>;
  readonly filled: Set<string>;
  validation: boolean;
  properties: boolean;
}

interface FieldScene {
  readonly before: Revision;
  readonly after: Revision;
  readonly met: Met;
  readonly locks: (name: string) => boolean;
}

const changeable = new Set(['V', 'AP', 'AS', 'MK', 'RV', 'I', 'DA', 'F', 'M']);

/** A field that was empty when signed may be filled in or signed; one that was filled in is part of what was signed. */
export function fieldRule(field: FormField, later: FormField | undefined, scene: FieldScene): Rule {
  const { name, type } = field;
  return (old, next) => {
    if (!(old instanceof PDFDict) || !(next instanceof PDFDict)) return `the field ${name} is gone`;
    const other = changedKeys(old, next).filter((key) => !changeable.has(key));
    if (other.length > 0) return `the field ${name} was changed (${other.join(', ')})`;
    if (isFilled(scene.before, field)) {
      return type === 'signature'
        ? `the signature in ${name} was replaced`
        : `${name} was filled in when signed and was changed`;
    }
    if (scene.locks(name)) return `the field ${name} was locked by a signature`;
    if (later === undefined || !isFilled(scene.after, later))
      return `the field ${name} shows something and holds nothing`;
    scene.met[type === 'signature' ? 'signed' : 'filled'].add(name);
    return undefined;
  };
}

/** Is a new entry of a list a field of a signature, or one of its boxes, that takes no room on the page? A box that is seen could lie over what
 *  was signed, and one that nobody signed could be filled with anything. */
export function unseenSignatures(
  before: Revision,
  after: Revision,
  locks: (name: string) => boolean,
): (value: PDFObject) => boolean {
  const old = formFields(before);
  const names = new Set(old.map(({ name }) => name));
  const numbers = new Set(old.map(({ number }) => number));
  const fields = new Map(formFields(after).map((field) => [field.number, field]));
  const isUnseen = (value: PDFObject, depth: number): boolean => {
    const field = value instanceof PDFRef ? fields.get(value.objectNumber) : undefined;
    // What is not among the form's fields is a box whose signature nobody would look at.
    if (!field || depth > 4 || field.type !== 'signature' || numbers.has(field.number)) return false;
    if (field.name === '' || names.has(field.name) || !after.dict(field.value)) return false;
    if (locks(field.name) && !isTimeStamp(after, field)) return false;
    if (['A', 'AA'].some((key) => field.dict.has(PDFName.of(key))) || !takesNoRoom(after, field.dict)) return false;
    const kids = after.resolve(field.dict.get(PDFName.of('Kids')));
    return !(kids instanceof PDFArray) || kids.asArray().every((kid) => isUnseen(kid, depth + 1));
  };
  return (value) => isUnseen(value, 0);
}

/** A time-stamp of the whole document agrees to nothing (ISO 32000-2, 12.8.5). */
function isTimeStamp(revision: Revision, { value }: FormField): boolean {
  return revision.resolve(revision.dict(value)?.get(PDFName.of('Type'))) === PDFName.of('DocTimeStamp');
}

function takesNoRoom(revision: Revision, box: PDFDict): boolean {
  if (!box.has(PDFName.of('Rect'))) return true;
  const [left, bottom, right, top] = rectOf(revision, box) ?? [0, 0, 1, 1];
  const flags = revision.resolve(box.get(PDFName.of('F')));
  // Bit 2: hidden; bit 6: not shown (ISO 32000-1, table 165). Bit 6 alone would still print.
  const isHidden = flags instanceof PDFNumber && (flags.asNumber() & 2) !== 0;
  return isHidden || left === right || bottom === top;
}

/** Is a field locked by a signature that stands: by the lock of its field (ISO 32000-2, 12.7.5.5), or by what the signature itself says of fields
 *  (FieldMDP, 12.8.2.4)? */
export function lockedFields(revision: Revision): (name: string) => boolean {
  const locks = formFields(revision)
    .filter(({ type, value }) => type === 'signature' && value)
    .flatMap(({ dict, value }) => [
      revision.dict(dict.get(PDFName.of('Lock'))),
      ...transformsOf(revision, value, 'FieldMDP'),
    ])
    .flatMap((lock) => {
      if (!lock) return [];
      const list = revision.resolve(lock.get(PDFName.of('Fields')));
      const names = (list instanceof PDFArray ? list.asArray() : []).map((one) => textOf(revision.resolve(one)) ?? '');
      return [{ action: String(revision.resolve(lock.get(PDFName.of('Action')))), names }];
    });
  return (name) =>
    locks.some(({ action, names }) => {
      const isNamed = names.some((one) => name === one || name.startsWith(`${one}.`));
      return action === '/Include' ? isNamed : action === '/Exclude' ? !isNamed : true;
    });
}

/** What a signature says with one method of what may change after it: parameters of its references (ISO 32000-2, 12.8.1, table 256). */
export function transformsOf(revision: Revision, signature: PDFObject | undefined, method: string): readonly PDFDict[] {
  const list = revision.resolve(revision.dict(signature)?.get(PDFName.of('Reference')));
  const references = (list instanceof PDFArray ? list.asArray() : []).map((one) => revision.dict(one));
  return references.flatMap((reference) => {
    const isIt = revision.resolve(reference?.get(PDFName.of('TransformMethod'))) === PDFName.of(method);
    const parameters = revision.dict(reference?.get(PDFName.of('TransformParams')));
    return isIt && parameters ? [parameters] : [];
  });
}
