import { headings } from '../../src/base/geometry/index.js';
import { describe, expect, test } from 'vitest';
import { feet } from '../../src/base/units/index.js';
import { measured, regionArea, top, wall } from './measured.js';
import { box, flat, len, opening, outline, pitch, point, room, size, walk } from './room-record.js';

describe("a room by size: 24'-0\" x 18'-6\", flat 9'", () => {
  const measure = measured({ shape: size(`24'-0"`, `18'-6"`), ceiling: flat(`9'`) });

  test('floor, perimeter and volume', () => {
    expect(measure.floor.net).toBe(444); // 24 × 18.5
    expect(feet(measure.perimeter)).toBe(85); // 2 × (24 + 18.5)
    expect(measure.volume).toBeCloseTo(3996, 9); // 444 × 9
    expect(measure.ceiling.net).toBe(444);
    expect(measure.headroom).toEqual({ fiveFeet: 444, sevenFeet: 444 });
    expect([measure.lowest, measure.highest]).toEqual([len(`9'`), len(`9'`)]);
  });

  test('walls go clockwise from above, left end first', () => {
    expect(measure.walls.map(({ id, gross }) => [id, gross])).toEqual([
      ['north', 216],
      ['east', 166.5],
      ['south', 216],
      ['west', 166.5],
    ]);
    expect(wall(measure, 'north').from).toEqual(point(`0'`, `18'-6"`));
    expect(wall(measure, 'north').to).toEqual(point(`24'`, `18'-6"`));
    expect(wall(measure, 'north').name).toBe('North wall');
  });
});

describe('the same L three ways', () => {
  // 20 × 12 with a 8 × 5 bite out of the north-east: 240 − 40 = 200 sq ft, 64 ft around.
  const walked = walk(`a east 12'`, `b south 5'`, `c east 8'`, `d south 7'`, `e west 20'`, `f north 12'`);
  const clockwise = outline([`0'`, `12'`], [`12'`, `12'`], [`12'`, `7'`], [`20'`, `7'`], [`20'`, `0'`], [`0'`, `0'`]);
  const counter = outline([`5'`, `5'`], [`25'`, `5'`], [`25'`, `12'`], [`17'`, `12'`], [`17'`, `17'`], [`5'`, `17'`]);

  test.each([
    ['walked', walked],
    ['clockwise outline', clockwise],
    ['counter-clockwise outline, moved', counter],
  ])('%s', (_, shape) => {
    const measure = measured({ shape, ceiling: flat(`8'`) });
    expect(measure.floor.net).toBeCloseTo(200, 9);
    expect(feet(measure.perimeter)).toBe(64);
    expect(measure.walls.reduce((sum, { gross }) => sum + gross, 0)).toBeCloseTo(512, 9);
    expect(measure.volume).toBeCloseTo(1600, 9);
  });

  test('a counter-clockwise outline keeps its wall names and is turned', () => {
    const measure = measured({ shape: counter, ceiling: flat(`8'`) });
    expect(measure.walls.map(({ id }) => id)).toEqual(['w1', 'w6', 'w5', 'w4', 'w3', 'w2']);
    // w1 is the south wall: from inside, its left end is east.
    expect(wall(measure, 'w1').from).toEqual(point(`25'`, `5'`));
    expect(wall(measure, 'w1').to).toEqual(point(`5'`, `5'`));
  });
});

test("a walk with a diagonal: a 12' square with a 3' corner cut off", () => {
  // The diagonal of a 3' × 3' corner is 4'-2 58/64" to the nearest 64th; area 144 − 4.5.
  const shape = walk(`a east 9'`, `b south-east 4'-2 29/32"`, `c south 9'`, `d west 12'`, `e north 12'`);
  const measure = measured({ shape, ceiling: flat(`8'`) });
  expect(measure.floor.net).toBeCloseTo(139.5, 2);
  expect(wall(measure, 'd').from.y).toBe(wall(measure, 'd').to.y); // the rest of the walk leaves square walls square
  expect(wall(measure, 'a').from.y).toBe(wall(measure, 'a').to.y);
});

test('a side open to another room has no wall', () => {
  const measure = measured({ shape: size(`10'`, `8'`, { east: 'kitchen' }), ceiling: flat(`9'`) });
  expect(wall(measure, 'east')).toMatchObject({ openTo: 'kitchen', gross: 0, net: 0, regions: [] });
  expect(feet(measure.perimeter)).toBe(36);
  expect(feet(measure.wallRun)).toBe(28);
});

