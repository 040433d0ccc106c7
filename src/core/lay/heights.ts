import { areaOf, heightOn, intersect } from '../../base/geometry/index.js';
import { feet, joinWords, printLength, type Length } from '../../base/units/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { edgeOf, facetPlane, stairOf } from '../feature/index.js';
import type { House, Level } from '../model/index.js';
import { elevationsOf } from './elevation.js';
import type { LayRoom } from './laid-room.js';
import { patchAt, type Placed } from './placed.js';
import { inText } from './words.js';

/** What a height between two floors may be off before it is told: 1", in feet. Common practice, no source. */
const play = 1 / 12;

/** Records that are named at most. */
const named = 3;

/** Less than this of a room over a ceiling, in square feet, is what walls stand on. */
const leastArea = 2;

/** Levels whose heights can't be, and those that rooms record otherwise: by a stair's rise, an edge's drop, the height of a well or of the sill
 *  that another room's floor is; and ceilings that reach through the floor of a room over them. */
export function heightProblems(house: House, groups: readonly (readonly Placed[])[]): readonly Problem[] {
  const order = orderProblems(house);
  if (order.length > 0) return order;
  const rooms = groups.flatMap((group) => group.map(({ room }) => room));
  const wrong = wrongHeights(house, rooms);
  const isWrong = (level: string): boolean => wrong.some(({ levels }) => levels.includes(level));
  return [
    ...emptyProblems(house, rooms),
    ...wrong.map(({ problem }) => problem),
    // Where the level lies otherwise, each ceiling under it is no news.
    ...groups.flatMap((group) => group.flatMap((low) => throughFloors(low, group, isWrong))),
  ];
}

function orderProblems({ levels, origin }: House): readonly Problem[] {
  const floors = elevationsOf(levels);
  return levels.slice(1).flatMap((level, index): readonly Problem[] => {
    const before = levels[index] as Level;
    const [low, high] = [floors.get(before.id), floors.get(level.id)];
    if (low === undefined || high === undefined || high > low - play) return [];
    const message = `${level.name} lies ${inText(low - high)} below ${before.name}, which is listed before it`;
    const fix = 'levels are listed lowest first: mend their order, or the height that is wrong';
    return [problemAt(origin, heightPath(level, index + 1), 'levels-out-of-order', message, { fix })];
  });
}

function emptyProblems({ levels, origin }: House, rooms: readonly LayRoom[]): readonly Problem[] {
  if (rooms.length === 0) return [];
  return levels.flatMap(({ name, id }, index) => {
    if (rooms.some(({ record }) => record.level === id)) return [];
    const message = `no room is on ${name}: the house is laid out as if that level were not there`;
    const fix = 'record its rooms, or leave the level out';
    return [problemAt(origin, ['levels', index, 'id'], 'level-empty', message, { fix, severity: 'notice' })];
  });
}

/** How far one level's floor lies over another's, as a room says. */
interface Told {
  readonly low: string;
  readonly high: string;
  readonly by: Length;
  readonly what: string;
}

function wrongHeights(
  { levels, origin }: House,
  rooms: readonly LayRoom[],
): readonly { readonly problem: Problem; readonly levels: readonly string[] }[] {
  const floors = elevationsOf(levels);
  const told = heightsTold(rooms);
  return levels.flatMap((high, index) =>
    levels.slice(0, index).flatMap((low) => {
      const [from, to] = [floors.get(low.id), floors.get(high.id)];
      const own = told.filter((one) => one.low === low.id && one.high === high.id);
      if (from === undefined || to === undefined || own.length === 0) return [];
      const other = own.filter(({ by }) => Math.abs(feet(by) - (to - from)) > play);
      if (other.length === 0) return [];
      const says = [...new Set(other.map(({ by }) => by))].map((by) => {
        const whats = other.filter((one) => one.by === by).map(({ what }) => what);
        const more = whats.length - named;
        return `${printLength(by)} by ${joinWords(more > 0 ? [...whats.slice(0, named), `${more} more`] : whats)}`;
      });
      const agreeing = own.length - other.length;
      const but = agreeing === 0 ? '' : `; ${agreeing} more ${agreeing === 1 ? 'agrees' : 'agree'} with the level`;
      const message = `${high.name} lies ${inText(to - from)} over ${low.name}, and ${joinWords(says)}${but}`;
      const fix = 'mend the height of the level, or the record that is wrong';
      const path = heightPath(high, index);
      const problem = problemAt(origin, path, 'level-height', message, { fix, severity: 'warning' });
      return [{ problem, levels: [low.id, high.id] }];
    }),
  );
}

