import type { DoorFacts, OpeningMeasure, OpeningShape, ScheduleColumn } from '../../model/index.js';
import type { Rail, StockCount } from '../../takeoff/index.js';
import type { Area, Length } from '../../../base/units/index.js';

/** The schedules of the house in the trades' usual form. Rooms are slugs, or `outside`; options are `<category>/<slug>`. */
export interface Schedules {
  readonly finish: FinishSchedule;
  /** Every door once, in order of mark. */
  readonly doors: readonly DoorRow[];
  /** Windows, cased openings and open passages, in order of mark. */
  readonly openings: readonly OpeningRow[];
  readonly hardware: readonly HardwareSet[];
  readonly railings: RailingSchedule;
  readonly timbers: readonly TimberRow[];
  readonly stone: readonly StoneRow[];
  readonly insulation: readonly InsulationRow[];
  readonly sound: readonly SoundRow[];
  /** By room, surface and sheen. */
  readonly paint: readonly PaintRow[];
}

/** One surface of a room with one paint on it: walls, ceiling, base, casing, doors, parts of a stair, timber. */
export interface PaintRow {
  readonly room: string;
  /** What is coated: `Walls`, `Base`, `Doors` … */
  readonly surface: string;
  readonly placeText: string;
  /** The selection that is coated, or that is the paint itself. */
  readonly selection: string;
  readonly standing: Standing;
  /** Id and name of the paint. */
  readonly paint: string;
  readonly name: string;
  readonly sheen: string;
  /** Of one coat, without waste. */
  readonly area: Area;
  readonly coats: number;
  readonly gallons?: number;
  /** How the area was figured. */
  readonly why: string;
}

/** `standard`: nothing is chosen yet, and the contract's standard stands for now. `open`: nothing stands at all. */
export type Standing = 'chosen' | 'standard' | 'open' | 'none';

/** What a selection puts in a schedule. */
export interface Scheduled {
  readonly selection: string;
  readonly standing: Standing;
  readonly supply: 'contractor' | 'owner-furnished';
  /** Id of the option that stands; absent where none does. */
  readonly option?: string;
  /** Name of that option. */
  readonly name?: string;
}

export interface FinishSchedule {
  /** What each key means, in order of key. One key is one option wherever it stands. */
  readonly legend: readonly FinishKey[];
  /** Every room once, in order of number. */
  readonly rows: readonly FinishRow[];
  /** Remarks, numbered through the schedule. */
  readonly notes: readonly FinishNote[];
}

export interface FinishKey {
  readonly key: string;
  readonly option: string;
  readonly name: string;
  /** Maker and model. */
  readonly product: string;
  readonly category: string;
  readonly section: string;
}

export interface FinishRow {
  readonly room: string;
  readonly cells: Readonly<Record<ScheduleColumn, readonly FinishGroup[]>>;
  /** Least and greatest ceiling height. */
  readonly lowest: Length;
  readonly highest: Length;
  /** Numbers of its notes. */
  readonly notes: readonly number[];
}

/** Finishes of one part of a column, in working order. `at` is empty where they cover all that the column speaks of;
 *  walls are told apart only where they differ. */
export interface FinishGroup {
  readonly at: string;
  readonly finishes: readonly (Scheduled & { readonly key?: string })[];
}

export interface FinishNote {
  readonly number: number;
  readonly room: string;
  readonly placeText: string;
  readonly text: string;
  readonly selection: string;
}

export interface DoorRow {
  readonly mark: string;
  /** The room that records it; hinges and pockets are told as seen from here. */
  readonly room: string;
  readonly wall: string;
  readonly to: string;
  readonly width: Length;
  readonly height: Length;
  /** Of the opening and its leaf; absent: a rectangle. */
  readonly shape?: OpeningShape;
  /** Of the leaf. */
  readonly thickness?: Length;
  readonly door?: Scheduled;
  readonly face?: string;
  readonly panels?: string;
  readonly core?: string;
  /** Is the door that stands made in the opening's size? Absent where its maker does not say. */
  readonly fits?: boolean;
  /** Height in which it is made. */
  readonly madeHeight?: Length;
  readonly operation: OpeningMeasure['operation'];
  readonly hinge?: 'left' | 'right';
  /** Of a pocket door: side that it slides to, seen from the room that records it. */
  readonly slides?: 'left' | 'right';
  readonly swing?: string;
  /** Side of the hinges as one pushes the door open. Absent where no single leaf swings. */
  readonly hand?: 'left' | 'right';
  /** Rough opening of a door that swings and fits: its size and what its maker adds. */
  readonly rough?: { readonly width: Length; readonly height: Length };
  readonly jamb: Jamb;
  /** Gap left beneath the leaf, over the finish floor. */
  readonly undercut?: Length;
  readonly function?: NonNullable<DoorFacts['function']>;
  readonly stop?: NonNullable<DoorFacts['stop']>;
  readonly fireRating?: string;
  readonly glass?: string;
  /** Of the metal: hinges and trim are of one finish. */
  readonly finish?: string;
  /** By the height of each leaf that swings, and with what they are bought; in `twice` both count them. */
  readonly hinges?: { readonly count: number; readonly with?: 'door' | 'hardware' | 'twice' };
  /** Is its function among those that the hardware is made in? Absent where either is not told. */
  readonly functionIsMade?: boolean;
  readonly isFlush?: boolean;
  /** Casing and the like on each side. */
  readonly trim: readonly Trim[];
  readonly hardware?: Scheduled & { readonly set?: string };
  readonly note?: string;
}

/** Trim of an opening, with the room whose side it is on and its key in the finish schedule. */
export interface Trim extends Scheduled {
  readonly room: string;
  readonly key?: string;
}

