/** A signed PDF and the house that it is said to be of. In: its bytes, a house folder. Out: what holds of it and what does not. Apart from its
 *  room, so that no command reads what checks signatures unless it checks one. */
export * from './verify-signed.js';
export type { JudgedSignature } from './signer-problems.js';
