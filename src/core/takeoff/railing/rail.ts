import type { Length } from '../../../base/units/index.js';

/** A run of railing as it is built: its posts, and what fills the bays between them. */
export interface Rail {
  readonly pieces: readonly RailPiece[];
  /** Ends at which another run ends too. */
  readonly shared: readonly SharedEnd[];
  /** Beside a stair: the handrail that brackets hold to the wall. */
  readonly handrail?: { readonly length: Length; readonly brackets: number };
}

/** A straight piece. A post stands at each end, and between them they stand equally far apart. */
export interface RailPiece {
  readonly length: Length;
  /** Spaces between posts, and from the middle of one post to that of the next, along the piece. */
  readonly bays: number;
  readonly spacing: Length;
  /** Of the posts that are this run's: how far along the piece. */
  readonly posts: readonly Length[];
  /** Absent where the option's record does not say what fills a bay. */
  readonly infill?: Infill;
}

/** `count` is for the whole piece. */
export type Infill =
  | { readonly fill: 'balusters'; readonly count: number; readonly bay: Length; readonly gap: Length }
  | { readonly fill: 'cables'; readonly count: number; readonly length: Length }
  | { readonly fill: 'panels'; readonly count: number; readonly bay: Length; readonly width: Length };

/** An end of a run that is also the end of another: one post stands there. */
export interface SharedEnd {
  /** Index of its piece, and which end of it: `left end`, `top`. */
  readonly piece: number;
  readonly side: 'from' | 'to';
  readonly end: string;
  /** The other run's end in words: `left end of Side of the stair well`. */
  readonly other: string;
  /** The post is this run's, not the other's. */
  readonly isOwn: boolean;
}

/** Ends that runs of railing share, by the run's key among those of the house. */
export type RailJoints = ReadonlyMap<string, readonly SharedEnd[]>;
