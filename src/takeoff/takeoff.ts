import type { Length, Unit, Usage } from '../units/index.js';

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
  /** The next four are absent where the category's record asks for none. */
  readonly supplies?: readonly SupplyQuantity[];
  readonly counts?: readonly TradeCount[];
  readonly notes?: readonly TakeoffNote[];
  readonly assemblies?: readonly AssemblyResistance[];
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

/** Something used up with a finish, with every figure that leads to it. It carries no price: the finish's own rate in place
 *  covers it. */
export interface SupplyQuantity {
  /** As it is ordered: `Joint tape`, `Grout, warm gray`. */
  readonly what: string;
  readonly unit: string;
  /** The net quantity that it goes with. */
  readonly follows: { readonly quantity: number; readonly unit: Unit };
  readonly usage: Usage;
  /** Multipliers, such as coats or the room between the pieces, with the reason. */
  readonly factors: readonly { readonly times: number; readonly why: string }[];
  readonly net: number;
  readonly waste: { readonly percent: number };
  /** net × (1 + waste); whole packs are counted once for the house. */
  readonly required: number;
  readonly pack?: { readonly name: string; readonly holds: number };
  readonly why?: string;
  readonly source: string;
}

/** The same quantity as the trade counts it: gallons, lineal and board feet, sheets of one length. */
export interface TradeCount {
  readonly unit: string;
  readonly amount: number;
  /** Whole pieces to buy, for the house. */
  readonly whole?: number;
  /** The arithmetic in words. */
  readonly why: string;
  readonly source: string;
}

/** What a value of an attribute means, such as a finish level. */
export interface TakeoffNote {
  readonly what: string;
  readonly words: string;
  readonly source: string;
}

/** Resistance to heat of a wall, ceiling or floor with its framing: the parallel path method. Resistances in
 *  ft²·h·°F/Btu, transmittance in Btu/(ft²·h·°F). A figure to check with the energy report, not a verdict. */
export interface AssemblyResistance {
  readonly name: string;
  readonly over: 'walls' | 'ceiling' | 'floor';
  /** Ids of the places that are of this kind. */
  readonly places: readonly string[];
  /** R of the insulation alone, as labelled. */
  readonly labelled: number;
  /** Layers over framing and cavity alike. */
  readonly layers: readonly ResistanceStep[];
  readonly cavity: HeatWay;
  readonly framing: HeatWay;
  readonly transmittance: number;
  /** 1 / transmittance. */
  readonly effective: number;
  readonly source: string;
}

/** One way for heat through an assembly. */
export interface HeatWay {
  readonly share: number;
  /** What fills this way: the insulation, or the framing. */
  readonly fill: ResistanceStep;
  /** The fill and the layers together. */
  readonly r: number;
}

export interface ResistanceStep {
  readonly what: string;
  readonly r: number;
  readonly why: string;
}
