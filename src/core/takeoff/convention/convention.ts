import type { Convention, Exception, Option, RoomMeasure } from '../../model/index.js';
import type { Unit } from '../../../base/units/index.js';
import type { Place } from '../places.js';
import type { RailJoints } from '../railing/rail.js';
import type { PlaceQuantity, TradeCount } from '../takeoff.js';

/** By a wall's id, what is counted of it from its other side: in which room, and how many square feet at most. */
export type SharedWalls = ReadonlyMap<string, readonly { readonly room: string; readonly net: number }[]>;

/** One way of measuring, named by a category's `measure.by`. */
export interface ConventionRule {
  readonly by: string;
  /** The parts of an option that it yields, each with its unit. The first is the main one. */
  readonly parts: Readonly<Record<string, Unit>>;
  /** What a place must be for this way of measuring, in words: 'a surface'. */
  readonly measures: string;
  /** Quantities of each part, or undefined when the place cannot be measured this way. */
  quantify(place: Place, context: ConventionContext): Readonly<Record<string, readonly PlaceQuantity[]>> | undefined;
  /** What else is ordered by it, of all places together; said with the first part. */
  counts?(quantities: Readonly<Record<string, readonly PlaceQuantity[]>>, option: Option): readonly TradeCount[];
}

export interface ConventionContext {
  readonly rule: Convention;
  readonly option: Option;
  readonly measure: RoomMeasure;
  /** What other rooms count of the walls that they share with this one, by wall. */
  readonly counted?: SharedWalls;
  /** What the selection leaves out. */
  readonly except: readonly Exception[];
  readonly joints: RailJoints;
}
