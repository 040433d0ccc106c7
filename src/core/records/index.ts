/** The records room. In: a house's files as text. Out: records read, checked and cross-referenced, or every problem with its
 *  place. Absent: the disk (src/store reads it) and any measuring or money. */
export { readRecords, recordReader } from './read-records.js';
export type { ReadRecords } from './read-records.js';
export { readIssueRecord } from './read-issue-record.js';
export { readSigners } from './read-signers.js';
export type { Signer } from './read-signers.js';
export { largestRecord } from './limits.js';
