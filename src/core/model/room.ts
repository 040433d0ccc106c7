import type { Origin, Path } from '../../base/problem/index.js';
import type { Cents, CompassBearing, Decimal, IsoDate, Length } from '../../base/units/index.js';

export interface Room {
  readonly slug: string;
  readonly name: string;
  /** Room number, unique in the house, such as `101`. */
  readonly number: string;
  readonly level: string;
  /** Of its floor over the ground outside, where that is not its level's. */
  readonly aboveGround?: Length;
  /** What the room is used for; rules look at it. */
  readonly use: RoomUse;
  readonly shape: Shape;
  /** Ids of wall types by the walls' names, where they are not the usual ones. */
  readonly wallTypes?: Readonly<Record<string, string>>;
  /** Walls that are meant to stand out of line, or in an odd thickness. */
  readonly jogs?: readonly string[];
  readonly place?: RoomPlace;
  /** Holes in the floor, such as a stair well's. */
  readonly voids: readonly VoidShape[];
  /** Parts of the floor at other heights than the rest of it; absent where all of it is level. */
  readonly floor?: readonly FloorPart[];
  readonly ceiling: readonly CeilingPart[];
  readonly openings: readonly Opening[];
  readonly features: readonly FeatureRecord[];
  readonly selections: readonly Selection[];
  /** Side from which its picture is seen; absent: the one that shows most. */
  readonly viewFrom?: Bearing;
  readonly sections?: readonly RoomSection[];
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** An upright cut through a room, square to the way that one looks. */
export interface RoomSection {
  readonly name: string;
  /** From the south-west corner of its plan: north of it for who looks north or south, else east. */
  readonly at: Length;
  readonly looks: 'north' | 'east' | 'south' | 'west';
}

export const roomUses = [
  'living',
  'kitchen',
  'dining',
  'study',
  'bedroom',
  'bath',
  'powder',
  'laundry',
  'mudroom',
  'hall',
  'stair',
  'gallery',
  'closet',
  'pantry',
  'entry',
  'utility',
  'garage',
  'porch',
] as const;
export type RoomUse = (typeof roomUses)[number];

/** Rooms that are not heated: what stands against them is insulated as against the outside. */
export const unheatedUses: readonly RoomUse[] = ['garage', 'porch'];

/** Rooms that people sleep or work in: what is heard there disturbs. */
export const quietUses: readonly RoomUse[] = ['bedroom', 'study'];

/** Where a room's south-west corner stands, from that of another. */
export interface RoomPlace {
  readonly from: string;
  readonly at: Point;
}

export type Bearing = CompassBearing;

/** x runs east, y runs north, both in nanometres from any corner the record likes. */
export interface Point {
  readonly x: Length;
  readonly y: Length;
}

/** A room's plan as the record gives it. Wall names are unique in a room. */
export type Shape =
  | {
      readonly by: 'size';
      /** East-west extent, then north-south extent. Walls are north, east, south, west. */
      readonly eastWest: Length;
      readonly northSouth: Length;
      readonly open: readonly OpenEdge[];
      readonly beside?: readonly BesideEdge[];
    }
  | { readonly by: 'walk'; readonly walls: readonly WalkedWall[] }
  | { readonly by: 'outline'; readonly corners: readonly OutlineCorner[] };

/** Where a wall is written in its room's record. */
export function wallPath(shape: Shape, wall: string): Path {
  switch (shape.by) {
    case 'size':
      return ['size'];
    case 'walk':
      return ['walls', shape.walls.findIndex(({ name }) => name === wall)];
    case 'outline':
      return ['outline', shape.corners.findIndex((corner) => corner.wall === wall)];
  }
}

/** A side that has no wall, because the room runs on into `to`. */
export interface OpenEdge {
  readonly wall: string;
  readonly to: string;
}

/** The rooms on the other side of a wall. */
export interface BesideEdge {
  readonly wall: string;
  readonly rooms: readonly string[];
}

export interface WalkedWall {
  readonly name: string;
  readonly go: Bearing;
  /** Straight from end to end, also where the wall is an arc. */
  readonly run: Length;
  readonly arc?: WallArc;
  readonly leans?: WallLean;
  /** Slug of the room this side is open to, when there is no wall. */
  readonly openTo?: string;
  /** Slugs of the rooms on its other side. */
  readonly beside?: readonly string[];
}

/** A wall that is no straight line between its ends but an arc: by the rise over the straight line, or by its radius. A radius gives
 *  the lesser of two arcs. */
export type WallArc = { readonly bows: 'out' | 'in' } & ({ readonly rise: Length } | { readonly radius: Length });

/** A wall that leans into the room: `by` from plumb, at a height above the floor. */
export interface WallLean {
  readonly by: Length;
  readonly at: Length;
}

export interface OutlineCorner {
  readonly at: Point;
  /** Name of the wall from this corner to the next. */
  readonly wall: string;
  readonly arc?: WallArc;
  readonly leans?: WallLean;
  readonly openTo?: string;
  readonly beside?: readonly string[];
}

/** A hole in the floor. The room goes on above it. */
export interface VoidShape {
  readonly name: string;
  readonly corners: readonly Point[];
  /** Names of its sides, each from its corner to the next; absent: their numbers. */
  readonly sides?: readonly string[];
  /** The ceiling has the same hole: there the room is not. */
  readonly isOpenAbove?: boolean;
}

/** Part of a floor. Every other height of the room is above the rest of its floor. */
export interface FloorPart {
  readonly name: string;
  /** Its outline in the room's own coordinates. */
  readonly over: readonly Point[];
  /** Above the rest of the floor, below 0 under it; of a ramp, at its low side. */
  readonly height: Length;
  readonly ramp?: { readonly low: Direction; readonly pitch: Pitch };
  readonly path: Path;
}

/** Part of a ceiling; without `over` it covers the whole room. */
export interface CeilingPart {
  readonly name: string;
  readonly form: CeilingForm;
  /** Outline of the part in the room's own coordinates. */
  readonly over?: readonly Point[];
  /** A flat that cuts the form, as a collar does. */
  readonly cut?: Length;
  /** Above this height its sides are open to a room, as a stair well's are to the level above: no step to finish there. */
  readonly openAbove?: { readonly height: Length; readonly to: string };
  readonly path: Path;
}

/** Heights are above the room's floor; pitches are rise over run (6/12 is 0.5). */
export type CeilingForm =
  | { readonly form: 'flat'; readonly height: Length }
  | { readonly form: 'shed'; readonly low: Direction; readonly plate: Length; readonly pitch: Pitch }
  | {
      readonly form: 'gable';
      readonly ridge: Direction;
      readonly plate: Length;
      readonly pitch: Pitch;
    }
  | {
      readonly form: 'gable';
      readonly ridge: Direction;
      readonly plate: Length;
      readonly ridgeHeight: Length;
    }
  | { readonly form: 'hip'; readonly plate: Length; readonly pitch: Pitch }
  /** The lowest of planes, each by three points. */
  | { readonly form: 'planes'; readonly planes: readonly (readonly SpacePoint[])[] };

/** A unit vector in plan: x east, y north. */
export interface Direction {
  readonly x: number;
  readonly y: number;
}

/** A point in the room's own coordinates and its height above the floor. */
export interface SpacePoint extends Point {
  readonly height: Length;
}

export interface Pitch {
  readonly rise: number;
  readonly run: number;
}

export type Opening = OwnOpening | SeenOpening;

export const openingKinds = ['door', 'window', 'cased', 'open'] as const;

/** An opening recorded in this room. */
export interface OwnOpening {
  readonly by: 'own';
  readonly mark: string;
  readonly kind: (typeof openingKinds)[number];
  readonly wall: string;
  /** From the left-hand corner of the wall, facing it from inside the room, to the near side of the opening. */
  readonly at: Length;
  readonly width: Length;
  readonly height: Length;
  /** Absent: a rectangle. */
  readonly shape?: OpeningShape;
  /** Height of the bottom above the floor; 0 for doors. */
  readonly sill: Length;
  /** The room on the other side, or `outside`. */
  readonly to: string;
  /** Doors: side of the hinges, facing the opening from this room. */
  readonly hinge?: 'left' | 'right';
  /** Doors: the room the leaf swings into (a slug), or a kind that does not swing. */
  readonly swing?: string;
  readonly operation: 'swing' | 'pocket' | 'sliding' | 'double' | 'fixed';
  /** Pocket doors: side that the leaf slides to, facing the opening from this room. */
  readonly slides?: 'left' | 'right';
  /** What a door is asked for beside its size. */
  readonly door?: DoorFacts;
  /** Of a window, or a door with glass in it. */
  readonly glass?: Glass;
  /** Of the same: absent, one pane. */
  readonly division?: Division;
  readonly note?: string;
  readonly path: Path;
}

/** Lights of a whole opening. */
export interface Division {
  readonly across: number;
  readonly up: number;
}

export type Glass = 'plain' | 'tempered' | 'laminated';

/** What an opening is where it is no rectangle. It fills its width and height: an arch has its crown at that height, and a rake
 *  its higher side. */
export type OpeningShape =
  /** Width and height are the diameter. */
  | { readonly is: 'round' }
  /** A part of a circle, half of it at most, over upright sides. */
  | { readonly is: 'arch'; readonly rise: Length }
  | { readonly is: 'arch'; readonly radius: Length }
  /** `low` is its lower side, facing the opening from the room, and `to` the height there. */
  | { readonly is: 'rake'; readonly low: 'left' | 'right'; readonly to: Length };

export const doorFunctions = ['passage', 'privacy', 'dummy', 'entry'] as const;

export interface DoorFacts {
  /** What the lock does; of a pair, that of the leaf that opens first. */
  readonly function?: (typeof doorFunctions)[number];
  readonly stop?: 'wall' | 'floor' | 'hinge' | 'overhead' | 'none';
  /** Where it is another one than the product's. */
  readonly undercut?: Length;
  /** `20 min`, by its label. */
  readonly fireRating?: string;
  /** It lies flush in the wall: no casing on either side. */
  readonly flush?: boolean;
}

/** The other side of an opening that another room records. */
export interface SeenOpening {
  readonly by: 'seen';
  readonly mark: string;
  /** Slug of the room that records the opening. */
  readonly recordedIn: string;
  readonly wall: string;
  readonly at: Length;
  readonly path: Path;
}

/** A feature as read by its kind's reader; `data` is of the kind's own type. */
export interface FeatureRecord {
  readonly kind: string;
  readonly id: string;
  readonly name: string;
  readonly data: unknown;
  readonly path: Path;
}

/** Which way boards or sheets run: by compass on floors and ceilings, upright or level on walls and faces. */
export type CourseRun = 'east-west' | 'north-south' | 'horizontal' | 'vertical';

export interface NeedDone {
  readonly need: string;
  readonly on: IsoDate;
  readonly by: string;
}

/** What happens to a choice after it was made, in order. */
export const factSteps = ['released', 'ordered', 'acknowledged', 'shipped', 'received', 'installed'] as const;
export type FactStep = (typeof factSteps)[number];

/** One dated fact of a selection. */
export interface SelectionFact {
  readonly step: FactStep;
  readonly on: IsoDate;
  /** Slug of what was released or ordered. */
  readonly option?: string;
  readonly by?: string;
  /** Number of the order. */
  readonly number?: string;
  /** Day on which the supplier promised it on site. */
  readonly promised?: IsoDate;
  /** How much came, and of which lot. */
  readonly count?: string;
  readonly lot?: string;
}

/** Has it come? Then nothing waits for it any more. */
export function isOnSite(facts: readonly SelectionFact[]): boolean {
  return facts.some(({ step }) => step === 'received' || step === 'installed');
}

/** The fact that has the supplier's last promise. */
export function lastPromise(
  facts: readonly SelectionFact[],
): (SelectionFact & { readonly promised: IsoDate }) | undefined {
  return facts.findLast((fact): fact is SelectionFact & { readonly promised: IsoDate } => fact.promised !== undefined);
}

/** What stood before a choice that was changed after release or order. */
export interface InsteadOf {
  readonly option: string;
  readonly chosenOn?: IsoDate;
  /** Day of the change. */
  readonly on: IsoDate;
  readonly why: string;
  readonly order?: string;
  /** What the supplier keeps, where it is known. */
  readonly restocking?: Cents;
}

/** A place that a selection leaves out, or a stretch of a wall, from its left end. */
export type Exception =
  { readonly place: string } | { readonly place: string; readonly from: Length; readonly to: Length };

export interface Selection {
  /** Places as written: `ceiling`, `floor`, `walls`, a wall's name, `base`, an opening mark, a feature's id. */
  readonly at: readonly string[];
  /** Of these places, what is left out. */
  readonly except?: readonly Exception[];
  readonly category: string;
  readonly standard?: string;
  readonly allowance?: string;
  readonly considering: readonly string[];
  /** Absent while open; `none` for a deliberate none. */
  readonly chosen?: string;
  readonly chosenOn?: IsoDate;
  readonly chosenBy?: string;
  /** Short digest of the choice slip by which it was handed over. */
  readonly slip?: string;
  readonly supply: 'contractor' | 'owner-furnished';
  /** Who installs what the owner furnishes: a trade's slug, or `owner`. Absent: the category's trade, where the contract
   *  includes that installation. */
  readonly install?: string;
  /** Milestones that this choice no longer fixes, each with what was done so that it does not. */
  readonly keptOpen?: readonly { readonly milestone: string; readonly on: IsoDate; readonly why: string }[];
  /** Needs of its options, by id, that somebody has provided here. */
  readonly needsDone?: readonly NeedDone[];
  /** What happened after the choice, in the order of `factSteps`. */
  readonly facts: readonly SelectionFact[];
  readonly insteadOf?: InsteadOf;
  readonly note?: string;
  /** The builder's waste for this place, when it differs from the option's. */
  readonly waste?: Decimal;
  /** Which way boards or sheets run here, where the usual way is not wanted. */
  readonly courses?: CourseRun;
  /** Name of the finish set that the room has it from; absent: it stands in the room's record. */
  readonly finishSet?: string;
  readonly path: Path;
}

/** `<room>/<category>/<first place>`: unique in a house. */
export function selectionId(room: string, { category, at }: Pick<Selection, 'category' | 'at'>): string {
  return `${room}/${category}/${(at[0] ?? '').replace('/', '.')}`;
}

/** Was it released or ordered, so that changing it has a price? */
export function isCommitted({ facts }: Pick<Selection, 'facts'>): boolean {
  return facts.length > 0;
}
