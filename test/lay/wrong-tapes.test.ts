import { describe, expect, test } from 'vitest';
import { jointsOf, layRooms, layRoomsOf, withSideMoved, type LayRoom } from '../../src/core/lay/index.js';
import { layingProblems } from '../../src/core/lay/problems.js';
import { seeded } from '../geometry/random.js';
import { generatedHouse } from './generated-house.js';
import { door, laidOf, ofLaying, roomsLaid, seen } from './small-rooms.js';

/** Four rooms in a ring, each 10' × 10' with 4 1/2" between them: A, B east of it, C south of B, D south of A, and a door from each to the next, 2'
 *  from the left corner as the one sees it and 5' as the other does. */
const ring = ({ c = `10'-0" x 10'-0"`, b = `10'-0" x 10'-0"`, d3 = `2'-0"`, d2 = `5'-0"` } = {}) =>
  roomsLaid({
    a: [`size: 10'-0" x 10'-0"`, 'openings:', door('D1', 'east', `2'-0"`, 'b'), door('D4', 'south', `2'-0"`, 'd')],
    b: [`size: ${b}`, 'openings:', seen('D1', 'a', 'west', `5'-0"`), door('D2', 'south', `2'-0"`, 'c')],
    c: [`size: ${c}`, 'openings:', seen('D2', 'b', 'north', d2), door('D3', 'west', d3, 'd')],
    d: [`size: 10'-0" x 10'-0"`, 'openings:', seen('D4', 'a', 'north', `5'-0"`), seen('D3', 'c', 'east', `5'-0"`)],
  });

const suspectsOf = (said: readonly string[]): readonly string[] =>
  said.filter((one) => one.startsWith('tape-suspect: ')).map((one) => one.replace('tape-suspect: ', ''));

describe('a ring of four rooms', () => {
  test.each([`10'-0" x 10'-0"`, `10'-0 1/16" x 10'-0"`])('of which one is %s has nothing against it', (c) => {
    expect(laidOf(ring({ c }))).toEqual([]);
  });

  test('tells a corner an inch out of line', () => {
    expect(laidOf(ring({ c: `10'-1" x 10'-0"` }))).toEqual([
      `walls-out-of-line: the east wall of C stands 1" outside the line of the east wall of B`,
    ]);
  });

  test('names a door 3 ft off, and how many tapes would explain as much beside those that it names', () => {
    const { problems } = ring({ d3: `5'-0"` });
    const told = ofLaying(problems).filter(({ code }) => code === 'tape-suspect');
    expect(told.map(({ message }) => message)).toContain(`D3 in C may lie at 2'-0": with that, the house fits`);
    expect(told.length).toBe(3);
    for (const { fix } of told) expect(fix).toMatch(/ and 2 more$/u);
  });
});

