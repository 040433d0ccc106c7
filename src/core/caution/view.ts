import { minus, pointInFeet, type Xy } from '../../base/geometry/index.js';
import type { AdoptedCode, Category, Option, Point, RoomMeasure, RoomUse } from '../model/index.js';
import type { IsoDate, Length } from '../../base/units/index.js';
import { reachOf, type Reach } from './reach.js';

/** The house as rules see it: what is measured, what is selected there, and on which days the work moves on. The day of the
 *  Book is not in it: the same records give the same cautions on every day. */
export interface HouseView {
  /** These two where its record names them. */
  readonly climateZone?: string;
  readonly code?: AdoptedCode;
  /** Ids of the levels, lowest first. */
  readonly levels: readonly string[];
  readonly categories: readonly Category[];
  readonly rooms: readonly RoomView[];
  readonly bySlug: ReadonlyMap<string, RoomView>;
  /** Floors of each level, and the stairs up to them. */
  readonly reach: Reach;
  /** Where rooms stand whose surroundings are all known, by slug. */
  readonly stands: ReadonlyMap<string, Stand>;
  /** What an outside wall measures across, from the finished face to the outside of its framing. */
  readonly outsideWall: Length;
  /** What the house says must match: selections of one category, by id. */
  readonly matches: readonly Matching[];
  /** Milestones by id. */
  readonly milestones: ReadonlyMap<string, { readonly name: string; readonly date: IsoDate }>;
}

/** Where a room's own coordinates begin, in those of the rooms that it hangs together with. */
export interface Stand {
  readonly group: number;
  readonly at: Point;
}

export interface Matching {
  readonly name: string;
  readonly why: string;
  /** In the record's order, each once. */
  readonly selections: readonly string[];
}

export interface RoomView {
  readonly slug: string;
  readonly name: string;
  readonly level: string;
  /** Of its floor over the ground outside, by its own record or its level's. */
  readonly aboveGround?: Length;
  readonly use: RoomUse;
  readonly measure: RoomMeasure;
  readonly selections: readonly SelectionView[];
  /** Selections by the id of each place they cover. */
  readonly at: ReadonlyMap<string, readonly SelectionView[]>;
}

export interface SelectionView {
  readonly id: string;
  readonly room: string;
  readonly category: Category;
  readonly placeText: string;
  readonly places: readonly { readonly id: string; readonly name: string }[];
  /** `none` is a deliberate none. */
  readonly state: 'open' | 'decided' | 'none';
  /** What stands today: the chosen option, else what the contract holds, also where an allowance pays for it. */
  readonly counted?: Option;
  /** What may still stand here: the chosen option alone, or all that are considered while it is open. */
  readonly options: readonly Option[];
  /** Weight of what is counted, in pounds. */
  readonly pounds?: number;
  readonly chosenOn?: IsoDate;
}

/** A room with its selections found by place. */
export function viewRoom(room: Omit<RoomView, 'at'>): RoomView {
  const at = new Map<string, SelectionView[]>();
  for (const selection of room.selections)
    for (const { id } of selection.places) {
      const found = at.get(id);
      if (found) found.push(selection);
      else at.set(id, [selection]);
    }
  return { ...room, at };
}

/** A house with its rooms found by slug, and the ways up. */
export function viewHouse(house: Omit<HouseView, 'bySlug' | 'reach'>): HouseView {
  const bySlug = new Map(house.rooms.map((room) => [room.slug, room]));
  return { ...house, bySlug, reach: reachOf(house.rooms, house.levels) };
}

/** From where one room's coordinates begin to where another's do, in feet; undefined where that is not known. */
export function offsetBetween({ stands }: HouseView, from: RoomView, to: RoomView): Xy | undefined {
  if (from.slug === to.slug) return { x: 0, y: 0 };
  const [here, there] = [stands.get(from.slug), stands.get(to.slug)];
  if (!here || !there || here.group !== there.group) return undefined;
  return minus(pointInFeet(there.at), pointInFeet(here.at));
}
