/** Scope. In: what each surface and feature needs, and what is selected for it. Out: who does each layer; gaps and overlaps. */
export type { BuildUp, BuildUpLayer, Scope, ScopeFinding } from './scope.js';