describe('voids', () => {
  // Worked by hand: a loft of 20 × 16 = 320 sq ft under a flat ceiling, with a stair well of 6 × 8 = 48 in its floor. The boards
  // overhead go right across the well: 320. What one can stand on is 320 − 48 = 272.
  test('cut the floor, and leave the ceiling and the room above them', () => {
    const voids = [{ name: 'Well', corners: box(`4'`, `3'`, `6'`, `8'`) }];
    const measure = measured({ shape: size(`20'`, `16'`), ceiling: flat(`8'`), voids });
    expect(measure.floor).toMatchObject({ gross: 320, net: 272 });
    expect(measure.floor.deductions).toEqual([{ what: 'Well', of: 'Well', kind: 'void', area: 48 }]);
    expect(measure.floor.regions[0]?.holes).toHaveLength(1);
    expect(measure.ceiling).toMatchObject({ gross: 320, net: 320, deductions: [], planArea: 320 });
    expect(measure.volume).toBeCloseTo(320 * 8, 9);
    expect(measure.headroom).toEqual({ fiveFeet: 272, sevenFeet: 272 });
  });

  test('that the ceiling has too come off floor, ceiling and volume', () => {
    const voids = [{ name: 'Shaft', corners: box(`4'`, `3'`, `8'`, `6'`), isOpenAbove: true }];
    const measure = measured({ shape: size(`20'`, `15'`), ceiling: flat(`8'`), voids });
    expect(measure.floor).toMatchObject({ gross: 300, net: 252 });
    expect(measure.ceiling.net).toBeCloseTo(252, 9);
    expect(measure.ceiling.deductions.map(({ what, area }) => [what, area])).toEqual([['Shaft', 48]]);
    expect(measure.volume).toBeCloseTo(2016, 9);
  });

  test('of any outline: an L of 6 × 6 less 3 × 3 takes 27 sq ft, with six sides by their names', () => {
    const corners = [
      [`2'`, `2'`],
      [`8'`, `2'`],
      [`8'`, `5'`],
      [`5'`, `5'`],
      [`5'`, `8'`],
      [`2'`, `8'`],
    ].map(([x = '', y = '']) => point(x, y));
    const sides = ['south', 'east', 'inner-north', 'inner-east', 'north', 'west'];
    const [anti, clock] = [
      { name: 'Well', corners, sides },
      // The same walked the other way: from the first corner up the west side.
      {
        name: 'Well',
        corners: [corners[0], ...corners.slice(1).reverse()].flatMap((corner) => corner ?? []),
        sides: ['west', 'north', 'inner-east', 'inner-north', 'east', 'south'],
      },
    ].map((hole) => measured({ shape: size(`20'`, `16'`), ceiling: flat(`8'`), voids: [hole] }));
    expect(anti?.floor.net).toBe(320 - 27);
    expect(clock?.floor.net).toBe(320 - 27);
    const runs = (measure: typeof anti) =>
      Object.fromEntries(
        measure?.voids[0]?.sides.map(({ name, run, from }) => [name, [feet(run), feet(from.x)]]) ?? [],
      );
    // Left ends as one faces the hole from the floor: the south side from the south, so its left end is to the west.
    expect(runs(anti)).toEqual({
      south: [6, 2],
      east: [3, 8],
      'inner-north': [3, 8],
      'inner-east': [3, 5],
      north: [3, 5],
      west: [6, 2],
    });
    expect(runs(clock)).toEqual(runs(anti));
  });

  test('floor ends at their sides, but not along a wall and not where another hole goes on', () => {
    const voids = [
      { name: 'Stair', corners: box(`0'`, `0'`, `8'`, `4'`), sides: ['south', 'east', 'north', 'west'] },
      { name: 'Shaft', corners: box(`8'`, `2'`, `4'`, `4'`), sides: ['south', 'east', 'north', 'west'] },
    ];
    const measure = measured({ shape: size(`20'`, `15'`), ceiling: flat(`8'`), voids });
    const edges = measure.voids.map(({ sides }) =>
      sides.map((side) => [side.name, side.edges.map(({ from, to }) => [feet(from), feet(to)])]),
    );
    expect(edges).toEqual([
      [
        ['south', []],
        ['east', [[0, 2]]],
        ['north', [[0, 8]]],
        ['west', []],
      ],
      [
        ['south', [[0, 4]]],
        ['east', [[0, 4]]],
        ['north', [[0, 4]]],
        ['west', [[0, 2]]],
      ],
    ]);
  });

  test('against a wall leave a notch, two that overlap count once', () => {
    const voids = [
      { name: 'Stair', corners: box(`0'`, `0'`, `8'`, `4'`) },
      { name: 'Shaft', corners: box(`6'`, `2'`, `4'`, `4'`) },
    ];
    const measure = measured({ shape: size(`20'`, `15'`), ceiling: flat(`8'`), voids });
    // 32, then 16 less the 2 × 2 that both take.
    expect(measure.floor.deductions.map(({ area }) => area)).toEqual([32, 12]);
    expect(measure.floor.net).toBe(256);
    expect(measure.floor.regions).toHaveLength(1);
    expect(measure.floor.regions[0]?.holes).toEqual([]);
    expect(regionArea(measure.floor.regions)).toBeCloseTo(256, 6);
  });

  test('that go right across leave two floors', () => {
    const voids = [{ name: 'Bridge gap', corners: box(`8'`, `0'`, `4'`, `15'`) }];
    const measure = measured({ shape: size(`20'`, `15'`), ceiling: flat(`8'`), voids });
    expect(measure.floor.regions).toHaveLength(2);
    expect(measure.floor.net).toBe(240);
  });
});

