import type { Division, DoorFacts, Glass, Opening, OpeningShape, Point, WallLean } from './room.js';
import type { Area, Length, Volume } from '../../base/units/index.js';

/** A closed outline, not repeating the first point. Counter-clockwise in its own x and y, unless said otherwise. */
export type Polygon = readonly Point[];

/** An outline with holes. */
export interface Region {
  readonly outline: Polygon;
  readonly holes: readonly Polygon[];
}

/** Everything a room's shape gives, exact to the record's own figures. */
export interface RoomMeasure {
  readonly room: string;
  /** Plan outline, clockwise from above (as walls are walked), in the room's own coordinates. */
  readonly plan: Polygon;
  readonly voids: readonly FloorVoid[];
  /** Length of the whole outline, and of it what has walls. */
  readonly perimeter: Length;
  readonly wallRun: Length;
  readonly floor: FloorMeasure;
  readonly ceiling: CeilingMeasure;
  /** Upright faces between parts of the ceiling at different heights, in neither the ceiling's area nor the walls'. Ids are
   *  `step-<lower part>-<higher part>`; absent where there are none. */
  readonly steps?: readonly UprightFace[];
  /** Upright faces between parts of the floor at different heights; ids are `riser-<lower part>-<higher part>`. Absent where all of the floor
   *  is level. */
  readonly risers?: readonly Riser[];
  readonly walls: readonly WallMeasure[];
  readonly openings: readonly OpeningMeasure[];
  readonly features: readonly FeatureMeasure[];
  readonly volume: Volume;
  /** Least and greatest ceiling height above the floor under it. */
  readonly lowest: Length;
  readonly highest: Length;
  /** Floor area under at least 5'-0" and 7'-0" of height. */
  readonly headroom: { readonly fiveFeet: Area; readonly sevenFeet: Area };
  /** What lies around it, where the house is laid out. */
  readonly around?: RoomAround;
}

/** What lies around a room as the house is laid out: behind its walls, over its ceiling, under its floor. */
export interface RoomAround {
  /** More may lie around it than is told here: rooms that nothing joins it to, or floors of which no height is recorded. Absent where all of it
   *  is known. */
  readonly unsure?: true;
  /** By wall, in the room's order, from its left end; together they are all of it. Not of sides that are open. */
  readonly walls: readonly WallAround[];
  /** What of each wall stands to the outside, to a room that is not heated, or to what is no room above its neighbours: the wall's own id and name,
   *  with what of its openings and hidden places lies there. Walls with none of it are not here. Of a room that is not heated itself, what
   *  stands in the open. */
  readonly outside: readonly Surface[];
  /** What is left of the walls that stand outside in part: with `outside` it is all of the wall. */
  readonly inside: readonly Surface[];
  /** What of the ceiling lies under no other room. Absent where that is nothing. */
  readonly underRoof?: Surface;
  /** Rooms of the next level over it, and of the level under it, with the area that they share in plan. */
  readonly over: readonly RoomShare[];
  readonly under: readonly RoomShare[];
  /** What of its floor has no room of the level under it, or none that is heated; absent on the lowest level. */
  readonly overNothing?: Area;
}

export interface WallAround {
  readonly wall: string;
  /** What it measures across where it stands outside, by its type or the house's: from the finished face to the outside of its framing. */
  readonly outsideThickness: Length;
  readonly stretches: readonly WallStretch[];
  /** Stretches with a room of another level behind them, where one of the two is tall enough. Absent where there are none. */
  readonly otherLevels?: readonly WallStretch[];
}

/** A stretch of a wall and what is behind it: a room's wall, the outside, or, where a wall ends beside an open side, that wall itself. */
export interface WallStretch {
  readonly from: Length;
  readonly to: Length;
  /** The wall ends here and goes on behind it: neither a room nor the outside. Absent elsewhere. */
  readonly isEnd?: true;
  readonly behind?: {
    readonly room: string;
    readonly wall: string;
    /** From face to face, as laid out. */
    readonly thickness: Length;
  };
}