/** Depth of a jamb as the door is made, and of the wall: studs and the finish on both sides, where records know them. */
export interface Jamb {
  readonly made?: Length;
  readonly wall?: Length;
  /** Is the jamb as deep as the wall, or deeper? Given when both are known. */
  readonly reaches?: boolean;
}

export interface OpeningRow {
  readonly mark: string;
  readonly kind: Exclude<OpeningMeasure['kind'], 'door'>;
  readonly room: string;
  readonly wall: string;
  readonly to: string;
  readonly width: Length;
  readonly height: Length;
  /** Absent: a rectangle. */
  readonly shape?: OpeningShape;
  readonly sill: Length;
  /** Top of the opening above the floor of `room`. */
  readonly head: Length;
  /** Of the floor before it, where that is not level with the rest of the room's. */
  readonly floor?: Length;
  /** On a wall that leans, where sizes go along it: heights above the floor. */
  readonly plumb?: { readonly sill: Length; readonly head: Length };
  readonly area: Area;
  readonly operation: OpeningMeasure['operation'];
  readonly glass?: NonNullable<OpeningMeasure['glass']>;
  readonly trim: readonly Trim[];
  readonly note?: string;
}

export interface HardwareSet {
  /** `H1`, `H2`, in the order of the options and of their functions. One set is one product in one function, for one leaf or a
   *  pair. */
  readonly set: string;
  readonly function?: NonNullable<DoorFacts['function']>;
  readonly leaves: 'single' | 'pair';
  readonly option: string;
  readonly name: string;
  readonly product: string;
  readonly finish?: string;
  readonly functions?: string;
  readonly backset?: Length;
  /** What one set holds. */
  readonly holds?: string;
  /** What a pair has more, for the leaf that opens second. */
  readonly more: readonly { readonly what: string; readonly count: number; readonly unit: string }[];
  readonly doors: readonly {
    readonly mark: string;
    readonly standing: Standing;
    readonly supply: Scheduled['supply'];
  }[];
}

export interface RailingSchedule {
  readonly rows: readonly RailingRow[];
  readonly length: Length;
  readonly posts: number;
}

export interface RailingRow {
  readonly room: string;
  readonly place: string;
  readonly name: string;
  readonly railing: Scheduled;
  readonly kind: 'level' | 'rake';
  /** Rise over run of a rake. */
  readonly slope?: number;
  readonly length: Length;
  /** Straight pieces; a post stands at each end. */
  readonly pieces: readonly Length[];
  /** Posts that are this run's: where two runs end together, one of them has the post. */
  readonly posts?: number;
  /** As it is built with the option that stands. */
  readonly rail?: Rail;
  /** Height of the top above the floor or the nosings. */
  readonly height?: Length;
  readonly clearOpening?: Length;
  readonly postSpacing?: Length;
  readonly mount?: string;
  /** Height of the fall beside it. */
  readonly drop?: Length;
}

/** Timbers of one kind, piece by piece alike. */
export interface TimberRow {
  readonly room: string;
  readonly place: string;
  readonly name: string;
  readonly timber: Scheduled;
  readonly count: number;
  /** Between what a piece is joined to, what is added at its two ends, and the piece as it is ordered. */
  readonly clear: Length;
  readonly ends: readonly [Length, Length];
  readonly length: Length;
  /** As the record has it. */
  readonly section: string;
  /** Lengths that its pieces are cut from, with how many pieces come from each. */
  readonly stock: readonly StockCount[];
  /** Of one piece. */
  readonly pounds?: number;
  readonly joinery?: string;
}

export interface StoneRow {
  readonly room: string;
  readonly placeText: string;
  readonly stone: Scheduled;
  readonly faces: readonly { readonly name: string; readonly gross: Area; readonly net: Area }[];
  /** Flats after what corner pieces cover, in sq ft, and corners in lin ft: without waste. */
  readonly flats: Area;
  readonly corners: number;
  /** Pounds in place, and for a square foot. */
  readonly pounds?: number;
  /** With its mortar and lath, where they are recorded. */
  readonly poundsPerSqFt?: number;
  readonly bed?: Length;
  readonly setting?: string;
  readonly joint?: string;
  /** What must be there to carry it. */
  readonly support: readonly { readonly what: string; readonly by: string; readonly before: string }[];
}

/** Places with the same insulation: R-values of its layers add up. The path through framing is not reckoned. */
export interface InsulationRow {
  /** `walls`, `ceilings`, `floors`, `ceiling steps`, `risers`, `skylight shafts`, or the name of another feature that is insulated. */
  readonly where: string;
  readonly layers: readonly (Omit<Scheduled, 'selection'> & {
    readonly r: number;
    readonly thickness?: Length;
    readonly type?: string;
    readonly retarder?: string;
    readonly mustBeCovered?: boolean;
    /** What it is made of, from outside in, where its record says so. */
    readonly of?: readonly { readonly what: string; readonly r: number; readonly thickness?: Length }[];
    /** R outside the framing that goes with it. */
    readonly continuous?: number;
  })[];
  /** Between the framing. */
  readonly r: number;
  /** Outside the framing: it takes no share of this. */
  readonly continuous?: number;
  readonly area: Area;
  readonly rooms: readonly string[];
}

export interface SoundRow {
  readonly room: string;
  readonly placeText: string;
  readonly batt: Scheduled;
  /** Sound transmission class of the wall that was tested. */
  readonly stc: number;
  readonly assembly?: string;
  readonly thickness?: Length;
  readonly area: Area;
  /** Slugs of the rooms on the other side of these walls. */
  readonly beside: readonly string[];
  /** Marks of the openings in these walls. */
  readonly openings: readonly string[];
}
