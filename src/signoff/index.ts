/** What was agreed, and the proof of it. In: a Book, or the bytes of a PDF and of a certificate. Out: digests, a signed PDF, a
 *  report on a signed PDF. Absent: the disk, git, issues and change orders. Signing and verifying have indexes of their own, `sign` and `verify`, so
 *  that who wants a digest reads no cryptography. */
export * from './digest/index.js';
export * from './match/index.js';
export { addSignatures } from './add-signatures.js';
export { changeOrderRecord } from './change-order-record.js';
export {
  decideChangeOrder,
  decidedVerbs,
  draftAnewWords,
  twiceWords,
  versionWords,
  personNamed,
  voidIssue,
  type Decided,
  type DecidedState,
  type Decision,
} from './decide.js';
export { issueBlockers, printBlockers } from './issue-blockers.js';
export { replacedPages } from './replaced-pages.js';
export { issueRecord } from './issue-record.js';
export { markSigned } from './mark-signed.js';
export { sharedDigests } from './shared-digests.js';