/** What a wall measures across along most of it: to the room behind it as laid out, or where nothing is behind it by its type. Undefined
 *  where no wall stands, or the house is not laid out. */
export function wallThickness({ around }: Pick<RoomMeasure, 'around'>, wall: string): Length | undefined {
  const found = around?.walls.find((candidate) => candidate.wall === wall);
  if (!found) return undefined;
  const runs = new Map<Length, number>();
  for (const { from, to, behind } of found.stretches) {
    const thickness = behind?.thickness ?? found.outsideThickness;
    runs.set(thickness, (runs.get(thickness) ?? 0) + to - from);
  }
  const [longest] = [...runs].sort(([, one], [, other]) => other - one);
  return longest?.[0] ?? found.outsideThickness;
}

export interface RoomShare {
  readonly room: string;
  readonly area: Area;
}

/** What lies around a room, where the house is laid out and all of it is known: what else there is may be behind any of its walls. */
export function knownAround({ around }: Pick<RoomMeasure, 'around'>): RoomAround | undefined {
  return around?.unsure ? undefined : around;
}

/** A hole in the floor. */
export interface FloorVoid {
  /** `void-<name>`. */
  readonly id: string;
  readonly name: string;
  readonly outline: Polygon;
  /** The ceiling has the same hole. */
  readonly isOpenAbove: boolean;
  /** In the order of the outline. */
  readonly sides: readonly VoidSide[];
}

export interface VoidSide {
  readonly name: string;
  /** Left and right ends, facing the hole from the floor. */
  readonly from: Point;
  readonly to: Point;
  readonly run: Length;
  /** Where floor ends at it, from its left end: not along a wall, and not where another hole goes on. */
  readonly edges: readonly { readonly from: Length; readonly to: Length }[];
}

/** A flat or unfolded surface that a finish can cover. */
export interface Surface {
  /** `floor`, `ceiling`, a wall's name, or `feature/face`. */
  readonly id: string;
  readonly name: string;
  /** True area, before deductions. */
  readonly gross: Area;
  readonly deductions: readonly Deduction[];
  readonly net: Area;
  /** True-size shapes in the surface's own plane, x along it from the left as seen, y up; for layouts and drawings. */
  readonly regions: readonly Region[];
}

/** A surface without what else is known of a wall or a ceiling. */
export function surfaceOnly({ id, name, gross, deductions, net, regions }: Surface): Surface {
  return { id, name, gross, deductions, net, regions };
}

/** Upright faces of a room that are no walls: steps of its ceiling and of its floor. */
export function uprightFaces({
  steps = [],
  risers = [],
}: Pick<RoomMeasure, 'steps' | 'risers'>): readonly UprightFace[] {
  return [...steps, ...risers];
}

/** What there is to stand on: the whole floor less its holes, with what stands on it. */
export function floorArea({ gross, deductions }: Surface): Area {
  return deductions.reduce((sum, { kind, area }) => (kind === 'void' ? sum - area : sum), gross as number) as Area;
}

/** Something taken off a surface. */
export interface Deduction {
  readonly what: string;
  /** Opening mark or feature id. */
  readonly of: string;
  readonly kind: 'opening' | 'feature' | 'void';
  readonly area: Area;
  /** What a feature hides: its kind, and the shapes, for finishes that lie behind it. */
  readonly hidden?: { readonly by: string; readonly pieces: readonly HiddenPiece[] };
}

/** True-size shape in the surface's own plane. */
export interface HiddenPiece {
  readonly region: Region;
  /** Of a ceiling: index in its facets. */
  readonly facet?: number;
}

export interface FloorMeasure extends Surface {
  /** Its parts, where it has some at other heights; the rest of it is named `Floor`. */
  readonly levels?: readonly FloorLevel[];
}

