import type { Region } from '../../model/index.js';
import type { Length } from '../../../base/units/index.js';

/** What is to be laid, and by which rules. Lengths are whole nanometres. */
export interface LayoutInput {
  /** True-size shapes, each in its own plane (see `LayoutRules.grid`). Stock is bought for all of them together. */
  readonly regions: readonly LaidRegion[];
  /** The way the courses run, in degrees counter-clockwise from x: 0 along x, 90 along y. */
  readonly direction: number;
  /** Width that one course covers: a board's face, a sheet's width. */
  readonly face: Length;
  /** Lengths that can be bought. */
  readonly stock: readonly Length[];
  /** Lost in each cut; 1/8" when absent. */
  readonly kerf?: Length;
  /** What comes off the two ends of every board together before it is laid: checks, paint, ends out of square. */
  readonly endTrim?: Length;
  readonly rules: LayoutRules;
}

/** A region may lie in one plane with others, so that courses run through them, and have its own direction. */
export interface LaidRegion extends Region {
  /** Regions that follow one another with the same number lie in one plane; without it `LayoutRules.grid` decides. */
  readonly plane?: number;
  /** Instead of `LayoutInput.direction`; the first of a plane counts. */
  readonly direction?: number;
}

export interface LayoutRules {
  /** `each`: every region starts its own courses, as the slopes of a ceiling do. `through`: the regions lie in one plane
   *  without overlap, and courses run through all of them, as on a wall that doors cut in pieces. */
  readonly grid: 'each' | 'through';
  /** `balanced`: first and last course are equal. `full-first`: the first course is full, unless the last would then be
   *  narrower than `leastEndShare`; then they are made equal. */
  readonly endCourses: 'balanced' | 'full-first';
  /** Least width of an end course as a share of the face. Two equal end courses are never under one half. */
  readonly leastEndShare: number;
  /** Least distance between end joints of neighbouring courses. */
  readonly stagger: Length;
  /** Least length of a piece, where the span itself is not shorter. */
  readonly leastPiece: Length;
  /** Whether what is left of a board may be used in another place. */
  readonly reuseOffcuts: boolean;
  /** Whether the strip left beside a ripped piece may be used (sheets), or has lost its edge (matched boards). */
  readonly reuseRips: boolean;
  /** `any-span`: joints wherever the rules allow. `long-spans`: only in spans that no single board can cover. */
  readonly joints: 'any-span' | 'long-spans';
  /** End joints land on framing: a line every `spacing`, the first one `from` after the low end of the region. */
  readonly framing?: { readonly spacing: Length; readonly from: Length };
}

/** A surface laid out. Positions are in the frame of the courses: `along` them and `across` them (see `fromFrame`). */
export interface Layout {
  readonly direction: number;
  readonly face: Length;
  readonly kerf: Length;
  readonly courses: readonly Course[];
  /** Every board to be bought, with what is cut from it: the cut list. */
  readonly boards: readonly Board[];
  /** Boards to buy by length, shortest first. */
  readonly stock: readonly { readonly length: Length; readonly count: number }[];
  /** The line to snap in each region: the far edge of its first course. */
  readonly startLines: readonly StartLine[];
  /** Length of full boards or sheets that the courses take at least, and the length bought for them. */
  readonly needed: Length;
  readonly bought: Length;
  /** Share of the bought surface that is not on the regions, 0 to 1. */
  readonly waste: number;
  /** Where the bought surface goes. */
  readonly surface: LaidArea;
  /** No layout can buy less: the least sum of stock lengths that is not under `needed` and what comes off the ends. */
  readonly bound: Length;
  /** bought / bound − 1. */
  readonly gap: number;
  /** Places where the rules could not be kept. */
  readonly departures: readonly Departure[];
  /** Why nothing was laid, when nothing was. */
  readonly notLaid?: string;
}

/** What becomes of the surface bought, in square nanometres: all but `bought` add up to it. */
export interface LaidArea {
  readonly bought: number;
  readonly covered: number;
  /** Cut out of pieces that are laid: at openings, slopes and notches. */
  readonly cutAway: number;
  /** Strips beside ripped pieces. */
  readonly strips: number;
  /** Ends of full width that no other place takes. */
  readonly ends: number;
  readonly endTrim: number;
  readonly sawCuts: number;
}

export interface Course {
  /** Index of the region, or of the plane where courses run through several. */
  readonly region: number;
  /** Counted from 1 within the region. */
  readonly number: number;
  /** Position of its near edge across the courses. */
  readonly offset: Length;
  readonly width: Length;
  /** Narrower than the face. */
  readonly ripped: boolean;
  /** In order along the course. Where the region is interrupted, so are they. */
  readonly pieces: readonly Piece[];
}

export interface Piece {
  readonly start: Length;
  readonly end: Length;
  /** Index in `Layout.boards`. */
  readonly board: number;
}

/** One board or sheet as bought. Pieces, off-cuts, saw cuts and the two ends that come off make up its whole surface. */
export interface Board {
  readonly length: Length;
  readonly pieces: readonly BoardPiece[];
  /** What is left for the bin. */
  readonly offcuts: readonly BoardPart[];
}

/** A rectangle of a board: from its end, and from its edge. */
export interface BoardPart {
  readonly along: Length;
  readonly across: Length;
  readonly length: Length;
  readonly width: Length;
}

export interface BoardPiece extends BoardPart {
  /** Index in `Layout.courses`, and of the piece in that course. */
  readonly course: number;
  readonly piece: number;
}

export interface StartLine {
  readonly region: number;
  /** From the near edge of the region. */
  readonly distance: Length;
  readonly across: Length;
  readonly from: Length;
  readonly to: Length;
}

export interface Departure {
  readonly kind: 'stagger' | 'least piece' | 'framing';
  /** Index in `Layout.courses`, and the place along it. */
  readonly course: number;
  readonly at: Length;
  /** In words, for the person who lays it. */
  readonly words: string;
}
