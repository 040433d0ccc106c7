export { agreedSections } from './agreed-sections.js';
export { changeLines } from './change-lines.js';
export { changeOrderBlocks, changeOrderDetails, changeOrderSheet } from './change-order.js';
export { issues } from './issues.js';
