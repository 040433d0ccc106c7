import type { Area, Length } from '../../base/units/index.js';
import type { Region } from './measure.js';
import type { Bearing, Point } from './room.js';

/** The house laid out from its rooms' own tapes: where each room stands. */
export interface LaidHouse {
  /** Rooms that hang together, the greatest first. Each has coordinates of its own. */
  readonly groups: readonly LaidGroup[];
}

export interface LaidGroup {
  /** Lowest first. */
  readonly levels: readonly LaidLevel[];
}

/** One level of rooms that hang together. All outlines are in the coordinates of their group. */
export interface LaidLevel {
  readonly level: string;
  /** Where each room's own coordinates begin. */
  readonly rooms: readonly { readonly room: string; readonly at: Point }[];
  /** To the outside of the framing, what is open to below with it. */
  readonly outline: readonly Region[];
  /** What of it is wall, and what else lies between rooms. */
  readonly walls: readonly Region[];
  /** What is open to a room below. */
  readonly wells: readonly { readonly room: string; readonly name: string; readonly outline: Region }[];
  /** Between the rooms' finished faces, and to the outside of the framing without what is open to below. */
  readonly net: Area;
  readonly gross: Area;
  /** Of the outline. */
  readonly perimeter: Length;
  /** Outside faces of its rooms by the way they look, in the order of the compass. */
  readonly faces: readonly OutsideFace[];
}

/** All that looks one way from a level, between the rooms' floors and ceilings. */
export interface OutsideFace {
  readonly looks: Bearing;
  /** Along the rooms' finished faces. */
  readonly run: Length;
  readonly gross: Area;
  readonly openings: Area;
  readonly net: Area;
  /** Greatest height of wall. */
  readonly height: Length;
  /** Edges of the roof along it, at the walls' inside faces, as far as the ceilings show: level ones from which a ceiling rises, sloping ones by
   *  their true length, and walls under a flat ceiling, of which nothing is known. What overhangs is not recorded. */
  readonly roof: { readonly eaves: Length; readonly rakes: Length; readonly unknown: Length };
  /** From the ceilings to the floor of the level above, where rooms stand there: in none of the areas. Absent where the record does not say how high
   *  that floor lies, or none stands there. */
  readonly band?: Area;
}
