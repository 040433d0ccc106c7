import { ParseSpeeds, PDFDict, PDFDocument, PDFName } from 'pdf-lib';
import { markRowHeads } from './row-heads.js';

/** Opens what Typst set, with what it cannot mark yet: heads of rows. */
export async function openTypeset(pdf: Uint8Array): Promise<PDFDocument> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false, parseSpeed: ParseSpeeds.Fastest });
  markRowHeads(document);
  // That no tag is suspect holds where nothing is said (ISO 32000-1, mark information dictionary), and readers stumble over it being said.
  const marks = document.catalog.lookup(PDFName.of('MarkInfo'));
  if (marks instanceof PDFDict) marks.delete(PDFName.of('Suspects'));
  return document;
}