describe('what a tape may be', () => {
  test('is nothing that leaves no room, and no door past the corner', () => {
    const { problems } = roomsLaid({
      a: [
        `size: 20'-0" x 30'-0"`,
        'openings:',
        door('D1', 'east', `2'-0"`, 'b'),
        door('D2', 'north', `10'-0"`, 'b'),
        door('D3', 'south', `10'-0"`, 'b'),
      ],
      b: [
        `size: 20'-0" x 30'-0"`,
        'openings:',
        seen('D1', 'a', 'west', `25'-0"`),
        seen('D2', 'a', 'south', `2'-0"`),
        seen('D3', 'a', 'north', `11'-0"`),
      ],
    });
    const said = ofLaying(problems).map(({ code, message }) => `${code}: ${message}`);
    expect(said.filter((one) => one.startsWith('rooms-misclose')).length).toBeGreaterThan(0);
    // One of the rooms would have to be 52' shorter than it is.
    expect(suspectsOf(said)).toEqual([]);
  });

  test('is where a record says that a room stands', () => {
    const said = laidOf(
      roomsLaid({
        a: [`size: 10'-0" x 10'-0"`, 'openings:', door('D1', 'east', `2'-0"`, 'b')],
        b: [`size: 10'-0" x 10'-0"`, 'openings:', seen('D1', 'a', 'west', `5'-0"`)],
        c: [`size: 20'-4 1/2" x 8'-0"`, `place: { from: a, x: 0", y: -8'-1" }`],
      }),
    );
    expect(suspectsOf(said)).toEqual([
      `the north wall of C may stand 3 1/2" farther in: with that, the house fits`,
      `y in the place of C may be −8'-4 1/2": with that, the house fits`,
    ]);
  });

  test('is one of two places that say of each other what cannot be', () => {
    const said = laidOf(
      roomsLaid({
        a: [`size: 12'-0" x 10'-0"`, `place: { from: b, x: 20'-0", y: 0" }`],
        b: [`size: 12'-0" x 10'-0"`, `place: { from: a, x: 20'-0", y: 0" }`],
      }),
    );
    expect(said).toContain(
      `rooms-misclose: around B and A, back through the place of A, the tapes miss where they began by 40'-0" east-west, in 40'-0": 1 in 1`,
    );
    expect(suspectsOf(said)).toEqual([
      `x in the place of A may be −20'-0": with that, the house fits`,
      `x in the place of B may be −20'-0": with that, the house fits`,
    ]);
  });

  test('is a side that is as long as what it is open to once it is mended', () => {
    const said = laidOf(
      roomsLaid({
        a: [`size: 10'-0" x 10'-0"`, 'open: { east: b }'],
        b: [`size: 10'-0" x 9'-6"`, 'open: { west: a }', 'openings:', seen('D1', 'c', 'north', `3'-6"`)],
        c: [`size: 20'-0" x 8'-0"`, 'openings:', door('D1', 'south', `3'-6"`, 'b'), door('D2', 'south', `13'-6"`, 'a')],
      }),
    );
    expect(suspectsOf(said)).toContain(`the north wall of B may stand 6" farther out: with that, the house fits`);
  });
});

describe('three wrong tapes in 60 rooms', () => {
  const house = generatedHouse(seeded(7), 60);
  const rooms = layRoomsOf(house.records, house.measures);
  const wrong = rooms.map((room) =>
    [3, 9, 15].includes(room.index) ? (withSideMoved(room, 1, 0.5) as LayRoom) : room,
  );
  const { joints, misfits } = jointsOf(wrong);
  const said = layingProblems(layRooms(wrong, joints), misfits).map(({ code, message }) => `${code}: ${message}`);

  test('are named one after another, and only with the last of them the house fits', () => {
    const found = suspectsOf(said);
    for (const name of ['Room 4', 'Room 10', 'Room 16']) expect(found.some((one) => one.includes(name))).toBe(true);
    const [last] = found.filter((one) => one.endsWith('the house fits'));
    expect(last).toMatch(
      /: with the \w+ wall of Room \d+, the \w+ wall of Room \d+ and that put right, the house fits$/u,
    );
    expect(found.filter((one) => one.endsWith('the house fits')).length).toBe(1);
  });

  test('are not told of ways that close', () => {
    const misses = said.filter((one) => one.startsWith('rooms-misclose'));
    expect(misses.length).toBeGreaterThan(0);
    for (const miss of misses) expect(miss).toMatch(/began by 6" east-west, in \d+'[^:]*: 1 in \d{2,3}$/u);
  });
});

test('a wall that is as far out of line of several is told once', () => {
  const said = laidOf(
    roomsLaid({
      a: [`size: 10'-0" x 10'-0"`, 'openings:', door('D1', 'south', `2'-0"`, 'b')],
      b: [`size: 10'-0" x 1'-6"`, 'openings:', seen('D1', 'a', 'north', `5'-0"`), door('D2', 'south', `2'-0"`, 'c')],
      c: [`size: 9'-10" x 10'-0"`, 'openings:', seen('D2', 'b', 'north', `5'-0"`)],
    }),
  );
  expect(said).toContain(
    `walls-out-of-line: the east wall of C stands 2" inside the line of the east wall of A and the east wall of B`,
  );
});
