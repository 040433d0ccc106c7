/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

/**
 * The ceiling.
 */
export type RawCeiling = RawFlatCeiling | RawCeilingPart | RawCeilingParts;
/**
 * A flat ceiling and its height, such as flat 9'-0".
 */
export type RawFlatCeiling = string;
/**
 * One form of ceiling.
 */
export type RawCeilingPart = RawFlat | RawShed | RawGable | RawHip;
/**
 * What this part covers: a rectangle, or corners all the way round where it has other angles.
 */
export type RawCeilingOver = RawCeilingBox | RawCeilingOutline;
/**
 * Corners of what this part covers, measured from the south-west corner of the room.
 *
 * @minItems 3
 */
export type RawCeilingOutline = RawCeilingCorner[];
/**
 * Parts of the ceiling; each says what it is over.
 *
 * @minItems 1
 */
export type RawCeilingParts = RawCeilingPart[];
/**
 * A door, window or other opening, recorded in one of the two rooms it joins.
 */
export type RawOpening = RawOwnOpening | RawSeenOpening;
/**
 * A place in the room.
 */
export type RawPlace = string;
/**
 * Places in the room.
 *
 * @minItems 1
 */
export type RawPlaces = string[];

/**
 * A room: its shape as measured, ceiling, openings, features and selections. The shape is one of size, walls and outline.
 */
export interface RawRoom {
  /**
   * Name as printed.
   */
  name: string;
  /**
   * Room number, unique in the house, in quotes.
   */
  number: string;
  /**
   * Level it is on.
   */
  level: string;
  /**
   * What the room is used for; cautions look at it.
   */
  use:
    | 'living'
    | 'kitchen'
    | 'dining'
    | 'study'
    | 'bedroom'
    | 'bath'
    | 'powder'
    | 'laundry'
    | 'mudroom'
    | 'hall'
    | 'stair'
    | 'gallery'
    | 'closet'
    | 'pantry'
    | 'entry'
    | 'utility'
    | 'garage'
    | 'porch';
  /**
   * East-west by north-south of a rectangular room; its walls are north, east, south and west.
   */
  size?: string;
  /**
   * With size only: sides without a wall, each with the room it is open to.
   */
  open?: {
    /**
     * Room that the north side is open to.
     */
    north?: string;
    /**
     * Room that the east side is open to.
     */
    east?: string;
    /**
     * Room that the south side is open to.
     */
    south?: string;
    /**
     * Room that the west side is open to.
     */
    west?: string;
  };
  /**
   * The walls as walked with a tape, clockwise seen from above.
   *
   * @minItems 3
   */
  walls?: RawWall[];
  /**
   * Corners, clockwise seen from above: for walls at odd angles.
   *
   * @minItems 3
   */
  outline?: RawCorner[];
  /**
   * Holes in the floor.
   */
  voids?: RawVoid[];
  ceiling: RawCeiling;
  /**
   * Doors, windows and other openings.
   */
  openings?: RawOpening[];
  /**
   * Things that finishes attach to: chimney breast, stair, timber … Each kind has keys of its own.
   */
  features?: RawFeature[];
  /**
   * Finishes of the room.
   */
  selections?: RawSelection[];
  /**
   * A note the builder keeps: printed in no handout.
   */
  private?: string;
}
/**
 * One wall of the walk.
 */
export interface RawWall {
  /**
   * Name of the wall.
   */
  name: string;
  /**
   * Direction walked.
   */
  go: 'north' | 'north-east' | 'east' | 'south-east' | 'south' | 'south-west' | 'west' | 'north-west';
  /**
   * Length of the wall.
   */
  run: string;
  /**
   * Room this side is open to, when there is no wall.
   */
  'open-to'?: string;
}
/**
 * A corner, and the wall from it to the next.
 */
export interface RawCorner {
  /**
   * East of any fixed point.
   */
  x: string;
  /**
   * North of the same point.
   */
  y: string;
  /**
   * Name of the wall from this corner to the next.
   */
  wall: string;
  /**
   * Room this side is open to, when there is no wall.
   */
  'open-to'?: string;
}
/**
 * A rectangular hole, measured from the south-west corner of the room.
 */
export interface RawVoid {
  /**
   * Name as printed.
   */
  name: string;
  /**
   * East of the south-west corner of the room.
   */
  x: string;
  /**
   * North of the south-west corner of the room.
   */
  y: string;
  /**
   * East-west extent.
   */
  width: string;
  /**
   * North-south extent.
   */
  depth: string;
}
/**
 * A level ceiling.
 */
export interface RawFlat {
  /**
   * Form of the ceiling.
   */
  form: 'flat';
  /**
   * Height above the floor.
   */
  height: string;
  /**
   * Name of this part of the ceiling, when there are several.
   */
  name?: string;
  over?: RawCeilingOver;
  /**
   * Height of a flat that cuts the form, as a collar does.
   */
  cut?: string;
  'open-above'?: RawCeilingOpenAbove;
}
/**
 * Rectangle that this part covers, measured from the south-west corner of the room.
 */
export interface RawCeilingBox {
  /**
   * East of the south-west corner of the room.
   */
  x: string;
  /**
   * North of the south-west corner of the room.
   */
  y: string;
  /**
   * East-west extent.
   */
  width: string;
  /**
   * North-south extent.
   */
  depth: string;
}
/**
 * A corner, measured from the south-west corner of the room.
 */
export interface RawCeilingCorner {
  /**
   * East of the south-west corner of the room.
   */
  x: string;
  /**
   * North of the south-west corner of the room.
   */
  y: string;
}
/**
 * Above this height the sides of this part are open to a room, as a stair well's are to the level above: there is no step to finish.
 */
