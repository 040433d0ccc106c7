/** The arithmetic of take-off handbooks, one rule a file. In: areas in square feet, lengths in nanometres, rates as data. Out:
 *  quantities, not rounded unless the rule rounds. Absent: records, places, prices. */
export * from './base.js';
export * from './board-coverage.js';
export * from './casing.js';
export * from './infill.js';
export * from './coated.js';
export * from './hinges.js';
export * from './insulation.js';
export * from './paint.js';
export * from './posts.js';
export * from './sheets.js';
export * from './stone.js';
export * from './supplies.js';
export * from './whole.js';
