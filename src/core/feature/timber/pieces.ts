import {
  bounds,
  headings,
  heightOn,
  nearTape,
  patchInFeet,
  ringInFeet,
  stretchesIn,
  type Patch,
  type Ring,
  type Stretch,
  type Xy,
} from '../../../base/geometry/index.js';
import { feet, type Length } from '../../../base/units/index.js';
import type { CeilingFacet, RoomMeasure } from '../../model/index.js';
import { facetPlane } from '../ceiling-plane.js';
import type { CeilingPiece, RoomSpace } from '../kind.js';
import type { Timber, TimberPlace } from './read.js';

const noLength = 0 as Length;

/** East, north and above the room's floor, in feet, in the room's own coordinates. */
export type Xyz = readonly [x: number, y: number, z: number];

/** The clear length of one piece, along the middle of its section. The width of the section lies level and square to it, but of a post
 *  north to south, so that it stands in a frame that runs east-west as the frame's other pieces do. */
export interface TimberPiece {
  readonly from: Xyz;
  readonly to: Xyz;
}

/** What of a room timbers go by: as it is being measured, or measured. */
export type TimberedRoom = Pick<RoomSpace, 'plan' | 'ceiling'> | Pick<RoomMeasure, 'plan' | 'ceiling'>;

/**
 * Where the pieces of a timber feature are, station by station and in each from the west or the south; none where its place is not
 * recorded. Under a slope a piece lies plumb under it by half of its depth, measured plumb, and its ends lie on plumb lines, as rafters
 * are cut. Lengths beyond what is seen, such as tenons, are not in it.
 */
export function timberPieces(timber: Timber, room: TimberedRoom): readonly TimberPiece[] {
  return placedPieces(timber, room).map(({ from, to }) => ({ from, to }));
}

/** A piece with what it goes by. */
export interface PlacedPiece extends TimberPiece {
  /** Middle of its station, in feet from the corner across the run. */
  readonly across: number;
  /** Its clear length in plan, in feet from the corner along the run; of a post, nothing at its middle. */
  readonly span: Stretch;
  /** What it lies under, where it follows the ceiling. */
  readonly slope?: StationSlope;
}

export function placedPieces({ place, ...timber }: Timber, room: TimberedRoom): readonly PlacedPiece[] {
  if (!place) return [];
  const corner = cornerOf(room);
  const { count } = timber;
  if (place.follows) {
    const all: PlacedPiece[] = [];
    for (let station = 0; station < count && all.length < count; station++)
      all.push(...slopesAt(place, station, room).map((slope) => underSlope(slope, { ...timber, place }, corner)));
    return all.slice(0, count);
  }
  return Array.from({ length: count }, (_, station) => {
    const [from, across] = [feet(place.from), acrossAt(place, station)];
    const [foot, length] = [feet(place.underside ?? noLength), feet(timber.length)];
    const at = (along: number, height: number): Xyz => spot(place, corner, along, across, height);
    if (place.run === 'upright')
      return { from: at(from, foot), to: at(from, foot + length), across, span: { from, to: from } };
    const [to, height] = [from + length, foot + feet(timber.depth) / 2];
    return { from: at(from, height), to: at(to, height), across, span: { from, to } };
  });
}

/** South-west corner of the plan's bounding box, in feet. */
export function cornerOf({ plan }: Pick<RoomMeasure, 'plan'>): Xy {
  const { west, south } = bounds(ringInFeet(plan));
  return { x: west, y: south };
}

/** Middle of a station, in feet from the corner across the run. */
export function acrossAt({ at, spacing }: TimberPlace, station: number): number {
  return feet(at) + station * feet(spacing ?? noLength);
}

/** The line along which pieces run that are so far across, in feet: its place beside the corner, and its way. */
export function lineAt({ run }: TimberPlace, corner: Xy, across: number): { readonly through: Xy; readonly ahead: Xy } {
  if (run === 'north-south') return { through: { x: corner.x + across, y: corner.y }, ahead: headings.north };
  return { through: { x: corner.x, y: corner.y + across }, ahead: headings.east };
}

