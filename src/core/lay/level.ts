import {
  areaOf,
  closed,
  grown,
  lengthOf,
  perimeter,
  pointOf,
  regionOf,
  unite,
  without,
  type Patch,
} from '../../base/geometry/index.js';
import type { Area } from '../../base/units/index.js';
import type { LaidLevel } from '../model/index.js';
import { facesOf, type Surroundings } from './faces.js';
import { massesOf, wellsOf, type Placed } from './placed.js';

/** Gaps between walls that are narrower than this, in feet, are closed: what stands between two rooms' finishes and is no room. */
const gap = 26 / 12;

/** One level of rooms that hang together: outlines, areas, faces. `wall` is what an outside wall measures across, in feet. */
export function levelOf(
  level: string,
  placed: readonly Placed[],
  { below, above }: { readonly below: readonly Placed[]; readonly above: readonly Placed[] },
  surroundings: ReadonlyMap<string, Surroundings>,
  wall: number,
): LaidLevel {
  const rooms = placed.map(({ plan }) => plan);
  const wells = wellsOf(placed, below);
  const open = wells.flatMap(({ patches }) => patches);
  const outline = outlineOf([...rooms, ...open, ...massesOf(wells, below)], wall);
  const walls = without(outline, [...rooms, ...open]);
  const outside = areaOf(outline) - areaOf(open);
  return {
    level,
    rooms: placed.map(({ room, at }) => ({ room: room.slug, at: pointOf(at) })),
    outline: outline.map(regionOf),
    walls: walls.map(regionOf),
    wells: wells.flatMap(({ room, name, patches }) =>
      unite(patches).map((patch) => ({ room, name, outline: regionOf(patch) })),
    ),
    net: areaOf(rooms) as Area,
    gross: outside as Area,
    perimeter: lengthOf(outline.reduce((sum, patch) => sum + perimeter(patch.outline), 0)),
    faces: facesOf(placed, surroundings, above, wall),
  };
}

/** Grown by a wall all around; what is left between rooms and is no wider than a wall can be belongs to it. */
function outlineOf(patches: readonly Patch[], wall: number): readonly Patch[] {
  const inner = closed(unite(patches), gap / 2);
  return grown(inner, wall);
}
