export { findings } from './findings.js';
export { layers } from './layers.js';
export { findingSheet, scopeSheet } from './scope-sheet.js';
