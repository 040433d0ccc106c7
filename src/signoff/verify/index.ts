/** Checking. In: the bytes of a PDF. Out: who signed it, whether it is still what was signed, what it carries. Absent: the disk,
 *  the network (no revocation lists), the issue that it is compared with. */
export { comparePages } from './compare-pages.js';
export type { PagesCompared } from './compare-pages.js';
export { printedText } from './printed-text.js';
export { describeChange } from './report.js';
export type { PdfReport, SignatureReport } from './report.js';
export { holdsCertificate } from './trust.js';
export { verifyPdf } from './verify-pdf.js';
