/** Records with their places found → who does each layer of each place; gaps and overlaps. */
export { findScope } from './find-scope.js';
export { findingWords, type BuildUp, type BuildUpLayer, type Scope, type ScopeFinding } from './scope.js';
