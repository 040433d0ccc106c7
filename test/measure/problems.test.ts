import { headings } from '../../src/base/geometry/index.js';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/core/model/index.js';
import { problemsOf, told } from './measured.js';
import { box, flat, len, opening, outline, pitch, point, size, walk } from './room-record.js';

const square = { shape: size(`12'`, `10'`), ceiling: flat(`8'`) };

describe('plans', () => {
  test('walls that cross', () => {
    // A bow tie: w2 climbs to the north-west, w4 comes back across it in the middle, 5 × √2 from its start.
    const shape = outline([`0'`, `0'`], [`10'`, `0'`], [`0'`, `10'`], [`10'`, `10'`]);
    expect(told(problemsOf({ ...square, shape }))).toEqual([
      `walls-cross at outline.3: walls 'w2' and 'w4' meet or cross 7'-0 7/8" from the start of 'w2'`,
    ]);
  });

  test('a walk that doubles back', () => {
    const shape = walk(`a east 10'`, `b west 4'`, `c south 5'`, `d west 6'`, `e north 5'`);
    expect(told(problemsOf({ ...square, shape }))[0]).toMatch(/^walls-cross at walls\.1: walls 'a' and 'b'/);
  });

  test('no length, no area', () => {
    expect(told(problemsOf({ ...square, shape: size(`0'`, `10'`) }))).toEqual([
      "wall-no-length at size: wall 'north' has no length",
      "wall-no-length at size: wall 'south' has no length",
    ]);
    const line = outline([`0'`, `0'`], [`4'`, `0'`], [`9'`, `0'`]);
    expect(told(problemsOf({ ...square, shape: line }))).toHaveLength(1);
  });

  test('a void outside the room', () => {
    const voids = [{ name: 'Well', corners: box(`10'`, `2'`, `4'`, `3'`) }];
    expect(told(problemsOf({ ...square, voids }))).toEqual([
      "void-outside-room at voids.0: 6 sq ft of the 12 sq ft of void 'Well' lie outside the room",
    ]);
  });

  // A tape reads to 1/16": along the 16' around a void of 4' × 4' that is 1/12 sq ft, which lies past a wall over 4' at 1/4".
  test('a void that reaches past a wall by what a tape cannot tell is let pass', () => {
    const past = (by: string) => [{ name: 'Well', corners: box(`8'-0 ${by}"`, `2'`, `4'`, `4'`) }];
    expect(problemsOf({ ...square, voids: past('15/64') })).toEqual([]);
    expect(told(problemsOf({ ...square, voids: past('17/64') }))).toEqual([
      "void-outside-room at voids.0: 0.09 sq ft of the 16 sq ft of void 'Well' lie outside the room",
    ]);
  });

  test('a void that crosses itself', () => {
    const corners = [point(`1'`, `1'`), point(`5'`, `1'`), point(`1'`, `5'`), point(`5'`, `5'`)];
    expect(told(problemsOf({ ...square, voids: [{ name: 'Well', corners }] }))).toEqual([
      `void-crosses at voids.0: the outline of void 'Well' crosses itself: corners 2 to 3 and 4 to 1 meet x 2'-0", y 2'-0" from its south-west`,
    ]);
  });

  test('a void that takes the whole room', () => {
    const voids = [{ name: 'Well', corners: box(`0'`, `0'`, `12'`, `10'`) }];
    expect(told(problemsOf({ ...square, voids }))).toEqual([
      'void-takes-room at voids: Test room has no floor left: its voids take all of it',
    ]);
  });
});

describe('ceilings', () => {
  test('a cut at the plate leaves no slope', () => {
    const form = { form: 'shed', low: headings.west, plate: len(`8'`), pitch: pitch('6/12') } as const;
    expect(problemsOf({ ...square, ceiling: { form, cut: len(`8'`) } })).toMatchObject([
      { code: 'cut-below-plate', severity: 'warning' },
    ]);
  });

  test('parts that leave a gap or overlap', () => {
    const gap = [
      { name: 'West', form: flat(`8'`), over: box(`0'`, `0'`, `5'`, `10'`) },
      { name: 'East', form: flat(`9'`), over: box(`6'`, `0'`, `6'`, `10'`) },
    ];
    expect(told(problemsOf({ ...square, ceiling: gap }))).toEqual([
      `ceiling-not-covered at ceiling: the ceiling parts leave 10 sq ft of 120 sq ft uncovered, within x 5'-0" to 6'-0", y 0" to 10'-0"`,
    ]);
    const overlap = [
      { name: 'West', form: flat(`8'`), over: box(`0'`, `0'`, `8'`, `10'`) },
      { name: 'East', form: flat(`9'`), over: box(`6'`, `0'`, `6'`, `10'`) },
    ];
    expect(told(problemsOf({ ...square, ceiling: overlap }))).toEqual([
      "ceiling-parts-overlap at ceiling.1.over: ceiling parts 'West' and 'East' overlap by 20 sq ft",
    ]);
    // Corners 2 and 3 the wrong way round: a bow tie.
    const [a, b, c, d] = box(`6'`, `0'`, `6'`, `10'`) as [Point, Point, Point, Point];
    const tie = [
      { name: 'West', form: flat(`8'`), over: box(`0'`, `0'`, `6'`, `10'`) },
      { name: 'East', form: flat(`9'`), over: [a, c, b, d] },
    ];
    expect(told(problemsOf({ ...square, ceiling: tie }))[0]).toBe(
      `ceiling-part-crosses at ceiling.1.over: the outline of ceiling part 'East' crosses itself: corners 1 to 2 and 3 to 4 meet x 3'-0", y 5'-0" from its south-west`,
    );
  });
});

