import type { BookRoom } from '../../src/book/index.js';
import type { OpeningMeasure, RoomMeasure, RoomUse, WallMeasure } from '../../src/model/index.js';
import type { Area, Cents, Length } from '../../src/units/index.js';
import { fromFeet } from '../../src/units/index.js';
import { cost } from './fixture-parts.js';

/** What a room of the fixture has beyond its size. */
export interface RoomFacts {
  readonly body?: string;
  readonly change?: number;
  readonly openings?: readonly OpeningMeasure[];
}

export function room(
  slug: string,
  number: string,
  name: string,
  level: string,
  use: RoomUse,
  [width, depth, height]: readonly [number, number, number],
  selections: readonly string[],
  { body = '', change = 0, openings = [] }: RoomFacts,
): BookRoom {
  const open = slug === 'great-room' ? 1 : 0;
  return {
    slug,
    number,
    name,
    level,
    use,
    body,
    selections,
    open,
    cost: cost(0),
    change: change as Cents,
    source: `content/rooms/${slug}.md`,
    measure: boxRoom(slug, width, depth, height, openings),
  };
}

/** A room with four walls and a flat ceiling. */
function boxRoom(
  slug: string,
  width: number,
  depth: number,
  height: number,
  openings: readonly OpeningMeasure[],
): RoomMeasure {
  const at = (x: number, y: number): { x: Length; y: Length } => ({ x: fromFeet(x), y: fromFeet(y) });
  const region = (across: number, up: number): RoomMeasure['floor']['regions'] => [
    { outline: [at(0, 0), at(across, 0), at(across, up), at(0, up)], holes: [] },
  ];
  const wall = (name: string, run: number, from: [number, number], to: [number, number]): WallMeasure => {
    const deductions = openings
      .filter((one) => one.wall === name)
      .map((one) => ({ what: one.mark, of: one.mark, kind: 'opening' as const, area: one.area }));
    const off = deductions.reduce((sum, { area }) => sum + area, 0);
    return {
      id: name,
      name: name.charAt(0).toUpperCase() + name.slice(1),
      gross: (run * height) as Area,
      deductions,
      net: (run * height - off) as Area,
      regions: region(run, height),
      from: at(...from),
      to: at(...to),
      run: fromFeet(run),
      top: [
        { along: fromFeet(0), height: fromFeet(height) },
        { along: fromFeet(run), height: fromFeet(height) },
      ],
    };
  };
  const floor = (width * depth) as Area;
  const plan = [at(0, 0), at(0, depth), at(width, depth), at(width, 0)];
  return {
    room: slug,
    plan,
    voids: [],
    perimeter: fromFeet(2 * (width + depth)),
    wallRun: fromFeet(2 * (width + depth)),
    floor: { id: 'floor', name: 'Floor', gross: floor, deductions: [], net: floor, regions: region(width, depth) },
    ceiling: {
      id: 'ceiling',
      name: 'Ceiling',
      gross: floor,
      deductions: [],
      net: floor,
      regions: region(width, depth),
      planArea: floor,
      facets: [
        {
          name: 'Flat',
          plan: { outline: plan, holes: [] },
          shape: { outline: plan, holes: [] },
          slope: 0,
          riseDirection: 0,
          area: floor,
        },
      ],
    },
    walls: [
      wall('north', width, [0, depth], [width, depth]),
      wall('east', depth, [width, depth], [width, 0]),
      wall('south', width, [width, 0], [0, 0]),
      wall('west', depth, [0, 0], [0, depth]),
    ],
    openings,
    features: [],
    volume: (floor * height) as RoomMeasure['volume'],
    lowest: fromFeet(height),
    highest: fromFeet(height),
    headroom: { fiveFeet: floor, sevenFeet: floor },
  };
}

export function opening(
  mark: string,
  wall: string,
  at: number,
  width: number,
  height: number,
  to: string,
): OpeningMeasure {
  const kind = mark.startsWith('D') ? 'door' : 'window';
  const area = (width * height) as Area;
  const size = {
    at: fromFeet(at),
    width: fromFeet(width),
    height: fromFeet(height),
    sill: fromFeet(kind === 'door' ? 0 : 2.5),
  };
  const swings =
    kind === 'door' ? ({ hinge: 'left', swing: to, operation: 'swing' } as const) : ({ operation: 'fixed' } as const);
  return {
    mark,
    kind,
    wall,
    to,
    own: true,
    area,
    areaOnWall: area,
    ...size,
    ...swings,
    record: { by: 'own', mark, kind, wall, to, ...size, ...swings, path: [] },
  };
}
