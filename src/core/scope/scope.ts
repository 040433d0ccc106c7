import type { Layer } from '../model/index.js';

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
  readonly layer: Layer;
  /** The layer in words: 'Gypsum board', 'Blocking for the railing'. */
  readonly what: string;
  /** Selection that gives it, when it is one. */
  readonly selection?: string;
  /** Slug of the trade that supplies it, or `owner`; absent when nobody does. */
  readonly suppliedBy?: string;
  /** Slug of the trade that installs it; absent when nobody does. */
  readonly installedBy?: string;
}

/** Kinds of findings, the gravest first. `gap`: what must lie beneath a finish is not there. `never-chosen`: a place that a
 *  room of its kind must have decided has nothing selected, not even a deliberate none. */
export const findingKinds = ['gap', 'need-without-trade', 'overlap', 'no-installer', 'never-chosen'] as const;

/** A layer that nobody does, that two do, or that waits for somebody. */
export interface ScopeFinding {
  /** `<kind>/<room>/<place>/<layer or what is missing>`: stable. */
  readonly id: string;
  readonly kind: (typeof findingKinds)[number];
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

/** A kind of finding as it is shown. */
export const findingWords: Readonly<Record<ScopeFinding['kind'], string>> = {
  gap: 'Gap',
  'need-without-trade': 'Nobody carries it',
  overlap: 'Overlap',
  'no-installer': 'No installer',
  'never-chosen': 'Never chosen',
};
