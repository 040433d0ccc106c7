import type { OpeningMeasure, Point, RoomMeasure, Surface, WallMeasure } from '../../src/model/index.js';
import { fromFeet } from '../../src/units/index.js';
import type { Area, Volume } from '../../src/units/index.js';

const at = (x: number, y: number): Point => ({ x: fromFeet(x), y: fromFeet(y) });

function surface(id: string, name: string, gross: number, deductions: Surface['deductions'] = []): Surface {
  const net = deductions.reduce((sum, deduction) => sum - deduction.area, gross);
  return { id, name, gross: gross as Area, deductions, net: net as Area, regions: [] };
}

function wall(
  id: string,
  from: Point,
  to: Point,
  run: number,
  height: number,
  openings: readonly OpeningMeasure[],
  openTo?: string,
): WallMeasure {
  const deductions = openings
    .filter((opening) => opening.wall === id)
    .map((opening) => ({
      what: `${opening.kind} ${opening.mark}`,
      of: opening.mark,
      kind: 'opening' as const,
      area: opening.area,
    }));
  return {
    ...surface(id, `${id} wall`, run * height, deductions),
    from,
    to,
    run: fromFeet(run),
    top: [
      { along: fromFeet(0), height: fromFeet(height) },
      { along: fromFeet(run), height: fromFeet(height) },
    ],
    ...(openTo !== undefined && { openTo }),
  };
}

interface OpeningFacts {
  readonly mark: string;
  readonly kind: 'door' | 'window';
  readonly wall: string;
  readonly at: number;
  readonly width: number;
  readonly height: number;
  readonly sill?: number;
  readonly to: string;
  readonly own?: boolean;
  readonly swing?: string;
}

export function opening({
  mark,
  kind,
  wall: on,
  at: place,
  width,
  height,
  sill = 0,
  to,
  own = true,
  swing,
}: OpeningFacts): OpeningMeasure {
  const operation = kind === 'door' ? ('swing' as const) : ('fixed' as const);
  const size = { width: fromFeet(width), height: fromFeet(height), sill: fromFeet(sill) };
  const hand = kind === 'door' ? { hinge: 'left' as const, swing: swing ?? to } : {};
  return {
    mark,
    kind,
    wall: on,
    at: fromFeet(place),
    ...size,
    to,
    own,
    operation,
    ...hand,
    area: (width * height) as Area,
    areaOnWall: (width * height) as Area,
    record: { by: 'own', mark, kind, wall: on, at: fromFeet(place), ...size, to, operation, ...hand, path: [] },
  };
}

/** A rectangular room with a flat ceiling, in feet. */
export function box(
  room: string,
  east: number,
  north: number,
  height: number,
  openings: readonly OpeningMeasure[],
  open?: { wall: string; to: string },
): RoomMeasure {
  const [southWest, northWest, northEast, southEast] = [at(0, 0), at(0, north), at(east, north), at(east, 0)];
  const make = (id: string, from: Point, to: Point, run: number) =>
    wall(id, from, to, run, height, openings, open?.wall === id ? open.to : undefined);
  return {
    room,
    plan: [southWest, northWest, northEast, southEast],
    voids: [],
    perimeter: fromFeet(2 * (east + north)),
    wallRun: fromFeet(2 * (east + north)),
    floor: surface('floor', 'Floor', east * north),
    ceiling: { ...surface('ceiling', 'Ceiling', east * north), planArea: (east * north) as Area, facets: [] },
    walls: [
      make('north', northWest, northEast, east),
      make('east', northEast, southEast, north),
      make('south', southEast, southWest, east),
      make('west', southWest, northWest, north),
    ],
    openings,
    features: [],
    volume: (east * north * height) as Volume,
    lowest: fromFeet(height),
    highest: fromFeet(height),
    headroom: { fiveFeet: (east * north) as Area, sevenFeet: (east * north) as Area },
  };
}
