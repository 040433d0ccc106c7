import type { Length } from '../../base/units/index.js';

/** The guard at an open edge. */
export interface DrawnGuard {
  readonly guard: string;
  /** What the option's record says; with several considered, when they agree. */
  readonly guardHeight?: Length;
}

export interface DrawnPost {
  /** From the left end of its run. */
  readonly at: Length;
  /** Of two edges that end together one has the post: a plan shows it there, an elevation of either shows it. */
  readonly isOwn: boolean;
}
