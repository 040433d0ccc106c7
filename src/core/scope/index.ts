/** Records with their places found → who does each layer of each place; gaps and overlaps. */
export { findScope } from './find-scope.js';
export { findingWords } from './scope.js';
export type { BuildUp, BuildUpLayer, Scope, ScopeFinding } from './scope.js';
