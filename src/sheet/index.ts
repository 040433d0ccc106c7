/** What any output says, as plain data: tables of typed cells, laid out once, in sheets of blocks. In: rows and names. Out: a
 *  `Sheet`, what its cells say for people (`say`) and are worth to machines (`raw`). Absent: markup, and any knowledge of a house. */
export * from './cell.js';
export * from './gate.js';
export * from './names.js';
export * from './table.js';
export * from './block.js';
export * from './col.js';
export * from './say.js';
export * from './raw.js';
export * from './words.js';
export type { MoneyFree, MoneyIn } from './money-free.js';
