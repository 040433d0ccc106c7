import { stairOf, type Stair } from '../feature/index.js';
import { isDownToFloor, type FeatureMeasure, type RoomMeasure } from '../model/index.js';

/** What is asked of a room. */
interface Standing {
  readonly slug: string;
  readonly level: string;
  readonly measure: RoomMeasure;
}

/** Slugs of rooms of one level among which one can walk: a loft beside another is a floor of its own. */
export type Floor = readonly string[];

/** A stair or ladder, with the floor that it leads up to. */
export interface Flight {
  /** Slug of the room that it stands in. */
  readonly room: string;
  readonly level: string;
  readonly feature: FeatureMeasure;
  readonly stair: Stair;
  /** Undefined where the records leave open which floor it is. */
  readonly floor?: Floor;
}

/** Which floors there are, and how one comes up to them. */
export interface Reach {
  /** By level. */
  readonly floors: ReadonlyMap<string, readonly Floor[]>;
  readonly flights: readonly Flight[];
  /** Those that lead to a room's floor from another, by the room's slug. */
  readonly flightsTo: ReadonlyMap<string, readonly Flight[]>;
}

export function reachOf(rooms: readonly Standing[], levels: readonly string[]): Reach {
  const ways = waysBetween(rooms);
  const floors = floorsOf(rooms, ways);
  const floorOf = new Map([...floors.values()].flat().flatMap((floor) => floor.map((slug) => [slug, floor] as const)));
  const levelOf = new Map(rooms.map(({ slug, level }) => [slug, levels.indexOf(level)]));
  const flights = rooms.flatMap(({ slug, level, measure }) => {
    const above = (other: string) => (levelOf.get(other) ?? -1) > levels.indexOf(level);
    const open = new Set([...(ways.get(slug) ?? [])].filter(above).map((other) => floorOf.get(other)));
    const next = floors.get(levels[levels.indexOf(level) + 1] ?? '') ?? [];
    return measure.features.flatMap((feature): Flight[] => {
      const stair = stairOf(feature);
      if (!stair) return [];
      const floor = stair.to === undefined ? onlyOf(open.size > 0 ? [...open] : next) : floorOf.get(stair.to);
      return [{ room: slug, level, feature, stair, ...(floor && { floor }) }];
    });
  });
  const flightsTo = new Map<string, Flight[]>();
  for (const flight of flights)
    for (const slug of flight.floor ?? [])
      if (slug !== flight.room) flightsTo.set(slug, [...(flightsTo.get(slug) ?? []), flight]);
  return { floors, flights, flightsTo };
}

/** Each stair leads where its record says; else to the one floor above that its room is open to; else to the next level, where that
 *  is all one floor. */
function onlyOf(floors: readonly (Floor | undefined)[]): Floor | undefined {
  return floors.length === 1 ? floors[0] : undefined;
}

/** Rooms that one can walk to or look into, from both sides. */
function waysBetween(rooms: readonly Standing[]): ReadonlyMap<string, ReadonlySet<string>> {
  const ways = new Map(rooms.map(({ slug }) => [slug, new Set<string>()]));
  for (const { slug, measure } of rooms) {
    const others = [
      ...measure.walls.map(({ openTo }) => openTo),
      ...measure.openings.map((one) => (one.kind !== 'window' && isDownToFloor(one) ? one.to : undefined)),
    ];
    for (const other of others) {
      if (other === undefined || !ways.has(other)) continue;
      ways.get(slug)?.add(other);
      ways.get(other)?.add(slug);
    }
  }
  return ways;
}

function floorsOf(
  rooms: readonly Standing[],
  ways: ReadonlyMap<string, ReadonlySet<string>>,
): ReadonlyMap<string, readonly Floor[]> {
  const levelOf = new Map(rooms.map(({ slug, level }) => [slug, level]));
  const order = new Map(rooms.map(({ slug }, index) => [slug, index]));
  const floors = new Map<string, Floor[]>();
  const found = new Set<string>();
  for (const { slug, level } of rooms) {
    if (found.has(slug)) continue;
    const floor: string[] = [];
    const next = [slug];
    for (let here = next.pop(); here !== undefined; here = next.pop()) {
      if (found.has(here)) continue;
      found.add(here);
      floor.push(here);
      for (const other of ways.get(here) ?? []) if (levelOf.get(other) === level) next.push(other);
    }
    floor.sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0));
    floors.set(level, [...(floors.get(level) ?? []), floor]);
  }
  return floors;
}
