import { pointOf, type Xy } from '../../src/base/geometry/index.js';
import { fromFeet, type Length } from '../../src/base/units/index.js';
import type { Opening, OutlineCorner, Records, Room, RoomMeasure } from '../../src/core/model/index.js';
import { measureRoom } from '../../src/core/measure/index.js';
import { flat, opening, room } from '../measure/room-record.js';

/** A rectangle cut into rooms with a wall of 4 1/2" between them, and doors from each to its neighbours: where every room stands is known. */
export interface GeneratedHouse {
  readonly records: Pick<Records, 'house' | 'rooms'>;
  readonly measures: ReadonlyMap<string, RoomMeasure>;
  /** What to add to each room's own coordinates, by slug, in feet. */
  readonly truth: ReadonlyMap<string, Xy>;
}

interface Box {
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

const wall = 4.5 / 12;
const doorWidth = 2.5;
const leastRoom = 6;

/** `degrees`: how far the house is turned, counter-clockwise. Rooms are recorded by corners, each in coordinates of its own. */
export function generatedHouse(random: () => number, count: number, degrees = 0): GeneratedHouse {
  const side = Math.sqrt(count) * 12;
  const boxes = cut([{ west: 0, south: 0, east: halfInch(side * 1.2), north: halfInch(side) }], count, random);
  const doors = doorsBetween(boxes, random);
  if (!doors) return generatedHouse(random, count, degrees);
  const turn = (degrees * Math.PI) / 180;
  const turned = ({ x, y }: Xy): Xy => ({
    x: x * Math.cos(turn) - y * Math.sin(turn),
    y: x * Math.sin(turn) + y * Math.cos(turn),
  });
  const truth = new Map<string, Xy>();
  const rooms = boxes.map(({ west, south, east, north }, index): Room => {
    const slug = `room-${index + 1}`;
    const own = { x: halfInch(random() * 40), y: halfInch(random() * 40) };
    const place = (x: number, y: number): Xy => {
      const at = turned({ x: x - west, y: y - south });
      return { x: at.x + own.x, y: at.y + own.y };
    };
    const start = turned({ x: west, y: south });
    truth.set(slug, { x: start.x - own.x, y: start.y - own.y });
    const corner = (name: string, x: number, y: number): OutlineCorner => ({ at: pointOf(place(x, y)), wall: name });
    const corners = [
      corner('north', west, north),
      corner('east', east, north),
      corner('south', east, south),
      corner('west', west, south),
    ];
    const made = room({
      slug,
      shape: { by: 'outline', corners },
      ceiling: flat(`8'`),
      openings: openingsOf(index, doors),
    });
    return { ...made, name: `Room ${index + 1}`, number: String(index + 1) };
  });
  const bySlug = new Map(rooms.map((one) => [one.slug, one]));
  const measures = new Map(
    rooms.map((one) => {
      const { value, problems } = measureRoom(one, { rooms: bySlug });
      if (!value || problems.length > 0) throw new Error(problems.map(({ message }) => message).join('; '));
      return [one.slug, value];
    }),
  );
  const house = { levels: [{ id: 'main', name: 'Main level' }] } as unknown as Records['house'];
  return { records: { house, rooms }, measures, truth };
}

function halfInch(value: number): number {
  return Math.round(value * 24) / 24;
}

/** Cuts the largest box in two, again and again. */
function cut(boxes: readonly Box[], count: number, random: () => number): readonly Box[] {
  if (boxes.length === count) return boxes;
  const size = ({ west, east, south, north }: Box): number => (east - west) * (north - south);
  const [largest, ...rest] = boxes.toSorted((a, b) => size(b) - size(a)) as [Box, ...Box[]];
  const [wide, deep] = [largest.east - largest.west, largest.north - largest.south];
  const isWide = wide > deep;
  const length = (isWide ? wide : deep) - wall;
  const first = halfInch(leastRoom + random() * Math.max(0, length - 2 * leastRoom));
  const halves = isWide
    ? [
        { ...largest, east: largest.west + first },
        { ...largest, west: largest.west + first + wall },
      ]
    : [
        { ...largest, north: largest.south + first },
        { ...largest, south: largest.south + first + wall },
      ];
  return cut([...rest, ...halves], count, random);
}

interface Door {
  readonly mark: string;
  readonly a: DoorSide;
  readonly b: DoorSide;
}

interface DoorSide {
  readonly room: number;
  readonly wall: string;
  readonly at: number;
}

/** A door through most walls that have room for one; undefined when the rooms do not all hang together by them. */
function doorsBetween(boxes: readonly Box[], random: () => number): readonly Door[] | undefined {
  const doors: Door[] = [];
  boxes.forEach((a, i) => {
    boxes.forEach((b, j) => {
      const isEast = near(b.west - a.east, wall);
      const isNorth = near(b.south - a.north, wall);
      if (!isEast && !isNorth) return;
      const [low, high] = isEast
        ? [Math.max(a.south, b.south), Math.min(a.north, b.north)]
        : [Math.max(a.west, b.west), Math.min(a.east, b.east)];
      if (high - low < doorWidth + 1 || random() < 0.15) return;
      const from = halfInch(low + 0.5 + random() * (high - low - doorWidth - 1));
      const mark = `D${doors.length + 1}`;
      doors.push(
        isEast
          ? {
              mark,
              a: { room: i, wall: 'east', at: a.north - from - doorWidth },
              b: { room: j, wall: 'west', at: from - b.south },
            }
          : {
              mark,
              a: { room: i, wall: 'north', at: from - a.west },
              b: { room: j, wall: 'south', at: b.east - from - doorWidth },
            },
      );
    });
  });
  const reached = new Set([0]);
  for (let grew = true; grew;) {
    const before = reached.size;
    for (const { a, b } of doors) if (reached.has(a.room) !== reached.has(b.room)) reached.add(a.room).add(b.room);
    grew = reached.size > before;
  }
  return reached.size === boxes.length ? doors : undefined;
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-6;
}

function openingsOf(index: number, doors: readonly Door[]): Opening[] {
  return doors.flatMap(({ mark, a, b }): Opening[] => {
    if (a.room === index) {
      const own = opening(mark, 'door', a.wall, `0'`, `2'-6" x 6'-8"`, { to: `room-${b.room + 1}` });
      return [{ ...own, at: fromFeet(a.at) as Length }];
    }
    if (b.room !== index) return [];
    const recordedIn = `room-${a.room + 1}`;
    return [{ by: 'seen', mark, recordedIn, wall: b.wall, at: fromFeet(b.at) as Length, path: [] }];
  });
}