export interface RawCeilingOpenAbove {
  /**
   * Height above this room's floor.
   */
  height: string;
  /**
   * The room, by its file name.
   */
  to: string;
}
/**
 * A ceiling that rises one way.
 */
export interface RawShed {
  /**
   * Form of the ceiling.
   */
  form: 'shed';
  /**
   * The low side.
   */
  low: 'north' | 'north-east' | 'east' | 'south-east' | 'south' | 'south-west' | 'west' | 'north-west';
  /**
   * Height of the wall plate above the floor.
   */
  plate: string;
  /**
   * Rise over run, such as 8/12.
   */
  pitch: string;
  /**
   * Name of this part of the ceiling, when there are several.
   */
  name?: string;
  over?: RawCeilingOver;
  /**
   * Height of a flat that cuts the form, as a collar does.
   */
  cut?: string;
  'open-above'?: RawCeilingOpenAbove;
}
/**
 * A ceiling that rises from two sides to a ridge.
 */
export interface RawGable {
  /**
   * Form of the ceiling.
   */
  form: 'gable';
  /**
   * Direction of the ridge.
   */
  ridge: 'east-west' | 'north-south';
  /**
   * Height of the wall plate above the floor.
   */
  plate: string;
  /**
   * Rise over run, such as 8/12.
   */
  pitch?: string;
  /**
   * Height of the ridge, instead of a pitch.
   */
  'ridge-height'?: string;
  /**
   * Name of this part of the ceiling, when there are several.
   */
  name?: string;
  over?: RawCeilingOver;
  /**
   * Height of a flat that cuts the form, as a collar does.
   */
  cut?: string;
  'open-above'?: RawCeilingOpenAbove;
}
/**
 * A ceiling that rises from all four sides.
 */
export interface RawHip {
  /**
   * Form of the ceiling.
   */
  form: 'hip';
  /**
   * Height of the wall plate above the floor.
   */
  plate: string;
  /**
   * Rise over run, such as 8/12.
   */
  pitch: string;
  /**
   * Name of this part of the ceiling, when there are several.
   */
  name?: string;
  over?: RawCeilingOver;
  /**
   * Height of a flat that cuts the form, as a collar does.
   */
  cut?: string;
  'open-above'?: RawCeilingOpenAbove;
}
/**
 * An opening recorded in this room.
 */
export interface RawOwnOpening {
  /**
   * Mark on the schedule, such as D01: unique in the house.
   */
  mark: string;
  /**
   * What it is: a cased opening has trim and no leaf, an open one neither.
   */
  kind: 'door' | 'window' | 'cased' | 'open';
  /**
   * Wall it is in.
   */
  wall: string;
  /**
   * From the left-hand corner of the wall, facing it from inside, to the near side of the opening.
   */
  at: string;
  /**
   * Width of the opening.
   */
  width: string;
  /**
   * Height of the opening.
   */
  height: string;
  /**
   * Height of its bottom above the floor; nothing for doors.
   */
  sill?: string;
  /**
   * Room on the other side, or outside.
   */
  to: string;
  /**
   * Side of the hinges, facing the opening from this room.
   */
  hinge?: 'left' | 'right';
  /**
   * Room that the leaf swings into, or outside.
   */
  swing?: string;
  /**
   * How it opens.
   */
  operation?: 'swing' | 'pocket' | 'sliding' | 'double' | 'fixed';
  /**
   * A remark printed in the schedule.
   */
  note?: string;
}
/**
 * The other side of an opening that another room records.
 */
export interface RawSeenOpening {
  /**
   * Mark of the opening.
   */
  mark: string;
  /**
   * Room whose record holds the opening.
   */
  'recorded-in': string;
  /**
   * Wall of this room it is in.
   */
  wall: string;
  /**
   * From the left-hand corner of the wall, facing it from inside this room.
   */
  at: string;
}
/**
 * A thing in the room that finishes attach to. The keys beside these three are those of its kind.
 */
export interface RawFeature {
  /**
   * Kind of feature.
   */
  kind: string;
  /**
   * Short name by which selections refer to it, unique in the room.
   */
  id: string;
  /**
   * Name as printed.
   */
  name: string;
  [k: string]: unknown;
}
/**
 * A finish for a place of the room: what the contract includes, what is considered, what was chosen.
 */
export interface RawSelection {
  /**
   * Where: ceiling, ceiling-steps, floor, walls, a wall's name, base, openings, doors, windows, an opening's mark, a feature's id, feature/face; or a list of them.
   */
  at: RawPlace | RawPlaces;
  /**
   * Category of the finish, by its file name.
   */
  category: string;
  /**
   * Option that the contract includes, by its file name.
   */
  standard?: string;
  /**
   * Allowance that pays for it.
   */
  allowance?: string;
  /**
   * Options being considered.
   */
  considering?: string[];
  /**
   * The chosen option; none for a deliberate none. Absent while open.
   */
  chosen?: string;
  /**
   * Day of the choice.
   */
  'chosen-on'?: string;
  /**
   * Who chose, by role.
   */
  'chosen-by'?: string;
  /**
   * Who buys it.
   */
  supply?: 'contractor' | 'owner-furnished';
  /**
   * Who installs what the owner furnishes: a trade, by its file name, or owner. Absent: the trade of the category, where the contract includes that installation.
   */
  install?: string;
  /**
   * Day it was ordered.
   */
  'ordered-on'?: string;
  /**
   * Day it was installed.
   */
  'installed-on'?: string;
  /**
   * The builder's waste for this place, when it differs from the option's.
   */
  waste?: string;
  /**
   * Which way boards or sheets run: east-west or north-south on floors and ceilings, horizontal or vertical on walls. Absent: the usual way.
   */
  courses?: 'east-west' | 'north-south' | 'horizontal' | 'vertical';
  /**
   * A remark for the trade.
   */
  note?: string;
}
