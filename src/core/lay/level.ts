import {
  areaOf,
  closed,
  grown,
  lengthOf,
  nearestHeading,
  perimeter,
  pointOf,
  regionOf,
  subtract,
  unite,
  type Patch,
} from '../../base/geometry/index.js';
import { compass, feet, type Area, type Length } from '../../base/units/index.js';
import type { LaidLevel, OutsideFace, RoomAround, Surface } from '../model/index.js';
import { wellsOf, type Placed } from './placed.js';

/** Gaps between walls that are narrower than this, in feet, are closed: what stands between two rooms' finishes and is no room. */
const gap = 26 / 12;

/** What lies around a room, and what of its walls stands in the open. */
export interface Surroundings {
  readonly around: RoomAround;
  readonly open: readonly Surface[];
}

/** One level of rooms that hang together: outlines, areas, faces. `wall` is what an outside wall measures across, in feet. */
export function levelOf(
  level: string,
  placed: readonly Placed[],
  below: readonly Placed[],
  surroundings: ReadonlyMap<string, Surroundings>,
  wall: number,
): LaidLevel {
  const rooms = placed.map(({ plan }) => plan);
  const wells = wellsOf(placed, below);
  const open = wells.flatMap(({ patches }) => patches);
  const outline = outlineOf([...rooms, ...open], wall);
  const walls = [...rooms, ...open].reduce<readonly Patch[]>(subtract, outline);
  const outside = areaOf(outline) - areaOf(open);
  return {
    level,
    rooms: placed.map(({ room, at }) => ({ room: room.slug, at: pointOf(at) })),
    outline: outline.map(regionOf),
    walls: unite(walls).map(regionOf),
    wells: wells.flatMap(({ room, name, patches }) =>
      unite(patches).map((patch) => ({ room, name, outline: regionOf(patch) })),
    ),
    net: areaOf(rooms) as Area,
    gross: outside as Area,
    perimeter: lengthOf(outline.reduce((sum, patch) => sum + perimeter(patch.outline), 0)),
    faces: facesOf(placed, surroundings),
  };
}

/** Grown by a wall all around; what is left between rooms and is no wider than a wall can be belongs to it. */
function outlineOf(patches: readonly Patch[], wall: number): readonly Patch[] {
  const inner = closed(unite(patches), gap / 2);
  return grown(inner, wall);
}

function facesOf(placed: readonly Placed[], surroundings: ReadonlyMap<string, Surroundings>): readonly OutsideFace[] {
  const found = new Map<OutsideFace['looks'], { run: number; gross: number; openings: number; height: number }>();
  for (const { room } of placed) {
    const own = surroundings.get(room.slug);
    for (const surface of own?.open ?? []) {
      const side = room.sides.find(({ wall }) => wall.id === surface.id);
      if (!side) continue;
      const looks = nearestHeading(side.out);
      const stretches = own?.around.walls.find(({ wall }) => wall === surface.id)?.stretches ?? [];
      const face = found.get(looks) ?? { run: 0, gross: 0, openings: 0, height: 0 };
      face.run += stretches.reduce((sum, { from, to, behind }) => (behind ? sum : sum + feet(to) - feet(from)), 0);
      face.gross += surface.gross;
      face.openings += surface.deductions.reduce((sum, { kind, area }) => (kind === 'opening' ? sum + area : sum), 0);
      face.height = Math.max(face.height, ...side.wall.top.map(({ height }) => feet(height)));
      found.set(looks, face);
    }
  }
  return compass.flatMap((looks): readonly OutsideFace[] => {
    const face = found.get(looks);
    if (!face) return [];
    const { run, gross, openings, height } = face;
    return [
      {
        looks,
        run: lengthOf(run),
        gross: gross as Area,
        openings: openings as Area,
        net: (gross - openings) as Area,
        height: lengthOf(height) as Length,
      },
    ];
  });
}
