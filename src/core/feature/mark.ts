import type { Length } from '../../base/units/index.js';

/** How a kind of feature shows itself: shapes by the part that they play, in nanometres. Which pen and fill a part has, and where
 *  its words find room, is for the drawing to say. */
export type PlanMark =
  /** Stands lower than the plan cuts: a bench, a half wall. With the feature's name. */
  | { readonly role: 'body' | 'low-wall'; readonly outline: readonly Spot[] }
  /** Before a wall: cut through, hollow in what is cut, or lying on the floor. */
  | { readonly role: 'mass' | 'hollow' | 'slab'; readonly wall: string; readonly outline: readonly BesideWall[] }
  /** In a wall. With the feature's name. */
  | {
      readonly role: 'recess';
      readonly wall: string;
      readonly from: Length;
      readonly to: Length;
      readonly depth: Length;
    }
  /** Rail and posts along an open side, with the fall beyond it. */
  | {
      readonly role: 'guard';
      readonly along: EdgeLine;
      readonly from: Length;
      readonly to: Length;
      readonly fall: Length;
    }
  /** A straight flight that starts at the first two corners, on a floor at `foot`. */
  | {
      readonly role: 'flight';
      readonly outline: readonly Spot[];
      readonly treads: number;
      readonly risers: number;
      readonly riser: Length;
      readonly foot: Length;
    }
  /** Pieces under the ceiling, where the record says or else spread over the room; on the ceiling plan too. What stands has no length in plan. */
  | {
      readonly role: 'overhead';
      readonly count: number;
      readonly length: Length;
      readonly width: Length;
      readonly lines?: readonly { readonly from: Spot; readonly to: Spot }[];
    };

export type OverheadMark = Extract<PlanMark, { readonly role: 'overhead' }>;

/** What stands on the floor or in a wall, as far as a plan cuts or sees it. */
export type StandingMark = Exclude<PlanMark, OverheadMark>;

/** An open side of the room, or a side of a hole in its floor. */
export type EdgeLine = { readonly wall: string } | { readonly void: string; readonly side: string };

/** What stands on or before a wall, seen from the room. */
export type FaceMark =
  /** All of it, heavy or light. */
  | { readonly role: 'mass' | 'body'; readonly outlines: readonly (readonly Spot[])[] }
  /** On it: an opening, what carries a slab, the slab, a line inside its edge. */
  | { readonly role: 'opening' | 'plinth' | 'slab' | 'inset'; readonly outline: readonly Spot[] }
  /** Rail and posts along an open side. */
  | { readonly role: 'guard'; readonly from: Length; readonly to: Length };

/** On the plan: east and north in the room's coordinates. On a wall: along it from the left, and up from the floor. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Along a wall from its left end, seen from the room, and out from its face into the room. */
export interface BesideWall {
  readonly along: number;
  readonly out: number;
}

/** A rectangle on a wall. */
export function boxOf(left: number, bottom: number, right: number, top: number): readonly Spot[] {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}
