import {
  areaOf,
  intersect,
  lengthOf,
  patchArea,
  planeFrom,
  regionOf,
  subtract,
  unfold,
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
import { alongSide, type StandingSide, type Stretch } from './behind.js';
import { nearRise, patchAt, type Placed } from './placed.js';
import { isEndOfWall, partsOf } from './outside.js';
import type { LayRoom } from './laid-room.js';

/** Less than this of a ceiling or a floor, in square feet, is what walls stand on. */
const leastArea = 2;

/** What is asked of all rooms of a house for each of them. */
export interface AllRooms {
  readonly slugs: ReadonlySet<string>;
  /** Those that are heated. */
  readonly warm: ReadonlySet<string>;
  readonly levels: ReadonlySet<number>;
  /** In feet. */
  readonly lowestFloor: number;
}

export function allRooms(rooms: readonly LayRoom[]): AllRooms {
  return {
    slugs: new Set(rooms.map(({ slug }) => slug)),
    warm: new Set(rooms.filter((room) => !isCold(room)).map(({ slug }) => slug)),
    levels: new Set(rooms.map(({ level }) => level)),
    lowestFloor: Math.min(...rooms.map(({ floor = Infinity }) => floor)),
  };
}

interface Neighbourhood {
  readonly sides: readonly StandingSide[];
  readonly all: AllRooms;
  /** What stands over a level, and what under it carries its rooms: for one that is not heated every room does. */
  readonly over: (level: number) => readonly Patch[];
  readonly carrying: (room: LayRoom, forCold: boolean) => readonly Patch[];
  readonly isUnsure: boolean;
}

/** What lies around a room among those that it hangs together with. `isUnsure`: whether more of the house may lie around it. */
export function aroundOf(
  own: Placed,
  group: readonly Placed[],
  { sides, all, over, carrying, isUnsure }: Neighbourhood,
): RoomAround {
  const { room, plan } = own;
  // A heated room keeps the outside off; for one that is not heated every room does.
  const off = isCold(room) ? all.slugs : all.warm;
  const keepsOff = (slug: string): boolean => off.has(slug);
  const standing = sides.map(({ side, behind }) => {
    const warm = behind.filter((one) => one.behind && keepsOff(one.behind.room.slug));
    const parts = partsOf(room, side, warm, keepsOff);
    return { side, behind, parts, isEnd: behind.length === 0 && !parts.outside && isEndOfWall(room, side) };
  });
  const above = group.filter((other) => other.room.level > room.level);
  const next = group.filter((other) => liesUnder(room, other.room));
  const below = group.filter((other) => liesUnder(other.room, room));
  const underRoof = underRoofOf(own, above, over);
  const isOverRooms = all.levels.has(room.level - 1);
  const canHang = isOverRooms && (room.floor === undefined || room.floor - all.lowestFloor >= storey);
  const hanging = !canHang ? 0 : areaOf(carrying(room, isCold(room)).reduce<readonly Patch[]>(subtract, [plan]));
  return {
    ...(isUnsure && { unsure: true }),
    walls: standing.map(({ side, behind, isEnd }): WallAround => {
      const isOwn = ({ behind: one }: Stretch): boolean => one?.room.level === room.level;
      const others = behind.filter((one) => !isOwn(one));
      return {
        wall: side.wall.id,
        outsideThickness: lengthOf(side.thickness.outside),
        stretches: alongSide(side, room.level, behind.filter(isOwn)).map((stretch) => ({
          ...stretchOf(stretch),
          ...(isEnd && { isEnd }),
        })),
        ...(others.length > 0 && { otherLevels: others.map(stretchOf) }),
      };
    }),
    outside: standing.flatMap(({ parts }) => parts.outside ?? []),
    inside: standing.flatMap(({ parts: { outside, inside } }) => (outside && inside ? [inside] : [])),
    ...(underRoof && { underRoof }),
    over: sharesOf(plan, next),
    under: sharesOf(plan, below),
    ...(canHang && { overNothing: (hanging < leastArea ? 0 : hanging) as Area }),
  };
}

/** Floor structure, and what of a ceiling does not lie at its highest, in feet: so much lower a room still carries what stands over it. Common
 *  practice, no source. */
const structure = 3;

/** Less than this over the lowest floor, in feet, a floor of a split level stands on the ground. Common practice, no source. */
const storey = 7;

/** Whether a room is one that another may stand on: of the level below it, or of any lower one up to whose floor it reaches, as where levels are split. */
export function liesUnder(low: LayRoom, high: LayRoom): boolean {
  if (low.level >= high.level) return false;
  if (low.level === high.level - 1) return true;
  return low.top !== undefined && high.floor !== undefined && low.top > high.floor - structure;
}

/** A room that is not heated. */
export function isCold({ record }: LayRoom): boolean {
  return unheatedUses.includes(record.use);
}

/** What of a room's walls stands in the open, by wall: what siding goes on. */
export function inTheOpen(room: LayRoom, sides: readonly StandingSide[], { slugs }: AllRooms): readonly Surface[] {
  return sides.flatMap(({ side, behind }) => partsOf(room, side, behind, (slug) => slugs.has(slug)).outside ?? []);
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
function underRoofOf({ room, at }: Placed, above: readonly Placed[], over: Neighbourhood['over']): Surface | undefined {
  const { ceiling } = room.measure;
  if (above.length === 0) return ceiling.net > 0 ? surfaceOnly(ceiling) : undefined;
  const next = above.find((other) => other.room.level === Math.min(...above.map((each) => each.room.level)))?.room;
  const rise = next?.floor !== undefined && room.floor !== undefined ? next.floor - room.floor : Infinity;
  const standing = over(room.level);
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
