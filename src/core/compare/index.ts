/** Comparing. In: two Books of one house, and Books composed from both when they can be had. Out: what changed, as plain
 *  JSON, the words for it, and the lines of a change order. Absent: git, disk, pages. */
export * from './comparison.js';
export * from './room-change.js';
export * from './words.js';
export { compare } from './compare.js';
export { compareChoices, type ChoiceChanges } from './compare-choices.js';
export type { Between } from './split-money.js';
export { matchOptions } from './match.js';
export type { NoticeChange } from './notice-change.js';
export { draftLines, type Draft } from './draft-lines.js';
export { agreedTwice, commitOf, inOrderOfDecision, type AgreedTwice } from './agreed-twice.js';
export { changeList, type ListedChange } from './change-list.js';
export { contractTerms, uncoveredTerms, type ContractTerm } from './contract-terms.js';
export { selectionRows } from './selection-rows.js';
