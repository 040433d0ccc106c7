/** A PDF as its cross-references give it. In: bytes. Out: its revisions, fields, pages and attachments; bytes with a revision
 *  added. Absent: what a signature means. Throws `Malformed` and `TooMuchWork`, which the room's edge turns into words. */
export { addRevision, startAdditions, type Additions } from './add-revision.js';
export { attachmentsOf } from './attachments.js';
export type { Entry, Section } from './cross-references.js';
export { carriesAgreed, factsOf, type PdfFacts } from './facts.js';
export { formFields, isFilled, rectOf, textOf, type FormField } from './form-fields.js';
export { Allowance, TooMuchWork } from './malformed.js';
export { lastStart, openPdf, type PdfFile, type Revision } from './pdf-file.js';
export { pageTexts } from './page-text.js';
export { pagesOf } from './pages.js';
export { whyUnreadable } from './why-unreadable.js';