describe('openings', () => {
  test('come off their wall, each listed; a door leaves a notch and a window a hole', () => {
    const measure = measured({
      shape: size(`20'`, `15'`),
      ceiling: flat(`9'`),
      openings: [
        opening('D01', 'door', 'south', `3'`, `3' x 8'`),
        opening('W01', 'window', 'south', `10'`, `6' x 5'`, { sill: len(`2'-6"`) }),
      ],
    });
    const south = wall(measure, 'south');
    expect(south.gross).toBe(180);
    expect(south.deductions.map(({ what, of, area }) => [what, of, area])).toEqual([
      ['Door D01', 'D01', 24],
      ['Window W01', 'W01', 30],
    ]);
    expect(south.net).toBe(126);
    expect(south.regions).toHaveLength(1);
    expect(south.regions[0]?.outline).toHaveLength(8);
    expect(south.regions[0]?.holes).toHaveLength(1);
    expect(regionArea(south.regions)).toBeCloseTo(126, 6);
  });

  test('recorded in another room take their sizes from there, hinges seen from here', () => {
    const door = opening('D02', 'door', 'north', `2'`, `2'-10" x 6'-8"`, { to: 'hall', hinge: 'left', swing: 'hall' });
    const owner = room({ slug: 'foyer', shape: size(`9'`, `9'`), ceiling: flat(`9'`), openings: [door] });
    const hall = room({
      slug: 'hall',
      shape: size(`9'`, `4'`),
      ceiling: flat(`8'`),
      openings: [{ by: 'seen', mark: 'D02', recordedIn: 'foyer', wall: 'south', at: len(`1'`), path: [] }],
    });
    const measure = measured(hall, [owner, hall]);
    expect(measure.openings).toMatchObject([
      {
        mark: 'D02',
        own: false,
        to: 'foyer',
        wall: 'south',
        at: len(`1'`),
        width: len(`2'-10"`),
        hinge: 'right',
        swing: 'hall',
      },
    ]);
    // 34 × 80 in. = 18.889 sq ft off 9 × 8
    expect(wall(measure, 'south').net).toBeCloseTo(72 - (34 * 80) / 144, 9);
  });

  test('a window cut by the rake loses only what lies on the wall', () => {
    // South wall, seen from inside: left is east. Shed low east at 4', rising 1 in 1 to the west: top = 4 + x from the left.
    const measure = measured({
      shape: size(`10'`, `8'`),
      ceiling: { form: 'shed', low: headings.east, plate: len(`4'`), pitch: pitch('12/12') },
      openings: [opening('W01', 'window', 'south', `1'`, `4' x 4'`, { sill: len(`2'`) })],
    });
    // The window is 2' to 6' high over x 1' to 5'; the rake passes 6' at x = 2': a triangle of 1 × 1 / 2 is gone.
    expect(measure.openings[0]).toMatchObject({ area: 16, areaOnWall: 15.5 });
    const south = wall(measure, 'south');
    expect(south.gross).toBeCloseTo(90, 9); // 10 × (4 + 14) / 2
    expect(south.net).toBeCloseTo(74.5, 9);
    expect(regionArea(south.regions)).toBeCloseTo(74.5, 6);
    expect(top(measure, 'south')).toEqual(['0 4', '10 14']);
  });
});
