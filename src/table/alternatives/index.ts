export { alternativeSection, alternativeSheet } from './alternative-sheet.js';
export { alternatives } from './compared.js';
export { alternativeLines } from './lines.js';
