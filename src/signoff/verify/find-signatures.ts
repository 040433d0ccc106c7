import { PDFDict, PDFRef } from 'pdf-lib';
import { formFields, TooMuchWork, type PdfFile, type Revision } from '../pdf/index.js';
import { readSignedRange, type SignedRange } from './signed-range.js';

export interface FoundSignature {
  readonly field: string;
  /** Number of the object that holds the signature dictionary. */
  readonly object: number;
  readonly dict: PDFDict;
  readonly revision: Revision;
}

/** The signatures of every state of the file, so that one that was taken out later is still seen. */
export function findSignatures(file: PdfFile): readonly FoundSignature[] {
  const found = new Map<string, FoundSignature>();
  for (const revision of [...file.revisions].reverse()) {
    for (const { name, type, number, value } of formFields(revision)) {
      const object = value instanceof PDFRef ? value.objectNumber : number;
      const dict = revision.dict(value);
      if (type !== 'signature' || !(dict instanceof PDFDict) || object === undefined) continue;
      const key = `${object}@${revision.span(object)?.start ?? -1}`;
      if (!found.has(key)) found.set(key, { field: name, object, dict, revision });
      if (found.size > 200) throw new TooMuchWork('the PDF has too many signatures');
    }
  }
  return [...found.values()];
}

/** A signature with the bytes that it speaks of. */
export interface PlacedSignature {
  readonly field: string;
  readonly range: SignedRange;
}

/** The signatures whose range can be told, in the order in which they were made. */
export function placedSignatures(file: PdfFile): readonly PlacedSignature[] {
  const placed = findSignatures(file).flatMap(({ field, revision, dict, object }) => {
    const range = readSignedRange(file, revision, dict, object);
    return typeof range === 'string' ? [] : [{ field, range }];
  });
  return placed.sort((a, b) => a.range.end - b.range.end);
}
