import { PDFName, PDFStream, type PDFDict, type PDFDocument } from 'pdf-lib';
import { everyDict, nameIn, type Tagged } from './tagged.js';

/** One thing that a tagged PDF must hold to, after PDF/UA-1 (ISO 14289-1:2014), and a fault that it must find. */
export interface Rule {
  /** Clause and number of the test, as the published profile numbers them. */
  readonly id: string;
  readonly source: typeof profile | typeof memory;
  readonly says: string;
  /** What does not hold, in words; none where all is well. */
  readonly faults: (tagged: Tagged) => readonly string[];
  /** Breaks a sound file in just this. */
  readonly plant: (document: PDFDocument) => void;
}

/** Read as it is published: `PDF_UA/PDFUA-1.xml` as of 64d57d6, and single rules under `PDF_UA/1/` that are younger. */
export const profile = 'veraPDF-validation-profiles';
/** Not read anywhere while this was written. */
export const memory = 'from memory';

/** The first element of a type, as it is written. */
export function elementOf(document: PDFDocument, type: string): PDFDict {
  return only(
    everyDict(document).find((dict) => nameIn(dict, 'S') === type && dict.has(PDFName.of('P'))),
    `element ${type}`,
  );
}

/** Gives the first element of a type another one. */
export const retype =
  (from: string, to: string) =>
  (document: PDFDocument): void =>
    elementOf(document, from).set(PDFName.of('S'), PDFName.of(to));

/** The first annotation of a subtype. */
export function annotationOf(document: PDFDocument, subtype: string): PDFDict {
  return only(
    everyDict(document).find((dict) => nameIn(dict, 'Subtype') === subtype && dict.has(PDFName.of('Rect'))),
    `annotation ${subtype}`,
  );
}

export function fontOf(document: PDFDocument, subtype: string): PDFDict {
  return only(
    everyDict(document).find((dict) => nameIn(dict, 'Type') === 'Font' && nameIn(dict, 'Subtype') === subtype),
    `font ${subtype}`,
  );
}

export function metadataOf(document: PDFDocument): PDFStream {
  const stream = document.catalog.lookup(PDFName.of('Metadata'));
  return only(stream instanceof PDFStream ? stream : undefined, 'metadata');
}

export function only<One>(found: One | undefined, what: string): One {
  if (found === undefined) throw new Error(`the file that faults are planted in has no ${what}`);
  return found;
}
