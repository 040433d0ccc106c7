import type { Area, Length, Unit, Usage } from '../../base/units/index.js';
import type { Rail } from './railing/rail.js';

/** What one selection needs of one part of one option, with every figure that leads to it. */
export interface Takeoff {
  /** The option's part: `main`, `flats`, `corners`, `rail`, `post` … */
  readonly part: string;
  readonly unit: Unit;
  /** Each place with its own arithmetic; their nets add up to `net`. */
  readonly places: readonly PlaceQuantity[];
  readonly gross: number;
  readonly net: number;
  /** What all parts together cover, where that is more than this part's net: lath, mortar and weight go by it. */
  readonly covered?: number;
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
  /** Timbers, where the option says which lengths are sold. */
  readonly cutting?: Cutting;
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
  /** How the gross was figured, where a shape does not say it. */
  readonly why?: string;
  readonly adjustments: readonly { readonly what: string; readonly amount: number; readonly why: string }[];
  readonly net: number;
  /** What is covered there with every part, where that is more than the net: flats and corner pieces of stone together. */
  readonly covered?: number;
  /** Of a railing: where its posts stand and what fills its bays. */
  readonly rail?: Rail;
  /** Of timbers: the pieces as they are ordered. */
  readonly timber?: TimberPieces;
}

/** Timbers of one feature, all alike. */
export interface TimberPieces {
  readonly count: number;
  /** One piece, with what is added at its ends. */
  readonly length: Length;
  /** What one weighs: by the option's weight, else by the density of the feature's record. */
  readonly pounds?: number;
}

/** Pieces cut from lengths that are sold. */
export interface Cutting {
  /** Pieces to buy by length, shortest first. */
  readonly stock: readonly StockCount[];
  readonly cuts: readonly Cut[];
  /** Pieces longer than any length that is sold, in words. */
  readonly departures: readonly string[];
}

/** The answer of the layout: what to buy, how it is cut, and where it lies. */
export interface LayoutSummary {
  readonly lay: 'boards' | 'sheets';
  /** Which count is the order; the other is its check. `pieces`: this layout. `area`: area with waste, in packs. */
  readonly orderBy: 'pieces' | 'area';
  /** Width that one course covers. */
  readonly face: Length;
  readonly courses: number;
  /** The narrowest first and last course of all surfaces. */
  readonly firstCourse: Length;
  readonly lastCourse: Length;
  /** Pieces to buy by length, shortest first. */
  readonly stock: readonly StockCount[];
  /** Share of bought surface that is not on the wall or ceiling, 0 to 1. */
  readonly waste: number;
  /** Where what is bought goes: all but `bought` add up to it. */
  readonly surface: LaidShares;
  /** Total length bought, the least that any layout could buy, and bought / bound − 1. */
  readonly bought: Length;
  readonly bound: Length;
  readonly gap: number;
  /** The cut list: longest stock first, then longest piece. */
  readonly cuts: readonly Cut[];
  /** Each slope, wall, floor or face with its own courses. */
  readonly surfaces: readonly LaidSurface[];
  /** Where the rules for joints could not be kept, in words. */
  readonly departures: readonly string[];
}

/** What becomes of the boards or sheets that are bought, in square feet. */
export interface LaidShares {
  readonly bought: Area;
  readonly covered: Area;
  /** Cut out of pieces that are laid: at openings, slopes and notches. */
  readonly cutAway: Area;
  /** Strips beside ripped courses that no other place takes. */
  readonly strips: Area;
  /** Ends of full width, too short for another place. */
  readonly ends: Area;
  /** What comes off the ends of every board before it is laid. */
  readonly endTrim: Area;
  readonly sawCuts: Area;
}

export interface StockCount {
  readonly length: Length;
  readonly count: number;
}

/** Pieces that look alike on a tape: lengths to the nearest 1/16 inch. */
export interface Cut {
  readonly length: Length;
  /** Ripped to this width; absent at full width. */
  readonly width?: Length;
  /** Length of the board or sheet that it is cut from. */
  readonly from: Length;
  readonly count: number;
}

/** Courses on one plane. Positions are nanometres along the courses, from the origin of the surface's own frame: see
 *  `fromFrame` in layout/, and `Surface.regions`. Between the first and the last course all are `LayoutSummary.face` wide. */
export interface LaidSurface {
  readonly place: string;
  readonly name: string;
  /** Index in `CeilingMeasure.facets`. */
  readonly facet?: number;
  /** The way the courses run: degrees counter-clockwise from the surface's x; and in words, `east-west`. */
  readonly direction: number;
  readonly run: string;
  readonly courses: number;
  readonly firstCourse: Length;
  readonly lastCourse: Length;
  /** Where the first course begins, across the courses; and in words, `the eave`. */
  readonly edge: Length;
  readonly startsAt: string;
  /** Ends of the line to snap: the far edge of the first course. */
  readonly startLine: { readonly from: Length; readonly to: Length };
  /** Places of the end joints, course by course. */
  readonly joints: readonly (readonly Length[])[];
}

/** Something used up with a finish, with every figure that leads to it. It carries no price: the finish's own rate in place
 *  covers it. */
export interface SupplyQuantity {
  /** As it is ordered: `Joint tape`, `Grout, warm gray`. */
  readonly what: string;
  readonly unit: string;
  /** The quantity that it goes with: what is covered, or `what` is counted beside it. */
  readonly follows: { readonly quantity: number; readonly unit: Unit; readonly what?: string };
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
