/** Signing. In: a PDF and a certificate file with its passphrase. Out: the PDF with one more signature, or a refusal in words.
 *  Absent: the disk, the clock, any log. */
export { openCertificate, type CertificateFacts } from './open-certificate.js';
export { printInstant } from './place-signature.js';
export { findSignable, signPdf, type SignRequest } from './sign-pdf.js';
export { makeOwnCertificate, type OwnCertificate } from './own-certificate.js';
export { queryOf, stampSignature } from './stamp-signature.js';
