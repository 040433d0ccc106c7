/** The records room. In: a house's files as text. Out: records read, checked and cross-referenced, or every problem with its
 *  place. Absent: the disk (src/store reads it) and any measuring or money. */
export { readRecords, recordReader } from './read-records.js';
export type { ReadRecords } from './read-records.js';
export { readFrontMatter } from './front-matter.js';
export type { FrontMatter } from './front-matter.js';
export { readChangeOrderRecord } from './read-change-order-record.js';
export { readIssueRecord } from './read-issue-record.js';
export { readSigners } from './read-signers.js';
export type { Signer, Signers } from './read-signers.js';
export { largestRecord } from './limits.js';
export { notations } from './formats.js';
export { placeWords } from './read-shape.js';
