export * from './book.js';
export { makeBook } from './make-book.js';
export { optionId } from './draft.js';
export { priceRecords } from './price-drafts.js';
export { handOf, makeSchedules } from './schedule/index.js';
export type * from './schedule/index.js';
export { lookUp } from './look-up.js';
export type { LookUp } from './look-up.js';
