/** The printed handout. In: a Handout. Out: the bytes of a PDF. Absent: a Book, and so any money. */
export { makeHandoutPdf } from './handout-pdf.js';