/** One part of the floor. */
export interface FloorLevel extends CeilingFacet {
  /** Above the rest of the floor, below 0 under it; of a ramp, at its low side. */
  readonly height: Length;
}

/** An upright face between parts at different heights, of one stretch or of several side by side. */
export interface UprightFace extends Surface {
  /** Where each stretch stands in plan, from its left end as seen: x of the regions runs along them one after the other, y is the height above the
   *  room's floor. */
  readonly lines: readonly RunLine[];
}

/** A step of the floor. */
export interface Riser extends UprightFace {
  readonly run: Length;
  /** Greatest height from the lower part to the higher. */
  readonly rise: Length;
}

export interface CeilingMeasure extends Surface {
  readonly planArea: Area;
  readonly facets: readonly CeilingFacet[];
}

/** One plane of the ceiling, or of the floor. */
export interface CeilingFacet {
  readonly name: string;
  /** Plan outline (with holes), in the room's coordinates, counter-clockwise from above. */
  readonly plan: Region;
  /** Unfolded true-size shape: x along the level direction, y up the slope, turned as a reflected ceiling plan shows it. */
  readonly shape: Region;
  /** Rise over run; 0 when flat. */
  readonly slope: number;
  /** Plan direction of the rise in degrees counter-clockwise from east; 0 when flat. */
  readonly riseDirection: number;
  readonly area: Area;
  /** Of its highest place above the room's floor. */
  readonly highest: Length;
}

export interface WallMeasure extends Surface {
  /** Left and right ends as seen from inside the room, in plan. */
  readonly from: Point;
  readonly to: Point;
  /** Its true length, along the arc where it is one. */
  readonly run: Length;
  /** Absent where it is straight. */
  readonly arc?: MeasuredArc;
  /** Absent where it is plumb. */
  readonly lean?: MeasuredLean;
  /** Profile of the top: along the wall from the left, and height there. First and last are the ends. */
  readonly top: readonly WallPoint[];
  /** Profile of its foot, where the floor along it is not all level with the rest of the room's. */
  readonly foot?: readonly WallPoint[];
  /** Slug of the room it is open to: no wall stands here and no finish goes on it. */
  readonly openTo?: string;
  /** Slugs of the rooms on its other side, as recorded. */
  readonly beside?: readonly string[];
}

/** A wall that leans into the room. Its surface lies in its own plane: what goes up it is measured along it. */
export interface MeasuredLean extends WallLean {
  /** What it covers of the plan. */
  readonly plan: readonly Region[];
}

/** A place along a wall from its left end, and a height there. */
export interface WallPoint {
  readonly along: Length;
  readonly height: Length;
}

/** Heights of the floor along a wall: of its ends where all of it is level. */
export function wallFoot({ run, foot }: Pick<WallMeasure, 'run' | 'foot'>): readonly WallPoint[] {
  const level = 0 as Length;
  return (
    foot ?? [
      { along: level, height: level },
      { along: run, height: level },
    ]
  );
}

/** A wall that is an arc. Its surface is unfolded: what goes along it is measured on the arc. */
export interface MeasuredArc {
  readonly center: Point;
  readonly radius: Length;
  /** How far its middle lies off the straight line between its ends. */
  readonly rise: Length;
  /** Away from the room, or into it. */
  readonly bows: 'out' | 'in';
  /** Straight pieces that stand for it, from its left end to its right, each with its distance along the arc. */
  readonly line: readonly PlanPoint[];
}

export interface PlanPoint {
  readonly at: Point;
  readonly along: Length;
}

/** A wall's line in plan, from its left end: its two ends where it is straight. */
export function wallLine({
  from,
  to,
  run,
  arc,
}: Pick<WallMeasure, 'from' | 'to' | 'run' | 'arc'>): readonly PlanPoint[] {
  return (
    arc?.line ?? [
      { at: from, along: 0 as Length },
      { at: to, along: run },
    ]
  );
}

