/** Digests. In: a Book or any JSON value. Out: SHA-256 of the canonical text of it, of its rooms and of its trades. Absent: the disk, the day. */
export { canonicalJson } from './canonical-json.js';
export { changeOrderDigest, changeOrderFile } from './agreed-change.js';
export { digestOf, digestOfBytes } from './digest-of.js';
export { shortDigest } from '../../base/units/index.js';
export { roomDigests, roomDigestsWithoutSums, tradeDigests } from './digests-of.js';