function heightsTold(rooms: readonly LayRoom[]): readonly Told[] {
  const bySlug = new Map(rooms.map((room) => [room.slug, room]));
  return rooms.flatMap((room): readonly Told[] => {
    const { measure, record } = room;
    const between = (slug: string | undefined, by: Length, what: string): readonly Told[] => {
      const other = slug === undefined ? undefined : bySlug.get(slug);
      // Where a floor has steps of its own, nobody knows from which part it is measured.
      if (!other || other.level === room.level || record.floor || other.record.floor) return [];
      const [low, high] = room.level < other.level ? [room, other] : [other, room];
      return [{ low: low.record.level, high: high.record.level, by, what }];
    };
    const isUp = (slug: string): boolean => (bySlug.get(slug)?.level ?? -1) > room.level;
    return [
      ...measure.features.flatMap((feature) => {
        const [stair, edge] = [stairOf(feature), edgeOf(feature)];
        const side = measure.walls.find(({ id }) => id === edge?.wall);
        return [
          ...(stair ? between(stair.to, stair.rise, `the rise of ${feature.name}`) : []),
          ...(edge && side ? between(side.openTo, edge.drop, `the drop of ${feature.name}`) : []),
        ];
      }),
      ...record.ceiling.flatMap(({ name, openAbove }) =>
        openAbove && isUp(openAbove.to) ? between(openAbove.to, openAbove.height, `${name} of ${record.name}`) : [],
      ),
      ...record.openings.flatMap((opening) => {
        if (opening.by !== 'own' || opening.kind !== 'open' || !isUp(opening.to)) return [];
        // Where the other room is open to this one, its floor is the sill.
        const runsOn = bySlug.get(opening.to)?.measure.walls.some(({ openTo }) => openTo === room.slug) === true;
        return runsOn ? between(opening.to, opening.sill, `the sill of ${opening.mark}`) : [];
      }),
    ];
  });
}

function heightPath({ floor }: Level, index: number): Path {
  return ['levels', index, floor === undefined ? 'above-ground' : 'floor'];
}

function throughFloors(
  { room, at }: Placed,
  group: readonly Placed[],
  isWrong: (level: string) => boolean,
): readonly Problem[] {
  return group.flatMap((above): readonly Problem[] => {
    const { floor, record, level } = above.room;
    if (level <= room.level || floor === undefined || room.floor === undefined) return [];
    if (isWrong(record.level) || isWrong(room.record.level)) return [];
    const rise = floor - room.floor;
    const highest = Math.max(
      ...room.measure.ceiling.facets.map((facet) => {
        const common = intersect([patchAt(facet.plan, at)], above.plan);
        return areaOf(common) < leastArea
          ? -Infinity
          : Math.max(
              ...common.flatMap(({ outline }) =>
                outline.map((point) => heightOn(facetPlane(facet), { x: point.x - at.x, y: point.y - at.y })),
              ),
            );
      }),
    );
    if (highest <= rise + play) return [];
    const message = `the ceiling of ${room.record.name} reaches ${inText(highest)}, and the floor of ${record.name}, which lies over it, is at ${inText(rise)}`;
    const fix = 'mend the ceiling, the height of the level, or the tapes that put the one room over the other';
    return [problemAt(room.record.origin, ['ceiling'], 'ceiling-through-floor', message, { fix, severity: 'warning' })];
  });
}
