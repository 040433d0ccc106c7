/** Checking. In: the bytes of a PDF. Out: who signed it, whether it is still what was signed, what it carries. Absent: the disk,
 *  the network (no revocation lists), the issue that it is compared with. */
export { comparePages, type PagesCompared } from './compare-pages.js';
export { placedSignatures } from './find-signatures.js';
export { printedText } from './printed-text.js';
export { describeChange, type PdfReport, type SignatureReport, type TimeStamp } from './report.js';
export { holdsCertificate } from './trust.js';
export { verifyPdf } from './verify-pdf.js';
