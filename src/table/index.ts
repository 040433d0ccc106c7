/** The tables of the house, one file each, and the sheets that are made of them. In: a Book by its names. Out: tables laid out, for
 *  the house or, where their rows hold no money, for a trade. Absent: markup. */
export { namesOf } from './names-of.js';
export type { Schedule } from './schedule.js';
export { backing, needColumns, needRows } from './backing.js';
export type { NeedRow } from './backing.js';
export { optionsAt } from './options-at.js';
export { placesOf } from './places-of.js';
export { tradeTables } from './trade-tables.js';
export { dataTables, tableNames } from './files.js';
export { finishSheet } from './finish-sheet.js';
export { openingSheet } from './opening-sheet.js';
export { orderSheet, orderTables } from './order-sheet.js';
export { orders } from './orders.js';
export { roomSupplies, supplies } from './supplies.js';
export { quantitiesOfRoom } from './quantities.js';
export { quantitySheet, quantityTables } from './quantity-sheet.js';
export { layoutTables, layoutsOnPaper } from './layouts.js';
export { quantityLines } from './takeoff-lines.js';
export { takeoffBlocks } from './takeoff-sheet.js';
export { assemblySteps } from './steps.js';
export { otherSheet } from './other-sheet.js';
