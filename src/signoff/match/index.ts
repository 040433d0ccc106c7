/** What a signed PDF is held against. In: the report on a PDF, the issues of a house, certificates that its record names. Out:
 *  which issue it is, what does not hold. Absent: the disk; how an issue is recorded. */
export { documentName, matchIssue, type IssuedFacts, type IssueMatch } from './match-issue.js';
export { roleOf, signatureField, signerRoles, type SignerRole } from './signer-role.js';
export { changeOrderOf, issueOnPages, printedDigest, sheetStanding, type SheetStanding } from './sheet-standing.js';
export { vouchFor, type Vouched } from './vouch.js';
