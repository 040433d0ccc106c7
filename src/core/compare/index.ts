/** Comparing. In: two Books of one house, and Books composed from both when they can be had. Out: what changed, as plain
 *  JSON, the words for it, and the lines of a change order. Absent: git, disk, pages. */
export { compare } from './compare.js';
export type { CompareInput } from './compare.js';
export type { Between } from './split-money.js';
export { matchOptions } from './match.js';
export * from './comparison.js';
export * from './room-change.js';
export type { NoticeChange } from './notice-change.js';
export { changeList } from './change-list.js';
export type { ListedChange } from './change-list.js';
export { contractTerms, uncoveredTerms } from './contract-terms.js';
export type { ContractTerm, TermChange, UncoveredTerm } from './contract-terms.js';
export { draftLines } from './draft-lines.js';
export type { Draft, DraftDays, DraftLine } from './draft-lines.js';
export * from './words.js';
export { selectionRows } from './selection-rows.js';
export type { SelectionRow } from './selection-rows.js';
