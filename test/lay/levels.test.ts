import { describe, expect, test } from 'vitest';
import { measureFiles, type LoadedHouse } from '../../src/disk/load/index.js';
import { codesByPage } from '../../src/base/problem/index.js';
import { demoHouse } from '../demo-house.js';
import { door, laidOf, roomsLaid, seen } from './small-rooms.js';

const levels = (...floors: readonly (string | undefined)[]): string =>
  [
    'levels:',
    ...floors.map(
      (floor, index) => `  - { id: l${index}, name: Level ${index}${floor === undefined ? '' : `, floor: ${floor}`} }`,
    ),
    '',
  ].join('\n');

const around = ({ house }: LoadedHouse, slug: string) => house?.measures.get(slug)?.around;
const outside = (loaded: LoadedHouse, slug: string) =>
  around(loaded, slug)?.outside.map(({ id, gross }) => [id, Math.round(gross * 1000) / 1000]);

const over = (level: string, from = 'a'): readonly string[] => [
  `level: ${level}`,
  `size: 12'-0" x 10'-0"`,
  `place: { from: ${from}, x: 0", y: 0" }`,
];
const ground = ['level: l0', `size: 12'-0" x 10'-0"`];

describe('levels', () => {
  test('are listed lowest first', () => {
    expect(laidOf(roomsLaid({ a: ground, b: over('l1') }, levels(`0"`, `-9'-0"`)))).toEqual([
      'levels-out-of-order: Level 1 lies 9\'-0" below Level 0, which is listed before it',
    ]);
  });

  test('of which one has no room are laid out without it, and nothing hangs over it', () => {
    const loaded = roomsLaid({ a: ground, b: over('l2') }, levels(`0"`, `9'-0"`, `18'-0"`));
    expect(laidOf(loaded)).toEqual([
      'level-empty: no room is on Level 1: the house is laid out as if that level were not there',
    ]);
    expect(around(loaded, 'b')?.overNothing).toBeUndefined();
  });

  test.each([
    [`9'-0"`, []],
    [`8'-0"`, []],
    [
      `4'-0"`,
      ['ceiling-through-floor: the ceiling of A reaches 8\'-0", and the floor of B, which lies over it, is at 4\'-0"'],
    ],
  ] as const)('at %s over a ceiling of 8\'-0"', (floor, said) => {
    expect(laidOf(roomsLaid({ a: ground, b: over('l1') }, levels(`0"`, floor)))).toEqual(said);
  });

  test('over the low side of a slope are not reached by its high one', () => {
    // 5' at the west, 15' at the east; the room above stands over the western 4'.
    const low = [...ground, `ceiling: { form: shed, low: west, plate: 5'-0", pitch: 10/12 }`];
    const high = ['level: l1', `size: 3'-6" x 10'-0"`, `place: { from: a, x: 0", y: 0" }`];
    expect(laidOf(roomsLaid({ a: low, b: high }, levels(`0"`, `9'-0"`)))).toEqual([]);
    expect(laidOf(roomsLaid({ a: low, b: high }, levels(`0"`, `7'-0"`)))).toEqual([
      'ceiling-through-floor: the ceiling of A reaches 7\'-11", and the floor of B, which lies over it, is at 7\'-0"',
    ]);
  });

  test('that split stand against each other by part of their height, and carry what stands over them', () => {
    // B lies 4' over A, beside it to the east, and C over A.
    const loaded = roomsLaid(
      {
        a: [...ground, 'openings:', door('D1', 'east', `2'-0"`, 'b')],
        b: ['level: l1', `size: 12'-0" x 10'-0"`, 'openings:', seen('D1', 'a', 'west', `5'-0"`)],
        c: over('l2'),
      },
      levels(`0"`, `4'-0"`, `9'-0"`),
    );
    expect(laidOf(loaded)).toEqual([]);
    // Of A's east wall, 10' × 8', B stands behind the upper 4', and the door, 3' × 7', leads there through the lower: 80 - 40 - 3 × 4.
    expect(outside(loaded, 'a')).toContainEqual(['east', 28]);
    expect(around(loaded, 'c')).toMatchObject({ overNothing: 0, under: [{ room: 'a' }] });
    // It stands on the ground, not over the outside.
    expect(around(loaded, 'b')?.overNothing).toBeUndefined();
  });
});

test('the height of a level is held against what the demo house records between its floors', async () => {
  const { records } = await demoHouse();
  const sources = records.sources.map((source) =>
    source.path === 'content/house.md'
      ? { ...source, text: source.text.replace(`above-ground: 11'-10"`, `above-ground: 10'-10"`) }
      : source,
  );
  const found = measureFiles(sources).problems.filter(({ code }) => codesByPage.laying.some((own) => own === code));
  expect(found.map(({ code, severity, message }) => [code, severity, message])).toEqual([
    [
      'level-height',
      'warning',
      'Upper level lies 9\'-4" over Main level, and 10\'-4" by the sill of O04, the rise of Main stair, Well of Stair hall and 3 more',
    ],
  ]);
});

