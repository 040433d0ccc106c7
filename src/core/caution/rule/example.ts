import type { FactName, ProductName } from '../../fact/index.js';
import type { Matching } from '../view.js';
import type { DoorFacts, OpeningMeasure, Option, RoomUse } from '../../model/index.js';

/** A little house that a rule speaks of, or passes over. A test builds each one and asks the rule; the register prints what
 *  the rule speaks of. */
export interface Example {
  /** In plain words: 'An edge 8' above the floor below, and no railing'. */
  readonly what: string;
  /** Words of what the rule has seen; null where it sees nothing. */
  readonly sees: string | null;
  readonly rooms: ExampleRooms;
  /** What is to match, by ids such as `hall/railing/north`: room, product and place. */
  readonly matches?: readonly Matching[];
}

/** Rooms by slug, of a house in climate zone 6B. */
export type ExampleRooms = Readonly<Record<string, ExampleRoom>>;

/** What of a room matters to a rule. The rest is plain: a living room of ten feet by ten on the main level, with
 *  one wall, `north`, 9' high. */
export interface ExampleRoom {
  readonly use?: RoomUse;
  readonly level?: 'main' | 'upper';
  /** Of its floor over the ground outside. */
  readonly aboveGround?: string;
  /** Of the ceiling, as written in a record. */
  readonly height?: string;
  /** Square feet. */
  readonly floor?: number;
  /** Square feet of floor under seven and under five feet of height or more. */
  readonly headroom?: { readonly sevenFeet: number; readonly fiveFeet: number };
  /** By mark, in the north wall; a door of 2'-6" by 6'-8", a foot from its left end, unless said otherwise. The room it goes to has it too. */
  readonly openings?: Readonly<
    Record<
      string,
      {
        readonly kind?: OpeningMeasure['kind'];
        readonly to?: string;
        readonly at?: string;
        readonly width?: string;
        readonly height?: string;
        readonly sill?: string;
        readonly function?: DoorFacts['function'];
        readonly glass?: OpeningMeasure['glass'];
        readonly hinge?: OpeningMeasure['hinge'];
        readonly operation?: OpeningMeasure['operation'];
        readonly slides?: OpeningMeasure['slides'];
      }
    >
  >;
  /** Where its south-west corner stands, and its size from west to east and from south to north; the north wall is its own. Absent: nowhere. */
  readonly stands?: { readonly x: string; readonly y: string; readonly size: readonly [string, string] };
  /** What stands behind the openings of its north wall, from face to face. */
  readonly laidThick?: string;
  /** Square feet of its floor that no room is under. */
  readonly overNothing?: number;
  /** Slugs of the rooms under it. */
  readonly over?: readonly string[];
  /** Holes in the floor by name, each with sides of ten feet. */
  readonly voids?: Readonly<Record<string, readonly string[]>>;
  /** Steps of the floor by name, with their heights, and ramps with their slopes. */
  readonly risers?: Readonly<Record<string, string>>;
  readonly ramps?: Readonly<Record<string, string>>;
  /** By id, with the keys of its record. */
  readonly features?: Readonly<Record<string, { readonly kind: string; readonly [key: string]: Written }>>;
  readonly selections?: readonly ExampleSelection[];
}

/** A decided selection at one place: a product with the facts that its option records. */
export type ExampleSelection = {
  readonly [Of in ProductName]: {
    readonly of: Of;
    readonly at: string;
    readonly facts: { readonly [Name in FactName<Of>]?: Fact };
    readonly option?: Partial<Pick<Option, 'slug' | 'name' | 'weight' | 'needs' | 'specification'>>;
  };
}[ProductName];

/** As in a record: a length is text such as `7'-4"`. */
type Fact = string | number | boolean | readonly string[];
export type Written = Fact | { readonly [key: string]: Written };
