import {
  contains,
  grown,
  patchFrom,
  ringInFeet,
  subtract,
  unite,
  type Patch,
  type Ring,
  type Xy,
} from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { CeilingFacet, Region } from '../model/index.js';
import type { LayRoom } from './laid-room.js';
import type { Laying } from './lay-rooms.js';

/** A room where it stands in the coordinates of its group, in feet. */
export interface Placed {
  readonly room: LayRoom;
  readonly at: Xy;
  readonly plan: Patch;
}

export function placedOf({ rooms, at }: Laying, group: readonly number[]): readonly Placed[] {
  return group.map((index) => {
    const room = rooms[index] as LayRoom;
    const here = at[index] as Xy;
    return { room, at: here, plan: patchFrom(moved(room.outline, here)) };
  });
}

/** Rooms as one shape, with walls so thick all around, in feet. */
export function withWalls(placed: readonly Placed[], wall: number): readonly Patch[] {
  return grown(unite(placed.map(({ plan }) => plan)), wall);
}

/** What of a lower room is open to an upper level: the well or the whole height of it that goes up there. */
export interface Well {
  readonly room: string;
  readonly name: string;
  readonly patches: readonly Patch[];
}

/** So much higher than a floor above, in feet, a ceiling is one that goes up past it, whether or not a room up there opens to it. */
const goesPast = 7;

/** Wells of a level: ceilings of rooms below that lie above its floor. */
export function wellsOf(level: readonly Placed[], below: readonly Placed[]): readonly Well[] {
  const floor = level[0]?.room.floor;
  if (floor === undefined) return [];
  const open = new Set(level.flatMap(({ room }) => opensTo(room)));
  return below.flatMap(({ room, at }): readonly Well[] => {
    if (room.floor === undefined) return [];
    const rise = floor - room.floor;
    const least = rise + (open.has(room.slug) ? nearRise : goesPast);
    const facets = room.measure.ceiling.facets.filter(({ highest }) => feet(highest) > least);
    const over = level.map(({ plan }) => plan);
    const patches = over.reduce<readonly Patch[]>(subtract, [
      ...facets.map((facet) => planOf(facet, at)),
      ...lightsIn(facets, room, at),
    ]);
    return patches.length === 0 ? [] : [{ room: room.slug, name: room.record.name, patches }];
  });
}

/** What goes up through a level beside its wells, such as a chimney breast: it stands in them and is neither open nor a room. */
export function massesOf(wells: readonly Well[], below: readonly Placed[]): readonly Patch[] {
  const open = new Set(wells.map(({ room }) => room));
  return below
    .filter(({ room }) => open.has(room.slug))
    .flatMap(({ room, at }) =>
      room.measure.features.flatMap(({ footprint, overhead }) =>
        footprint && overhead ? [patchAt({ outline: overhead, holes: [] }, at)] : [],
      ),
    );
}

export const nearRise = 0.5;

/** Rooms that an upper one looks down into. */
function opensTo({ measure, record }: LayRoom): readonly string[] {
  const sides = measure.walls.flatMap(({ openTo }) => openTo ?? []);
  return [
    ...sides,
    ...record.openings.flatMap((opening) => (opening.by === 'own' ? [opening.to] : opening.recordedIn)),
  ];
}

/** What skylights cut out of a ceiling: no floor lies under them either. */
function lightsIn(facets: readonly CeilingFacet[], { measure }: LayRoom, at: Xy): readonly Patch[] {
  const whole = facets.map(({ plan }) => ringInFeet(plan.outline));
  return measure.features.flatMap(({ opensCeiling }) => {
    const [corner] = opensCeiling ? ringInFeet(opensCeiling) : [];
    if (!opensCeiling || !corner || !whole.some((outline) => contains(outline, corner))) return [];
    return [patchAt({ outline: opensCeiling, holes: [] }, at)];
  });
}

function planOf({ plan }: CeilingFacet, at: Xy): Patch {
  return patchAt(plan, at);
}

export function patchAt({ outline, holes }: Region, at: Xy): Patch {
  return patchFrom(
    moved(ringInFeet(outline), at),
    holes.map((hole) => moved(ringInFeet(hole), at)),
  );
}

function moved(ring: Ring, { x, y }: Xy): Ring {
  return ring.map((point) => ({ x: point.x + x, y: point.y + y }));
}
