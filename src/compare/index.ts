export { compare } from './compare.js';
export type { CompareInput } from './compare.js';
export * from './comparison.js';