describe('openings', () => {
  const shed = { form: 'shed', low: headings.west, plate: len(`6'`), pitch: pitch('6/12') } as const;
  const cases: [string, Parameters<typeof opening>, string][] = [
    [
      'wider than its wall',
      ['D1', 'door', 'east', `0'`, `11' x 7'`],
      `opening-wider-than-wall at openings.0.width: D1 is 11'-0" wide, wider than its wall 'east' of 10'-0"`,
    ],
    [
      'past the end',
      ['D1', 'door', 'east', `8'`, `3' x 7'`],
      `opening-past-wall at openings.0.at: D1 runs 1'-0" past the right end of wall 'east'`,
    ],
    [
      'too tall',
      ['D1', 'door', 'east', `1'`, `3' x 8'-0 1/16"`],
      `opening-above-ceiling at openings.0.height: the head of D1 is 8'-0 1/16" above the floor, 1/16" over the ceiling there at 8'-0"`,
    ],
  ];
  test.each(cases)('%s', (_, parts, message) => {
    expect(told(problemsOf({ ...square, openings: [opening(...parts)] }))).toEqual([message]);
  });

  test('as high as the ceiling is no problem', () => {
    expect(problemsOf({ ...square, openings: [opening('D1', 'cased', 'east', `0'`, `10' x 8'`)] })).toEqual([]);
  });

  test('a door under a rake must fit at its low side; a window need not', () => {
    // North wall from the left (west): top = 6 + x / 2. At x = 2 it is 7'.
    const door = opening('D1', 'door', 'north', `2'`, `3' x 7'-6"`);
    expect(told(problemsOf({ ...square, ceiling: shed, openings: [door] }))).toEqual([
      `opening-above-ceiling at openings.0.height: the head of D1 is 7'-6" above the floor, 6" over the ceiling there at 7'-0"`,
    ]);
    expect(problemsOf({ ...square, ceiling: shed, openings: [{ ...door, kind: 'window' }] })).toEqual([]);
  });

  test('overlapping another', () => {
    const openings = [
      opening('W1', 'window', 'north', `1'`, `4' x 3'`, { sill: len(`3'`) }),
      opening('W2', 'window', 'north', `4'-6"`, `4' x 3'`, { sill: len(`2'`) }),
      opening('W3', 'window', 'north', `1'`, `3' x 1'`, { sill: len(`6'`) }),
    ];
    expect(told(problemsOf({ ...square, openings }))).toEqual([
      `openings-overlap at openings.1.at: W2 overlaps W1 in wall 'north' by 6"`,
    ]);
  });
});

describe('features', () => {
  const breast = {
    kind: 'chimney-breast',
    id: 'breast',
    name: 'Breast',
    wall: 'north',
    at: `2'`,
    width: `6'`,
    depth: `2'`,
  };
  const cases: [string, Record<string, unknown>, string][] = [
    [
      'wider than its wall',
      { ...breast, width: `13'` },
      `feature-wider-than-wall at features.0.width: Breast is 13'-0" wide, wider than its wall 'north' of 12'-0"`,
    ],
    [
      'past its wall',
      { ...breast, at: `8'` },
      `feature-past-wall at features.0.at: Breast runs 2'-0" past the right end of wall 'north'`,
    ],
    [
      'no such wall',
      { ...breast, wall: 'up' },
      "feature-wall-unknown at features.0.wall: Breast is on wall 'up', which the room does not have",
    ],
    [
      'deeper than the room',
      { ...breast, depth: `11'` },
      'feature-outside-room at features.0: 6 sq ft of the 66 sq ft that Breast stands on lie outside the room',
    ],
    [
      'above the ceiling',
      { ...breast, height: `9'` },
      `feature-above-ceiling at features.0.height: Breast is 9'-0" high, but the ceiling above it comes down to 8'-0"`,
    ],
    [
      'firebox too wide',
      { ...breast, firebox: { width: `7'`, height: `3'` } },
      `firebox-too-large at features.0.firebox.width: the firebox is 7'-0" wide, but Breast only 6'-0"`,
    ],
    [
      'stair through the wall',
      {
        kind: 'stair',
        id: 's',
        name: 'Stair',
        rise: `9'`,
        risers: 15,
        going: `10"`,
        width: `3'`,
        x: `0'`,
        y: `0'`,
        go: 'north',
      },
      'feature-outside-room at features.0: 5 sq ft of the 35 sq ft that Stair stands on lie outside the room',
    ],
    [
      'niche into the ceiling',
      {
        kind: 'niche',
        id: 'n',
        name: 'Niche',
        wall: 'east',
        at: `1'`,
        width: `1'`,
        height: `2'`,
        sill: `6'-6"`,
        depth: `4"`,
      },
      `feature-above-ceiling at features.0.height: Niche ends 8'-6" above the floor, but the ceiling there comes down to 8'-0"`,
    ],
  ];
  test.each(cases)('%s', (_, raw, message) => {
    expect(told(problemsOf({ ...square, features: [raw] }))).toEqual([message]);
  });
});
