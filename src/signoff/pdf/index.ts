/** A PDF as its cross-references give it. In: bytes. Out: its revisions, fields, pages and attachments; bytes with a revision
 *  added. Absent: what a signature means. Throws `Malformed` and `TooMuchWork`, which the room's edge turns into words. */
export { addRevision, startAdditions } from './add-revision.js';
export type { Additions, Written } from './add-revision.js';
export { attachmentsOf } from './attachments.js';
export type { Attachment } from './attachments.js';
export type { Entry, Section } from './cross-references.js';
export { carriesAgreed, factsOf } from './facts.js';
export type { PdfFacts } from './facts.js';
export { formFields, isFilled, rectOf, textOf } from './form-fields.js';
export type { FormField } from './form-fields.js';
export { Allowance, Malformed, TooMuchWork } from './malformed.js';
export { ObjectParser } from './object-parser.js';
export { lastStart, openPdf } from './pdf-file.js';
export type { PdfFile, Revision } from './pdf-file.js';
export { pageTexts } from './page-text.js';
export { pagesOf } from './pages.js';