export interface OpeningMeasure {
  readonly mark: string;
  readonly kind: 'door' | 'window' | 'cased' | 'open';
  readonly wall: string;
  /** From the left end of the wall, facing it from this room. */
  readonly at: Length;
  readonly width: Length;
  readonly height: Length;
  /** As seen from this room; absent: a rectangle. */
  readonly shape?: OpeningShape;
  readonly sill: Length;
  /** Height of the floor before it, where that is not level with the rest of the room's. */
  readonly floor?: Length;
  /** Room on the other side, or `outside`. */
  readonly to: string;
  /** True in the room that records the opening: counted once in the house. */
  readonly own: boolean;
  readonly area: Area;
  /** Area of it that lies on the wall, when a rake cuts it. */
  readonly areaOnWall: Area;
  readonly record: Opening;
  readonly hinge?: 'left' | 'right';
  readonly swing?: string;
  readonly operation: 'swing' | 'pocket' | 'sliding' | 'double' | 'fixed';
  /** Of a pocket door: where its pocket is, as seen from this room. */
  readonly slides?: 'left' | 'right';
  readonly door?: DoorFacts;
  readonly glass?: Glass;
  readonly division?: Division;
}

/** Height of its bottom above the floor before it. */
export function sillOverFloor({ sill, floor = 0 as Length }: Pick<OpeningMeasure, 'sill' | 'floor'>): Length {
  return (sill - floor) as Length;
}

export function isDownToFloor({ sill, floor = 0 as Length }: Pick<OpeningMeasure, 'sill' | 'floor'>): boolean {
  return sill <= floor;
}

export interface FeatureMeasure {
  readonly kind: string;
  readonly id: string;
  readonly name: string;
  /** Areas that finishes attach to. Ids are `<feature>/<face>`. */
  readonly faces: readonly Surface[];
  readonly runs: readonly Run[];
  readonly counts: readonly Count[];
  /** Taken off the floor. */
  readonly footprint?: Polygon;
  /** Height of the floor that it stands on, where that is not level with the rest of the room's. */
  readonly floor?: Length;
  /** Where it lies in plan, where it takes nothing off. */
  readonly outline?: Polygon;
  /** Taken off the ceiling, by what reaches it. */
  readonly overhead?: Polygon;
  /** Hole that it makes in one plane of the ceiling, in plan. */
  readonly opensCeiling?: Polygon;
  /** Part of a wall that it hides, from the rest of the room's floor or from `sill` up to `height` above it. */
  readonly covers: readonly {
    readonly wall: string;
    readonly from: Length;
    readonly to: Length;
    readonly sill?: Length;
    readonly height: Length;
  }[];
  /** Height of a fall at its open edge. */
  readonly drop?: Length;
  /** Of a flight: least height of the ceiling above the line of its nosings, and how far from its lowest nosing. Absent where the ceiling
   *  as recorded leaves it no way up. */
  readonly headroom?: { readonly height: Length; readonly along: Length };
  /** Facts for people: label and text with units. */
  readonly facts: readonly { readonly label: string; readonly text: string }[];
  /** The record's own figures as its kind reads them (lengths in nanometres), for drawings. */
  readonly data?: unknown;
}

/** A length that something runs along: `rail`, `outside corners`, `hearth edge`. */
export interface Run {
  readonly id: string;
  readonly name: string;
  readonly length: Length;
  /** Straight pieces it is made of, when that matters (posts stand at each end). */
  readonly pieces: readonly Length[];
  /** Rise over run, where it climbs. */
  readonly slope?: number;
  /** Where each piece lies in the plan, in the pieces' order: from its left end, facing the fall, or from the foot of a stair. Absent
   *  where the record does not say. */
  readonly lines?: readonly RunLine[];
  /** How the length was figured, where it is not written in the record. */
  readonly why?: string;
}

export interface RunLine {
  readonly from: Point;
  readonly to: Point;
}

export interface Count {
  readonly id: string;
  readonly name: string;
  readonly count: number;
}
