/** Digests. In: a Book or any JSON value. Out: SHA-256 of its canonical text. Absent: the disk, the day. */
export { canonicalJson } from './canonical-json.js';
export { digestOf, digestOfBytes } from './digest-of.js';
export { shortDigest } from '../../units/index.js';
export { digestsOf } from './digests-of.js';
export type { BookDigests } from './digests-of.js';
export { withoutDay } from './without-day.js';
