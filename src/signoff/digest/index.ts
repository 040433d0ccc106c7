/** Digests. In: a Book or any JSON value. Out: SHA-256 of the canonical text of it, of its rooms and of its trades. Absent: the disk, the day. */
export { canonicalJson, digestOf, digestOfBytes } from './digest-of.js';
export { roomDigests, roomDigestsWithoutSums, tradeDigests } from './digests-of.js';
export { changeOrderDigest, changeOrderFile } from './agreed-change.js';
