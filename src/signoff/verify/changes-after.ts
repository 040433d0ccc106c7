import type { PDFObject } from 'pdf-lib';
import type { PdfFile } from '../pdf/index.js';
import { findStrayBytes, type Span } from './added-bytes.js';
import { allowedChanges } from './allowed-changes.js';
import { countReferences } from './references.js';
import { looseObjects } from './loose-objects.js';
import type { LaterChange } from './report.js';
import { sameObject } from './same-object.js';

/** What was done to a signed state of a file. Everything is an alteration but: a signature in an empty or unseen field, empty
 *  fields filled in, data to check certificates, and document properties. */
export function changesAfter(file: PdfFile, span: Span): readonly LaterChange[] {
  const before = file.revisions[span.before];
  const after = file.revisions[span.after];
  const stray = findStrayBytes(file, span);
  if (!before || !after || stray !== undefined) return [altered(stray ?? 'its revisions cannot be told apart')];
  const references = countReferences(before, span.from);
  if (!references) return [altered('its signed part cannot be read')];
  const allowed = allowedChanges(before, after, references);
  if (allowed.locked) return [altered('a signer allowed no change')];
  for (const number of after.entries.keys()) {
    if (after.entries.get(number) === before.entries.get(number)) continue;
    const why = judge(number, before.read(number), after.read(number));
    if (why !== undefined) return [altered(why)];
  }
  const loose = looseObjects(file, span);
  if (loose.length === 0) return allowed.found();
  const numbers = loose.slice(0, 8).join(', ') + (loose.length > 8 ? ' and others' : '');
  if (allowed.complete) return [altered(`objects that nothing leads to were added: ${numbers}`)];
  return [...allowed.found(), { kind: 'loose-objects', numbers }];

  function judge(number: number, old: PDFObject | undefined, next: PDFObject | undefined): string | undefined {
    if (sameObject(old, next)) return undefined;
    // An object that the signed part speaks of without having it would change what the signed part shows.
    if (old === undefined)
      return references?.has(number) ? `object ${number}, missing when signed, was put in` : undefined;
    if (next === undefined) return `object ${number} was taken out`;
    const rule = allowed.rules.get(number);
    return rule ? rule(old, next) : describe(number, old);
  }
}

function altered(why: string): LaterChange {
  return { kind: 'altered', why };
}

function describe(number: number, old: PDFObject): string {
  const text = old.toString().slice(0, 4000);
  if (text.includes('/EmbeddedFile')) return `an attached file was replaced (object ${number})`;
  if (text.includes('/Subtype /Image')) return `a picture was replaced (object ${number})`;
  return `something in the document was replaced (object ${number})`;
}
