import { planMarks, type OverheadMark, type StandingMark } from '../feature/index.js';
import type { Area, Length } from '../../base/units/index.js';
import type { CeilingFacet, FloorVoid, OpeningMeasure, Point, Polygon, Region, WallMeasure } from '../model/index.js';
import type { BookRoom } from './book.js';
import type { LookUp } from './look-up.js';

/** One level of rooms that hang together, as a key plan draws it. Plain data: lengths in whole nanometres. */
export interface KeyLevel {
  readonly level: string;
  readonly name: string;
  /** Rooms that nothing joins to the greatest group are drawn apart from it. */
  readonly isApart: boolean;
  /** Of true north, in degrees clockwise from up. */
  readonly north: number;
  /** As in `LaidLevel`. */
  readonly net: Area;
  readonly gross: Area;
  readonly perimeter: Length;
  readonly outline: readonly Region[];
  readonly walls: readonly Region[];
  readonly wells: readonly { readonly name: string; readonly outline: Region }[];
  /** Outline of the level below it. */
  readonly below: readonly Region[];
  readonly rooms: readonly KeyRoom[];
}

/** A room as a key plan draws it, in its own coordinates. */
export interface KeyRoom {
  readonly slug: string;
  readonly number: string;
  readonly name: string;
  /** Where its coordinates begin in those of its group. */
  readonly at: Point;
  readonly plan: Polygon;
  readonly walls: readonly PlanWall[];
  /** Those that it records: what two rooms share is drawn once. */
  readonly openings: readonly PlanOpening[];
  readonly voids: readonly Pick<FloorVoid, 'name' | 'outline' | 'sides'>[];
  readonly features: readonly { readonly name: string; readonly marks: readonly StandingMark[] }[];
  readonly overhead: KeyOverhead;
}

/** What is over a room and no plan cuts. */
export interface KeyOverhead {
  /** By these timbers lie across the ridge or along it. */
  readonly facets: readonly Pick<CeilingFacet, 'slope' | 'riseDirection'>[];
  readonly timbers: readonly OverheadMark[];
  /** Where skylights open the ceiling. */
  readonly skylights: readonly Polygon[];
}

/** What a plan draws of a wall. */
export type PlanWall = Pick<WallMeasure, 'id' | 'from' | 'to' | 'run' | 'arc' | 'openTo'>;

/** What a plan draws of an opening. */
export type PlanOpening = Pick<
  OpeningMeasure,
  'mark' | 'kind' | 'wall' | 'at' | 'width' | 'sill' | 'to' | 'hinge' | 'swing' | 'operation' | 'slides'
>;

/** The levels of the house as key plans: those of the greatest group from the lowest up, then those of rooms apart. */
export function keyLevels(look: LookUp): readonly KeyLevel[] {
  const { laid, house } = look.book;
  return laid.groups.flatMap(({ levels }, group) =>
    levels.map(({ level, rooms, net, gross, perimeter, outline, walls, wells }, index): KeyLevel => ({
      level,
      name: look.levelName(level),
      isApart: group > 0,
      north: house.north ?? 0,
      net,
      gross,
      perimeter,
      outline,
      walls,
      wells: wells.map(({ name, outline: well }) => ({ name, outline: well })),
      below: levels[index - 1]?.outline ?? [],
      rooms: rooms.flatMap(({ room, at }) => {
        const found = look.room(room);
        return found ? [keyRoom(found, at)] : [];
      }),
    })),
  );
}

function keyRoom({ slug, number, name, measure }: BookRoom, at: Point): KeyRoom {
  return {
    slug,
    number,
    name,
    at,
    plan: measure.plan,
    walls: measure.walls.map(({ id, from, to, run, arc, openTo }) => ({
      id,
      from,
      to,
      run,
      ...(arc && { arc }),
      ...(openTo !== undefined && { openTo }),
    })),
    openings: measure.openings.filter(({ own }) => own).map(planOpening),
    voids: measure.voids.map(({ name: hole, outline, sides }) => ({ name: hole, outline, sides })),
    features: measure.features.map((feature) => ({
      name: feature.name,
      marks: planMarks(feature).filter((mark) => mark.role !== 'overhead'),
    })),
    overhead: {
      facets: measure.ceiling.facets.map(({ slope, riseDirection }) => ({ slope, riseDirection })),
      timbers: measure.features.flatMap((feature) => planMarks(feature).filter((mark) => mark.role === 'overhead')),
      skylights: measure.features.flatMap(({ opensCeiling }) => (opensCeiling ? [opensCeiling] : [])),
    },
  };
}

function planOpening(opening: OpeningMeasure): PlanOpening {
  const { mark, kind, wall, at, width, sill, to, hinge, swing, operation, slides } = opening;
  return {
    mark,
    kind,
    wall,
    at,
    width,
    sill,
    to,
    operation,
    ...(hinge !== undefined && { hinge }),
    ...(swing !== undefined && { swing }),
    ...(slides && { slides }),
  };
}
