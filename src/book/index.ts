export * from './book.js';
export { makeBook } from './make-book.js';
export { optionId } from './draft.js';
