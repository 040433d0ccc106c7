/** What a signed PDF is held against. In: the report on a PDF, the issues of a house, certificates that its record names. Out:
 *  which issue it is, what does not hold. Absent: the disk; how an issue is recorded. */
export { documentName, matchIssue } from './match-issue.js';
export type { AcceptedSignature, IssuedFacts, IssueMatch } from './match-issue.js';
export { roleOf, signatureField, signerRoles } from './signer-role.js';
export type { SignerRole } from './signer-role.js';
export { vouchFor } from './vouch.js';
export type { Vouched } from './vouch.js';
