export { cautions } from './cautions.js';
export { cautionSheet } from './caution-sheet.js';
export { cautionRules } from './rules.js';
