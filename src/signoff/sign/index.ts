/** Signing. In: a PDF and a certificate file with its passphrase. Out: the PDF with one more signature, or a refusal in words.
 *  Absent: the disk, the clock, any log. */
export { openCertificate } from './open-certificate.js';
export type { CertificateFacts, CertificateRefusal, Opened } from './open-certificate.js';
export { printInstant } from './place-signature.js';
export { findSignable, signPdf } from './sign-pdf.js';
export type { Signable, Signed, SignRefusal, SignRequest } from './sign-pdf.js';
