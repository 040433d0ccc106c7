/** What is wrong, for the person who must mend it: made, sorted, printed. In: a place in a file and words. Absent: any
 *  knowledge of records. */
export * from './codes.js';
export * from './problem.js';
export * from './problem-at.js';
export * from './sort-problems.js';
export * from './nearest.js';
export * from './new-problems.js';
export * from './printable.js';
export * from './print-problems.js';