/** A slope of the ceiling over the line of a station. */
export interface StationSlope extends Stretch {
  /** Of the station, in feet from the corner across the run. */
  readonly across: number;
  /** Heights at the stretch's two ends. */
  readonly heights: readonly [number, number];
}

/** The slopes that the ceiling has along the line of a station, in order. Level along the line is no slope. */
export function slopesAt(place: TimberPlace, station: number, room: TimberedRoom): readonly StationSlope[] {
  const across = acrossAt(place, station);
  const { through, ahead } = lineAt(place, cornerOf(room), across);
  const found = ceilingOf(room).flatMap(({ plane, patch }) => {
    if (Math.abs(plane.a * ahead.x + plane.b * ahead.y) < nearSlope) return [];
    return stretchesIn(ringsOf(patch), through, ahead).map(({ from, to }) => {
      const heightAt = (along: number): number =>
        heightOn(plane, { x: through.x + ahead.x * along, y: through.y + ahead.y * along });
      return { across, from, to, heights: [heightAt(from), heightAt(to)] as const };
    });
  });
  return joined(found.toSorted((one, other) => one.from - other.from));
}

/** A rise for each foot that nobody frames. */
const nearSlope = 1e-9;

/** What a skylight or a chimney leaves of one slope is still one slope. */
function joined(slopes: readonly StationSlope[]): readonly StationSlope[] {
  const list: StationSlope[] = [];
  for (const next of slopes) {
    const last = list.at(-1);
    if (last && isOnOneLine(last, next))
      list[list.length - 1] = { ...last, to: next.to, heights: [last.heights[0], next.heights[1]] };
    else list.push(next);
  }
  return list;
}

function isOnOneLine(one: StationSlope, other: StationSlope): boolean {
  const pitch = pitchOf(one);
  return (
    Math.abs(pitch - pitchOf(other)) < nearTape &&
    Math.abs(one.heights[1] + pitch * (other.from - one.to) - other.heights[0]) < nearTape
  );
}

/** Rise for each foot along the line. */
function pitchOf({ from, to, heights: [start, end] }: StationSlope): number {
  return (end - start) / (to - from);
}

function underSlope(
  slope: StationSlope,
  { place, length, depth }: Timber & { readonly place: TimberPlace },
  corner: Xy,
): PlacedPiece {
  const { across, from, to, heights } = slope;
  const [start] = heights;
  const pitch = pitchOf(slope);
  const factor = Math.hypot(1, pitch);
  const [skip, run] = [feet(place.from), feet(length) / factor];
  // Going up from the low end, whichever it is.
  const [first, last] = pitch > 0 ? [from + skip, from + skip + run] : [to - skip - run, to - skip];
  const drop = (feet(depth) / 2) * factor;
  const at = (along: number): Xyz => spot(place, corner, along, across, start + pitch * (along - from) - drop);
  // From the west or the south, as every piece.
  return { from: at(first), to: at(last), across, span: { from: first, to: last }, slope };
}

function spot({ run }: TimberPlace, corner: Xy, along: number, across: number, height: number): Xyz {
  return run === 'north-south'
    ? [corner.x + across, corner.y + along, height]
    : [corner.x + along, corner.y + across, height];
}

/** The ceiling as planes over parts of the plan. */
export function ceilingOf({ ceiling }: TimberedRoom): readonly CeilingPiece[] {
  return 'facets' in ceiling ? ceiling.facets.map(pieceOf) : ceiling;
}

function pieceOf(facet: CeilingFacet): CeilingPiece {
  return { plane: facetPlane(facet), patch: patchInFeet(facet.plan) };
}

export function ringsOf({ outline, holes }: Patch): readonly Ring[] {
  return [outline, ...holes];
}
