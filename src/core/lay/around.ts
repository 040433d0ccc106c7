import {
  areaOf,
  grown,
  intersect,
  lengthOf,
  patchArea,
  planeFrom,
  regionOf,
  subtract,
  unfold,
  unite,
  type Patch,
} from '../../base/geometry/index.js';
import { feet, type Area } from '../../base/units/index.js';
import {
  surfaceOnly,
  unheatedUses,
  type CeilingFacet,
  type RoomAround,
  type RoomShare,
  type Surface,
  type WallAround,
} from '../model/index.js';
import { alongSide, behindSide, type Stretch } from './behind.js';
import { nearRise, patchAt, type Placed } from './placed.js';
import { partsOf } from './outside.js';
import type { LayRoom } from './laid-room.js';
import type { Pair } from './pair.js';

/** Less than this of a ceiling or a floor, in square feet, is what walls stand on. */
const leastArea = 2;

interface Surroundings {
  readonly pairs: readonly Pair[];
  readonly rooms: readonly LayRoom[];
  readonly wall: number;
  readonly isUnsure: boolean;
}

/** What lies around a room among those that it hangs together with. `wall` is what an outside wall measures across, in feet; `isUnsure`,
 *  whether more of the house may lie around it. */
export function aroundOf(
  own: Placed,
  group: readonly Placed[],
  { pairs, rooms, wall, isUnsure }: Surroundings,
): RoomAround {
  const { room, plan } = own;
  // A heated room keeps the outside off; for one that is not heated every room does.
  const off = new Set(rooms.flatMap((other) => (isCold(room) || !isCold(other) ? [other.slug] : [])));
  const keepsOff = (slug: string): boolean => off.has(slug);
  const standing = room.sides
    .filter((side) => side.wall.openTo === undefined)
    .map((side) => {
      const behind = behindSide(room, side, pairs, rooms);
      const warm = behind.filter((one) => one.behind && keepsOff(one.behind.room.slug));
      return { side, behind, parts: partsOf(room, side, warm, keepsOff) };
    });
  const above = group.filter((other) => other.room.level > room.level);
  const next = group.filter((other) => other.room.level === room.level + 1);
  const below = group.filter((other) => other.room.level === room.level - 1);
  const carrying = below.filter((other) => isCold(room) || !isCold(other.room));
  const underRoof = underRoofOf(own, above, wall);
  const hanging =
    room.level === 0
      ? 0
      : areaOf(grown(unite(carrying.map((other) => other.plan)), wall).reduce<readonly Patch[]>(subtract, [plan]));
  return {
    ...(isUnsure && { unsure: true }),
    walls: standing.map(({ side, behind }): WallAround => {
      const isOwn = ({ behind: one }: Stretch): boolean => one?.room.level === room.level;
      const others = behind.filter((one) => !isOwn(one));
      return {
        wall: side.wall.id,
        stretches: alongSide(side, room.level, behind.filter(isOwn)).map(stretchOf),
        ...(others.length > 0 && { otherLevels: others.map(stretchOf) }),
      };
    }),
    outside: standing.flatMap(({ parts }) => parts.outside ?? []),
    inside: standing.flatMap(({ parts: { outside, inside } }) => (outside && inside ? [inside] : [])),
    ...(underRoof && { underRoof }),
    over: sharesOf(plan, next),
    under: sharesOf(plan, below),
    ...(room.level > 0 && { overNothing: (hanging < leastArea ? 0 : hanging) as Area }),
  };
}

function isCold({ record }: LayRoom): boolean {
  return unheatedUses.includes(record.use);
}

/** What of a room's walls stands in the open, by wall: what siding goes on. */
export function inTheOpen(room: LayRoom, pairs: readonly Pair[], rooms: readonly LayRoom[]): readonly Surface[] {
  const slugs = new Set(rooms.map(({ slug }) => slug));
  return room.sides
    .filter((side) => side.wall.openTo === undefined)
    .flatMap(
      (side) => partsOf(room, side, behindSide(room, side, pairs, rooms), (slug) => slugs.has(slug)).outside ?? [],
    );
}

function stretchOf({ from, to, behind }: Stretch): WallAround['stretches'][number] {
  return {
    from: lengthOf(from),
    to: lengthOf(to),
    ...(behind && {
      behind: { room: behind.room.slug, wall: behind.side.wall.id, thickness: lengthOf(behind.gap) },
    }),
  };
}

function sharesOf(plan: Patch, others: readonly Placed[]): readonly RoomShare[] {
  return others.flatMap((other) => {
    const area = areaOf(intersect([plan], other.plan));
    return area > leastArea ? [{ room: other.room.slug, area: area as Area }] : [];
  });
}

/** The parts of a ceiling that no room stands on; what goes up past the floor above has none on it. */
function underRoofOf({ room, at }: Placed, above: readonly Placed[], wall: number): Surface | undefined {
  const { ceiling } = room.measure;
  if (above.length === 0) return ceiling.net > 0 ? surfaceOnly(ceiling) : undefined;
  const next = above.find((other) => other.room.level === Math.min(...above.map((each) => each.room.level)))?.room;
  const rise = next?.floor !== undefined && room.floor !== undefined ? next.floor - room.floor : Infinity;
  const standing = grown(unite(above.map(({ plan }) => plan)), wall);
  const left = ceiling.facets.map((facet) => {
    const plan = patchAt(facet.plan, at);
    const isPast = feet(facet.highest) > rise + nearRise;
    return { facet, patches: isPast ? [plan] : standing.reduce<readonly Patch[]>(subtract, [plan]) };
  });
  const isWhole = left.every(
    ({ facet, patches }) => Math.abs(areaOf(patches) - patchArea(patchAt(facet.plan, at))) < 0.01,
  );
  if (isWhole) return surfaceOnly(ceiling);
  const back = { x: -at.x, y: -at.y };
  const shapes = left.flatMap(({ facet, patches }) =>
    patches.map((patch) => shapeOn(facet, patchAt(regionOf(patch), back))),
  );
  const area = areaOf(shapes);
  if (area < leastArea) return undefined;
  const { id, name } = ceiling;
  return { id, name, gross: area as Area, deductions: [], net: area as Area, regions: shapes.map(regionOf) };
}

/** A piece of a facet's plan as it lies on it, as the facet's own shape is unfolded. */
function shapeOn({ slope, riseDirection }: CeilingFacet, plan: Patch): Patch {
  const turn = (riseDirection * Math.PI) / 180;
  return unfold(planeFrom({ x: 0, y: 0 }, 0, { x: Math.cos(turn), y: Math.sin(turn) }, slope), plan);
}
