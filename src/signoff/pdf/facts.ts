import { PDFName } from 'pdf-lib';
import { attachmentsOf } from './attachments.js';
import { textOf } from './form-fields.js';
import type { PdfFile, Revision } from './pdf-file.js';

/** What tells a document of this program from any other. */
export interface PdfFacts {
  /** Names of the files that it carries. */
  readonly attachments: readonly string[];
  readonly title: string;
  readonly keywords: string;
  readonly producer: string;
}

/** Does the PDF carry what it was printed from, a Book or a change order? */
export function carriesAgreed({ attachments }: PdfFacts): boolean {
  return attachments.includes('book.json') || attachments.includes('change-order.json');
}

export function factsOf(file: PdfFile, revision: Revision): PdfFacts {
  const info = revision.dict(revision.trailer.get(PDFName.of('Info')));
  const text = (key: string): string => textOf(revision.resolve(info?.get(PDFName.of(key)))) ?? '';
  return {
    attachments: attachmentsOf(file, revision).map(({ name }) => name),
    title: text('Title'),
    keywords: text('Keywords'),
    producer: text('Producer'),
  };
}
