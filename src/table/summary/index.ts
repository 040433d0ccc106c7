export { dueNext, headline, type Due } from './due.js';
export { needsALook, type NeedsALook } from './needs-a-look.js';
export { summarySheet } from './summary-sheet.js';
