import { describe, expect, test } from 'vitest';
import {
  findSuspects,
  fitOf,
  jointsOf,
  layHouse,
  layRooms,
  layRoomsOf,
  withSideMoved,
} from '../../src/core/lay/index.js';
import { codesByPage } from '../../src/base/problem/index.js';
import type { Source } from '../../src/core/model/index.js';
import { measureFiles } from '../../src/disk/load/index.js';
import { demoHouse } from '../demo-house.js';
import { seeded } from '../geometry/random.js';
import { atMost, processorTime } from '../processor-time.js';
import { generatedHouse } from './generated-house.js';

const house = await demoHouse();

describe('the demo house', () => {
  test('fits together', () => {
    expect(layHouse(house.records, house.measures).problems).toEqual([]);
    expect(house.laid.groups.map(({ levels }) => levels.map(({ level, rooms }) => [level, rooms.length]))).toEqual([
      [
        ['main', 17],
        ['upper', 6],
      ],
    ]);
  });

  test.each([
    // As it was before it was laid out: no wall between the great room and the upper hall.
    [
      'a hall 4 1/2" too far north',
      'content/rooms/upper-hall.md',
      [
        [`name: west, go: north, run: 3'-7 1/2"`, `name: west, go: north, run: 4'-0"`],
        [`name: inner-west, go: north, run: 11'-10 1/2"`, `name: inner-west, go: north, run: 11'-6"`],
      ],
      `the north wall of Upper hall may stand 4 1/2" farther in`,
    ],
    [
      'a pantry a foot too long',
      'content/rooms/pantry.md',
      [[`4'-7 1/2" x 7'-7 1/2"`, `5'-7 1/2" x 7'-7 1/2"`]],
      `the west wall of Pantry may stand 1'-0" farther in`,
    ],
    [
      'a door measured from the other corner',
      'content/rooms/laundry.md',
      [[`wall: west, at: 3'-4 1/2"`, `wall: west, at: 2'-9"`]],
      `D15 in Laundry may lie at 3'-4 1/2"`,
    ],
  ] as const)('names %s', (_, path, edits, suspect) => {
    const { problems } = measureFiles(edited(house.records.sources, path, edits));
    const found = problems.filter(({ code }) => codesByPage.laying.some((own) => own === code));
    expect(found.map(({ message }) => message.replace(/: with that, the house fits$/u, ''))).toContain(suspect);
  });

  test('is laid out in less than 20 ms, and its suspects are found in less than half a second', () => {
    const rooms = layRoomsOf(house.records, house.measures);
    const { joints } = jointsOf(rooms);
    const lay = (): unknown => layRooms(rooms, jointsOf(rooms).joints);
    const moved = withSideMoved(rooms[3]!, 0, 0.5)!;
    const wrong = layRooms(
      rooms.map((one) => (one.index === moved.index ? moved : one)),
      joints,
    );
    const suspect = (): unknown => findSuspects(wrong, fitOf(wrong));
    const times = { lay: fastest(lay), suspect: fastest(suspect) };
    expect(times.lay).toBeLessThan(atMost(20, times.lay));
    expect(times.suspect).toBeLessThan(atMost(500, times.suspect));
    if (process.env['SHOW_TIMES']) console.log(times);
  });
});

test('a level of 60 rooms stands as it was made', () => {
  const { records, measures, truth } = generatedHouse(seeded(60), 60);
  const rooms = layRoomsOf(records, measures);
  const laying = layRooms(rooms, jointsOf(rooms).joints);
  const first = { x: laying.at[0]!.x - truth.get('room-1')!.x, y: laying.at[0]!.y - truth.get('room-1')!.y };
  for (const { index, slug } of rooms) {
    expect(laying.at[index]!.x - truth.get(slug)!.x).toBeCloseTo(first.x, 5);
    expect(laying.at[index]!.y - truth.get(slug)!.y).toBeCloseTo(first.y, 5);
  }
  const took = fastest(() => layRooms(rooms, jointsOf(rooms).joints));
  expect(took).toBeLessThan(atMost(200, took));
});

function fastest(work: () => unknown): number {
  return Math.min(...Array.from({ length: 9 }, () => processorTime(() => void work())));
}

function edited(
  sources: readonly Source[],
  path: string,
  edits: readonly (readonly [string, string])[],
): readonly Source[] {
  return sources.map((source) => {
    if (source.path !== path) return source;
    const text = edits.reduce((before, [from, to]) => {
      if (!before.includes(from)) throw new Error(`${path} has no ${from}`);
      return before.replace(from, to);
    }, source.text);
    return { ...source, text };
  });
}
