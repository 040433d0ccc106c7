import type { Length, Unit } from '../units/index.js';

/** What one selection needs of one part of one option, with every figure that leads to it. */
export interface Takeoff {
  /** The option's part: `main`, `flats`, `corners`, `rail`, `post` … */
  readonly part: string;
  readonly unit: Unit;
  /** Each place with its own arithmetic; their nets add up to `net`. */
  readonly places: readonly PlaceQuantity[];
  readonly gross: number;
  readonly net: number;
  /** Multipliers between net and required (coats), with the reason. */
  readonly factors: readonly { readonly times: number; readonly why: string }[];
  readonly waste: { readonly percent: number; readonly why: string };
  /** net × factors × (1 + waste): what must be bought at least. */
  readonly required: number;
  /** The convention in words and its source. */
  readonly rule: string;
  readonly source: string;
  /** Boards or sheets laid out course by course, where the category lays out. */
  readonly layout?: LayoutSummary;
}

export interface PlaceQuantity {
  /** Place id within the room: `ceiling`, `north`, `D01`, `breast/front`. */
  readonly place: string;
  readonly name: string;
  readonly gross: number;
  readonly adjustments: readonly { readonly what: string; readonly amount: number; readonly why: string }[];
  readonly net: number;
}

/** The answer of the layout: pieces to buy by length, and the waste that it truly makes. */
export interface LayoutSummary {
  readonly courses: number;
  readonly firstCourse: Length;
  readonly lastCourse: Length;
  readonly stock: readonly { readonly length: Length; readonly count: number }[];
  /** Share of bought surface that is not on the wall or ceiling, 0 to 1. */
  readonly waste: number;
}
