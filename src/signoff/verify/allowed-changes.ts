import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRawStream, PDFRef, type PDFObject } from 'pdf-lib';
import { formFields, isFilled, pagesOf, type FormField, type Revision } from '../pdf/index.js';
import { fieldRule, lockedFields, transformsOf, unseenSignatures, type Met, type Rule } from './field-rules.js';
import type { LaterChange } from './report.js';
import { changedKeys, sameObject } from './same-object.js';

interface Allowed {
  /** By object number; an object without a rule may not change. */
  readonly rules: ReadonlyMap<number, Rule>;
  /** A signer allowed no change at all. */
  readonly locked: boolean;
  /** A signer locked all fields, so that there is nothing left to add. */
  readonly complete: boolean;
  /** What the rules met, once they have run. */
  found(): readonly LaterChange[];
}

/** Rules for the objects of a signed state that an added revision may change: catalog, form, lists of fields, pages (for
 *  their list of annotations), fields, validation data, document properties. */
export function allowedChanges(before: Revision, after: Revision, references: ReadonlyMap<number, number>): Allowed {
  const met: Met = { signed: new Set(), filled: new Set(), validation: false, properties: false };
  const rules = new Map<number, Rule>();
  // An object in two parts at once may not change: what is allowed in one would show in the other.
  const allow = (value: PDFObject | number | undefined, rule: Rule, most = Number.POSITIVE_INFINITY): void => {
    const number = value instanceof PDFRef ? value.objectNumber : value;
    if (typeof number !== 'number' || (references.get(number) ?? 0) > most) return;
    rules.set(number, rules.has(number) ? () => `object ${number} has two parts to play` : rule);
  };
  const rootRef = before.trailer.get(PDFName.of('Root'));
  const root = before.dict(rootRef);
  const form = root?.get(PDFName.of('AcroForm'));
  const formDict = before.dict(form);
  const locks = lockedFields(before);
  const isUnseen = unseenSignatures(before, after, locks);

  const listRule: Rule = (old, next) => checkList(old, next, isUnseen);
  const formRule: Rule = (old, next) => checkForm(old, next);
  const properties: Rule = (_old, next) => {
    met.properties = true;
    return next instanceof PDFDict || next instanceof PDFRawStream ? undefined : 'its properties are gone';
  };
  const validation: Rule = () => {
    met.validation = true;
    return undefined;
  };

  const checkForm = (old: PDFObject | undefined, next: PDFObject | undefined): string | undefined => {
    if (!(next instanceof PDFDict)) return 'its form is gone';
    const was = old instanceof PDFDict ? old : undefined;
    for (const key of changedKeys(was, next)) {
      const [one, other] = [before.resolve(was?.get(PDFName.of(key))), after.resolve(next.get(PDFName.of(key)))];
      if (key === 'Fields') {
        const wrong = checkList(one, other, isUnseen);
        if (wrong !== undefined) return wrong;
      } else if (key === 'DR') {
        if (!isExtended(one, other, 3)) return 'the fonts of its form were changed';
      } else if (key !== 'SigFlags' && !(key === 'DA' && one === undefined)) {
        return `its form was changed (${key})`;
      }
    }
    return undefined;
  };

  allow(rootRef, (old, next) => {
    if (!(old instanceof PDFDict) || !(next instanceof PDFDict)) return 'its catalog is gone';
    for (const key of changedKeys(old, next)) {
      const name = PDFName.of(key);
      if (key === 'AcroForm') {
        const wrong = checkForm(before.resolve(old.get(name)), after.resolve(next.get(name)));
        if (wrong !== undefined) return wrong;
      } else if (key === 'DSS') met.validation = true;
      else if (key === 'Metadata') met.properties = true;
      else if (key !== 'Extensions') return `the document was changed (${key})`;
    }
    return undefined;
  });
  allow(form, formRule);
  allow(formDict?.get(PDFName.of('Fields')), listRule);

  for (const { number, dict } of pagesOf(before)) {
    allow(number, (old, next) => {
      if (!(old instanceof PDFDict) || !(next instanceof PDFDict)) return 'a page is gone';
      const other = changedKeys(old, next).filter((key) => key !== 'Annots' && key !== 'Tabs');
      if (other.length > 0) return `a page was changed (${other.join(', ')})`;
      const [was, is] = [old, next].map((page) => page.get(PDFName.of('Annots')));
      return sameObject(was, is) ? undefined : checkList(before.resolve(was), after.resolve(is), isUnseen);
    });
    allow(dict.get(PDFName.of('Annots')), listRule);
  }

  const later = new Map(
    formFields(after).flatMap((field) => (field.number === undefined ? [] : [[field.number, field]])),
  );
  for (const field of formFields(before)) {
    if (field.number === undefined) continue;
    allow(
      field.number,
      fieldRule(field, later.get(field.number) as FormField | undefined, { before, after, met, locks }),
    );
    const look = before.dict(field.dict.get(PDFName.of('AP')))?.get(PDFName.of('N'));
    if (!isFilled(before, field) && !locks(field.name)) allow(look, (_old, next) => lookRule(next), 1);
  }

  allow(root?.get(PDFName.of('Metadata')), properties, 1);
  allow(before.trailer.get(PDFName.of('Info')), properties, 0);
  for (const ref of refsBelow(before, root?.get(PDFName.of('DSS')))) allow(ref, validation, 1);

  return {
    rules,
    locked: isLocked(before, root),
    complete: formFields(before).length > 0 && formFields(before).every(({ name }) => locks(name)),
    found: () => [
      ...(met.filled.size > 0 ? [{ kind: 'filled' as const, fields: [...met.filled] }] : []),
      ...(met.signed.size > 0 || newSignatures(before, after).length > 0
        ? [{ kind: 'signature' as const, fields: [...new Set([...met.signed, ...newSignatures(before, after)])] }]
        : []),
      ...(met.validation ? [{ kind: 'validation-data' as const }] : []),
      ...(met.properties ? [{ kind: 'document-properties' as const }] : []),
    ],
  };
}

