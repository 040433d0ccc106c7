/** Boards and sheets laid out on real surfaces. In: true-size regions, a direction, face, stock lengths and rules. Out: the
 *  courses, what to buy, the cut list and its waste. Absent: records, prices, drawings. */
export * from './layout.js';
export { boardRules, sheetRules } from './rules.js';
export { keptLayouts, layOut, type LayOut } from './lay-out.js';
export { fromFrame } from './frame.js';
export { summarize, type NamedPlane } from './summary.js';
