export { comparisonSections } from './sections.js';
export { fieldTable } from './tables.js';
