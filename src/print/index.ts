/** The printed book. In: a Book. Out: the bytes of a PDF. Absent: any figure of its own, the disk beyond its own templates and
 *  fonts, the clock. */
export * from './book-pdf.js';
export * from './change-order-pdf.js';
export { undrawnProblems, type Undrawn } from './drawable.js';
export * from './handout/index.js';
export { openPress } from './press.js';
export { type SetPdf } from './set-pdf.js';
export * from './sheet-pdf.js';
