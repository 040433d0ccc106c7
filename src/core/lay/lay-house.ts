import { inLocale, keepAlike, keepBy, keepSame } from '../../base/units/index.js';
import type { Origin, Problem } from '../../base/problem/index.js';
import type { LaidGroup, LaidHouse, Records, RoomAround, RoomMeasure } from '../model/index.js';
import { allRooms, aroundOf, inTheOpen, isCold, liesUnder } from './around.js';
import { besideProblems } from './beside.js';
import { pairsByRoom, standingSides } from './behind.js';
import { facingPairs, reach } from './pair.js';
import { heightProblems } from './heights.js';
import { jointsOf } from './joints.js';
import { layRoomsOf, type LayRoom } from './laid-room.js';
import { layRooms, type Laying } from './lay-rooms.js';
import type { Surroundings } from './faces.js';
import { levelOf } from './level.js';
import { placedOf, withWalls, type Placed } from './placed.js';
import { layingProblems } from './problems.js';
import { thicknessOf } from './wall-thickness.js';

/** A house laid out, and its rooms' measures with what lies around them. */
export interface HouseLaying {
  readonly laid: LaidHouse;
  readonly measures: ReadonlyMap<string, RoomMeasure>;
  readonly problems: readonly Problem[];
}

export type LayHouse = (records: Records, measures: ReadonlyMap<string, RoomMeasure>) => HouseLaying;

/** Lays a house out from its rooms' own tapes: every shared opening, open side and well tells where two rooms stand. */
export const layHouse: LayHouse = (records, measures) =>
  inLocale(records.house, () => lay(records, measures, (measure, around) => ({ ...measure, around })));

/** Lays one house after another out, those with rooms of the same shape once. A room that several of them have, with the same around it, is the same
 *  object in each. */
export function houseLayer(): LayHouse {
  const [shapeOf, frameOf] = [keepAlike<RoomShape>(), keepAlike<Frame>()];
  const layings = keepSame(
    (_frame: Frame, _shapes: readonly RoomShape[], _measures: readonly RoomMeasure[]): { laid?: Laid } => ({}),
  );
  const kept = new WeakMap<RoomMeasure, { readonly around: string; readonly measure: RoomMeasure }[]>();
  const withAround: WithAround = (measure, around) => {
    const text = JSON.stringify(around);
    const known = kept.get(measure) ?? [];
    const found = known.find((one) => one.around === text);
    if (found) return found.measure;
    const made = { ...measure, around };
    kept.set(measure, [...known, { around: text, measure: made }]);
    return made;
  };
  return (records, measures) => {
    const { house, rooms } = records;
    const frame = frameOf('house', { levels: house.levels, wallTypes: house.wallTypes, studs: house.studs });
    const shapes = rooms.map(({ selections: _, body: _body, origin: _origin, ...shape }) => shapeOf(shape.slug, shape));
    const kept = layings(frame, shapes, [...measures.values()]);
    const origins = [house, ...rooms].map(({ origin }) => origin);
    if (kept.laid?.told.every((origin) => origins.includes(origin))) return kept.laid.laying;
    const laying = inLocale(house, () => lay(records, measures, withAround));
    const words = JSON.stringify(laying.problems);
    kept.laid = { laying, told: origins.filter(({ file }) => words.includes(file)) };
    return laying;
  };
}

/** What is told names lines of records, and lines move with whatever is written above them: it holds while those records are the same. */
interface Laid {
  readonly laying: HouseLaying;
  readonly told: readonly Origin[];
}

/** All that laying out reads of a room's record, and of the house's. */
type RoomShape = Omit<Records['rooms'][number], 'selections' | 'body' | 'origin'>;
interface Frame {
  readonly levels: Records['house']['levels'];
  readonly wallTypes: Records['house']['wallTypes'];
  readonly studs: Records['house']['studs'];
}

type WithAround = (measure: RoomMeasure, around: RoomAround) => RoomMeasure;

function lay(records: Records, measures: ReadonlyMap<string, RoomMeasure>, withAround: WithAround): HouseLaying {
  const rooms = layRoomsOf(records, measures);
  const { joints, misfits } = jointsOf(rooms);
  const laying = layRooms(rooms, joints);
  const groups = laying.groups.map((group) => placedOf(laying, group));
  const { outside } = thicknessOf(undefined, records.house);
  const surroundings = surroundingsOf(laying, groups, outside);
  const problems = [
    ...layingProblems(laying, misfits),
    ...heightProblems(records.house, groups),
    ...groups.flatMap((group) => besideProblems(group, surroundings)),
  ];
  return {
    laid: { groups: groups.map((group) => groupOf(group, surroundings, records, outside)) },
    measures: new Map(
      [...measures].map(([slug, measure]) => {
        const found = surroundings.get(slug);
        return [slug, found ? withAround(measure, found.around) : measure];
      }),
    ),
    problems,
  };
}

function surroundingsOf(
  { rooms, at, together }: Laying,
  groups: readonly (readonly Placed[])[],
  wall: number,
): ReadonlyMap<string, Surroundings> {
  const pairs = pairsByRoom(facingPairs(rooms, at, { tolerance: reach.before - reach.behind, together }));
  const all = allRooms(rooms);
  return new Map(
    groups.flatMap((group) => {
      const own = new Set(group.map(({ room }) => room.slug));
      const isWhole = isKnown(group, rooms.length, all.levels.size);
      const on = (is: (level: number) => boolean) => group.filter(({ room }) => is(room.level));
      const over = keepBy(String, (level: number) =>
        withWalls(
          on((other) => other > level),
          wall,
        ),
      );
      const carrying = keepBy(
        ({ level, floor }: LayRoom, forCold: boolean) => `${level} ${floor ?? ''} ${forCold}`,
        (room, forCold) =>
          withWalls(
            group.filter((other) => liesUnder(other.room, room) && (forCold || !isCold(other.room))),
            wall,
          ),
      );
      return group.map((one) => {
        const isUnsure = !isWhole || besideOf(one.room).some((slug) => !own.has(slug));
        const sides = standingSides(one.room, pairs.get(one.room.index) ?? [], rooms);
        const around = aroundOf(one, group, { sides, all, over, carrying, isUnsure });
        return [one.room.slug, { around, open: inTheOpen(one.room, sides, all) }];
      });
    }),
  );
}

/** What lies around its rooms is known of a group that reaches every level, each at a height that is known: what stands on another level by
 *  itself may lie over or under any of them. A room that is joined to no other knows nothing of the house. */
function isKnown(group: readonly Placed[], rooms: number, levels: number): boolean {
  if (group.length === 1) return rooms === 1;
  const reached = new Set(group.map(({ room }) => room.level));
  return reached.size === levels && (levels === 1 || group.every(({ room }) => room.floor !== undefined));
}

/** Rooms that its record says are beside it, wherever they stand. */
function besideOf({ measure }: LayRoom): readonly string[] {
  return measure.walls.flatMap(({ beside = [] }) => beside);
}

function groupOf(
  group: readonly Placed[],
  surroundings: ReadonlyMap<string, Surroundings>,
  { house }: Records,
  wall: number,
): LaidGroup {
  const on = (level: number): readonly Placed[] => group.filter(({ room }) => room.level === level);
  const nextTo = (index: number) => ({ below: on(index - 1), above: group.filter(({ room }) => room.level > index) });
  return {
    levels: house.levels.flatMap(({ id }, index) =>
      on(index).length === 0 ? [] : [levelOf(id, on(index), nextTo(index), surroundings, wall)],
    ),
  };
}