describe('a well', () => {
  const part = (name: string, height: string, over: string, to = ''): string =>
    `  - { name: ${name}, form: flat, height: ${height}, over: ${over}${to} }`;
  const two = levels(`0"`, `9'-0"`);

  test('that only the room above knows', () => {
    expect(
      laidOf(roomsLaid({ a: ground, b: ['level: l1', `size: 12'-0" x 10'-0"`, 'open: { east: a }'] }, two)),
    ).toEqual([
      "open-side-one-sided: the east wall of B is open to A, on another level, and no part of that one's ceiling is open to B",
    ]);
  });

  test('that only the room below knows', () => {
    const open = [
      ...ground,
      'ceiling:',
      part('Well', `17'-0"`, `{ x: 0", y: 0", width: 4'-0", depth: 10'-0" }`, `, open-above: { height: 9'-0", to: b }`),
      part('Rest', `8'-0"`, `{ x: 4'-0", y: 0", width: 8'-0", depth: 10'-0" }`),
    ];
    expect(laidOf(roomsLaid({ a: open, b: ['level: l1', `size: 12'-0" x 10'-0"`] }, two))).toEqual([
      'open-side-one-sided: Well of A is open above to B, and no side of B is open to A',
    ]);
  });

  test('as large as its room has its edges over the walls', () => {
    // A gallery of 4' around three sides of a hall of 12' × 10'.
    const hall = [
      ...ground,
      'ceiling:',
      part(
        'Well',
        `17'-0"`,
        `{ x: 0", y: 0", width: 12'-0", depth: 10'-0" }`,
        `, open-above: { height: 9'-0", to: b }`,
      ),
    ];
    const gallery = [
      'level: l1',
      'walls:',
      `  - { name: north, go: east, run: 20'-0" }`,
      `  - { name: east, go: south, run: 14'-0" }`,
      `  - { name: east-end, go: west, run: 4'-0" }`,
      `  - { name: edge-east, go: north, run: 10'-0", open-to: a }`,
      `  - { name: edge-north, go: west, run: 12'-0", open-to: a }`,
      `  - { name: edge-west, go: south, run: 10'-0", open-to: a }`,
      `  - { name: west-end, go: west, run: 4'-0" }`,
      `  - { name: west, go: north, run: 14'-0" }`,
    ];
    const loaded = roomsLaid({ a: hall, b: gallery }, two);
    expect(laidOf(loaded)).toEqual([]);
    expect(loaded.house?.laid.groups.length).toBe(1);
  });

  test('is of another room', () => {
    expect(laidOf(roomsLaid({ a: [...ground, 'open: { east: a }'] }, levels(`0"`)))).toEqual([
      "opening-to-itself: 'east' is open to its own room",
    ]);
  });
});

describe('a wall that two rooms name by type', () => {
  const types = (a: string, b: string): readonly string[] =>
    laidOf(
      roomsLaid(
        {
          a: [`size: 10'-0" x 10'-0"`, `wall-types: { east: ${a} }`, 'openings:', door('D1', 'east', `2'-0"`, 'b')],
          b: [`size: 10'-0" x 10'-0"`, `wall-types: { west: ${b} }`, 'openings:', seen('D1', 'a', 'west', `5'-0"`)],
        },
        `wall-types:\n  - { id: wet, name: Wet, thickness: 8" }\n  - { id: thin, name: Thin, thickness: 3" }\nlevels:\n  - { id: main, name: Main level }\n`,
      ),
    );

  test('is of one', () => {
    expect(types('wet', 'wet')).toEqual([]);
    expect(types('wet', 'thin')).toEqual([
      'wall-types-differ: the west wall of B is of a type of 3", and the east wall of A, which stands against it, of one of 8"',
    ]);
  });
});

test('a wall that ends beside an open side has neither a room nor the outside behind its end', () => {
  const loaded = roomsLaid({
    a: [
      'walls:',
      `  - { name: north, go: east, run: 10'-0" }`,
      `  - { name: east-north, go: south, run: 2'-0" }`,
      `  - { name: end-north, go: east, run: 4 1/2" }`,
      `  - { name: open, go: south, run: 6'-0", open-to: b }`,
      `  - { name: end-south, go: west, run: 4 1/2" }`,
      `  - { name: east-south, go: south, run: 2'-0" }`,
      `  - { name: south, go: west, run: 10'-0" }`,
      `  - { name: west, go: north, run: 10'-0" }`,
    ],
    b: [
      'walls:',
      `  - { name: north, go: east, run: 10'-0" }`,
      `  - { name: east, go: south, run: 10'-0" }`,
      `  - { name: south, go: west, run: 10'-0" }`,
      `  - { name: west-south, go: north, run: 2'-0" }`,
      `  - { name: open, go: north, run: 6'-0", open-to: a }`,
      `  - { name: west-north, go: north, run: 2'-0" }`,
    ],
  });
  expect(laidOf(loaded)).toEqual([]);
  const walls = around(loaded, 'a')?.walls ?? [];
  const ends = walls.filter(({ stretches }) => stretches.some(({ isEnd }) => isEnd)).map(({ wall }) => wall);
  expect(ends).toEqual(['end-north', 'end-south']);
  expect(outside(loaded, 'a')?.map(([id]) => id)).toEqual(['north', 'south', 'west']);
});