function lookRule(next: PDFObject): string | undefined {
  return next instanceof PDFRawStream ? undefined : 'the look of a field is gone';
}

/** Everything of the old list must stand in the new one, in order; what is new must be a signature that is not seen. */
function checkList(
  old: PDFObject | undefined,
  next: PDFObject | undefined,
  isUnseen: (value: PDFObject) => boolean,
): string | undefined {
  const was = old instanceof PDFArray ? old.asArray() : [];
  if (!(next instanceof PDFArray)) return 'a list of fields is gone';
  let kept = 0;
  for (const one of next.asArray()) {
    if (kept < was.length && sameObject(one, was[kept])) kept += 1;
    else if (!isUnseen(one)) return 'a field, a note or a box was added or moved';
  }
  return kept === was.length ? undefined : 'a field or a note was taken out';
}

/** Does the new dictionary hold all that the old one did, some levels deep? */
function isExtended(old: PDFObject | undefined, next: PDFObject | undefined, levels: number): boolean {
  if (old === undefined || sameObject(old, next)) return true;
  if (levels === 0 || !(old instanceof PDFDict) || !(next instanceof PDFDict)) return false;
  return old.entries().every(([key, value]) => isExtended(value, next.get(key), levels - 1));
}

function newSignatures(before: Revision, after: Revision): readonly string[] {
  const signed = (revision: Revision): readonly string[] =>
    formFields(revision)
      .filter(({ type, value }) => type === 'signature' && value)
      .map(({ name }) => name);
  const old = new Set(signed(before));
  return signed(after).filter((name) => !old.has(name));
}

/** A certifying signature that allows no change (DocMDP with P = 1; ISO 32000-2, 12.8.2.2), or the lock of a signed field that says so (12.7.5.5). */
function isLocked(revision: Revision, root: PDFDict | undefined): boolean {
  const certifying = revision.dict(root?.get(PDFName.of('Perms')))?.get(PDFName.of('DocMDP'));
  const signed = formFields(revision).filter(({ type, value }) => type === 'signature' && value);
  const says = [
    ...[certifying, ...signed.map(({ value }) => value)].flatMap((one) => transformsOf(revision, one, 'DocMDP')),
    ...signed.map(({ dict }) => revision.dict(dict.get(PDFName.of('Lock')))),
  ];
  return says.some((one) => {
    const level = revision.resolve(one?.get(PDFName.of('P')));
    return level instanceof PDFNumber && level.asNumber() === 1;
  });
}

function refsBelow(revision: Revision, value: PDFObject | undefined): readonly PDFRef[] {
  const refs = new Map<number, PDFRef>();
  const walk = (one: PDFObject | undefined, depth: number): void => {
    if (one === undefined || depth > 8 || refs.size > 10_000) return;
    if (one instanceof PDFRef) {
      if (refs.has(one.objectNumber)) return;
      refs.set(one.objectNumber, one);
      walk(revision.resolve(one), depth + 1);
    } else if (one instanceof PDFArray) one.asArray().forEach((part) => walk(part, depth + 1));
    else if (one instanceof PDFDict) one.values().forEach((part) => walk(part, depth + 1));
  };
  walk(value, 0);
  return [...refs.values()];
}
