import type { SvgNode } from '../base/svg/index.js';
import type { Palette } from './palette.js';

/** What every drawing is told. */
export interface DrawOptions {
  /** Prefix of the ids in the drawing; unique on the page. */
  readonly id: string;
  readonly palette: Palette;
  /** Default `Public Sans`. Widths are those of Public Sans. */
  readonly font?: string;
  /** Inches of paper that the drawing may take; 7 by 7 when absent. The scale is the largest standard one that fits. */
  readonly box?: { readonly width: number; readonly height: number };
  /** Of the house's length to that on paper: no larger, so that what belongs together has one scale. */
  readonly ratio?: number;
  /** Without title, scale bar and north arrow: the caller writes `title` and `scale` beside it. */
  readonly bare?: boolean;
  /** On a screen nobody knows how long an inch is, so that no scale is named; default `paper`. */
  readonly medium?: 'paper' | 'screen';
}

/** A finished drawing. `svg` is the root node; `svgText` from src/svg writes it. */
export interface Drawing {
  readonly id: string;
  readonly title: string;
  /** The same words as in `<desc>`: what a reader who does not see it needs to know. */
  readonly description: string;
  /** `1/4" = 1'-0"`. */
  readonly scale: string;
  /** Of the house's length to that on paper. */
  readonly ratio: number;
  /** Size on paper in inches. */
  readonly width: number;
  readonly height: number;
  /** What is left of it where its words are left out, in shares of its width: left and top edge, width, and height. Absent: all of it. */
  readonly plain?: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  readonly svg: SvgNode;
}
