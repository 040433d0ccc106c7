/** Who does what, layer by layer, and what nobody or two do. */
export interface Scope {
  readonly buildUps: readonly BuildUp[];
  readonly findings: readonly ScopeFinding[];
}

/** The layers of one surface or feature, from the framing out. */
export interface BuildUp {
  readonly room: string;
  readonly place: string;
  readonly placeText: string;
  readonly layers: readonly BuildUpLayer[];
}

export interface BuildUpLayer {
  readonly layer: 'framing' | 'insulation' | 'backing' | 'substrate' | 'finish' | 'edge' | 'fixture';
  /** The layer in words: 'Gypsum board', 'Blocking for the railing'. */
  readonly what: string;
  /** Selection that gives it, when it is one. */
  readonly selection?: string;
  /** Slug of the trade that supplies it, or `owner`; absent when nobody does. */
  readonly suppliedBy?: string;
  /** Slug of the trade that installs it; absent when nobody does. */
  readonly installedBy?: string;
}

/** A layer that nobody does, that two do, or that waits for somebody. */
export interface ScopeFinding {
  /** `<kind>/<room>/<place>/<layer>`: stable. */
  readonly id: string;
  readonly kind: 'gap' | 'overlap' | 'no-installer' | 'need-without-trade';
  readonly room: string;
  readonly place: string;
  readonly placeText: string;
  /** What was found, in a sentence. */
  readonly what: string;
  /** How to mend it, and in which record. */
  readonly fix: string;
  /** Slugs of the trades concerned. */
  readonly trades: readonly string[];
  /** Record and line to mend. */
  readonly source: string;
  readonly line: number;
}
