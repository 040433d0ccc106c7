export * from './load-book.js';
export * from './load-comparison.js';
export * from './load-house.js';
