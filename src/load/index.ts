export * from './load-book.js';
export * from './load-comparison.js';
export * from './load-house.js';
export * from './check-change-orders.js';
export { issuedPath, readSnapshot } from './read-snapshot.js';
export * from './load-signing.js';
export * from './verify-signed.js';
