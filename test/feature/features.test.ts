import { headings } from '../../src/base/geometry/index.js';
import { describe, expect, test } from 'vitest';
import type { FeatureMeasure, RoomMeasure } from '../../src/core/model/index.js';
import { featureKinds } from '../../src/core/feature/index.js';
import { feet } from '../../src/base/units/index.js';
import { measured, regionArea, wall } from '../measure/measured.js';
import { flat, len, pitch, size } from '../measure/room-record.js';

function only(measure: RoomMeasure): FeatureMeasure {
  const [first] = measure.features;
  if (!first) throw new Error('no feature');
  return first;
}

function faces({ faces: all }: FeatureMeasure): Record<string, number> {
  return Object.fromEntries(all.map(({ id, net }) => [id, Math.round(net * 1e6) / 1e6]));
}

function fact({ facts }: FeatureMeasure, label: string): string | undefined {
  return facts.find((one) => one.label === label)?.text;
}

const hall = { shape: size(`24'`, `18'`), ceiling: flat(`16'`) };

describe('chimney breast', () => {
  const raw = {
    kind: 'chimney-breast',
    id: 'breast',
    name: 'Chimney breast',
    wall: 'north',
    at: `8'`,
    width: `7'`,
    depth: `2'`,
    firebox: { width: `3'-6"`, height: `3'`, sill: `1'` },
    hearth: { width: `7'`, depth: `1'-8"`, thickness: `2"`, height: `1'` },
  };

  const plain = { ...raw, firebox: undefined, hearth: undefined };

  test('to a flat ceiling of 16 ft', () => {
    const measure = measured({ ...hall, features: [raw] });
    const breast = only(measure);
    expect(faces(breast)).toEqual({
      'breast/front': 94.5, // 7 × 16 − 3.5 × 3 − 7 × 1 behind the raised hearth
      'breast/left': 32, // 2 × 16
      'breast/right': 32,
      'breast/hearth': 11.666667, // 7 × 1 2/3
      'breast/hearth-riser': 8.611111, // (7 + 2 × 1 2/3) × 10 in. below the slab
    });
    expect(breast.runs.map(({ id, length, pieces }) => [id, feet(length), pieces.length])).toEqual([
      ['breast/corners', 30, 2], // from the top of the hearth
      ['breast/hearth-edge', 7 + 2 * (20 / 12), 3],
      ['breast/hearth-corners', feet(len(`1'-8"`)), 2],
    ]);
    expect(wall(measure, 'north').net).toBeCloseTo(24 * 16 - 7 * 16, 9);
    expect(measure.floor.net).toBeCloseTo(432 - 14 - 7 * (20 / 12), 9);
    expect(measure.ceiling.net).toBeCloseTo(432 - 14, 9);
    expect(measure.floor.regions[0]?.outline).toHaveLength(8); // a notch, not a hole
    expect(measure.volume).toBeCloseTo(432 * 16, 6); // of the room, breast included
  });

  test('a hearth on the floor has no riser, and a narrow one leaves the corners whole', () => {
    const flush = only(measured({ ...hall, features: [{ ...raw, hearth: { ...raw.hearth, height: `2"` } }] }));
    expect(faces(flush)).toMatchObject({ 'breast/front': 101.5 });
    expect(faces(flush)).not.toHaveProperty('breast/hearth-riser');
    const narrow = only(measured({ ...hall, features: [{ ...raw, hearth: { ...raw.hearth, width: `5'` } }] }));
    expect(faces(narrow)).toMatchObject({ 'breast/front': 112 - 10.5 - 5 });
    expect(feet(narrow.runs[0]?.length ?? len(`0"`))).toBe(32);
  });

  test('of 10 ft leaves the ceiling alone and the wall above it', () => {
    const measure = measured({ ...hall, features: [{ ...raw, height: `10'` }] });
    expect(faces(only(measure))).toMatchObject({ 'breast/front': 52.5, 'breast/left': 20 });
    expect(measure.ceiling.net).toBeCloseTo(432, 9);
    expect(wall(measure, 'north').net).toBeCloseTo(384 - 70, 9);
  });

  test('its top follows a gable: on the east wall under the ridge', () => {
    // East wall seen from inside: left is north; y from 12.5 down to 5.5, ridge at y = 9, ceiling 9 + 8/12 × (9 − |y − 9|).
    const ceiling = { form: 'gable', ridge: headings.east, plate: len(`9'`), pitch: pitch('8/12') } as const;
    const measure = measured({
      shape: size(`24'`, `18'`),
      ceiling,
      features: [{ ...plain, wall: 'east', at: `5'-6"` }],
    });
    const end = 9 + (8 / 12) * 5.5; // 12.6667 at both ends, 15 in the middle
    const breast = only(measure);
    expect(breast.faces[0]?.net).toBeCloseTo(7 * ((end + 15) / 2), 9);
    expect(breast.faces[1]?.net).toBeCloseTo(2 * end, 9);
    expect(feet(breast.runs[0]?.length ?? len(`0"`))).toBeCloseTo(2 * end, 7);
    expect(wall(measure, 'east').net).toBeCloseTo(216 - 7 * ((end + 15) / 2), 6);
    expect(measure.ceiling.net).toBeCloseTo((432 - 14) * Math.sqrt(13 / 9), 6);
    expect(regionArea(measure.ceiling.regions)).toBeCloseTo(measure.ceiling.net, 5);
  });

  test('its sides follow a rake', () => {
    // North wall of a shed that is low in the north: 9 at the wall, 9 + 2 × 6/12 = 10 at the front.
    const ceiling = { form: 'shed', low: headings.north, plate: len(`9'`), pitch: pitch('6/12') } as const;
    const breast = only(measured({ shape: size(`24'`, `18'`), ceiling, features: [plain] }));
    expect(faces(breast)).toEqual({ 'breast/front': 70, 'breast/left': 19, 'breast/right': 19 });
    expect(breast.covers).toEqual([{ wall: 'north', from: len(`8'`), to: len(`15'`), height: len(`9'`) }]);
    // Seen from the left, the wall is at the left hand: the high end of the face is at its right.
    expect(breast.faces[1]?.regions[0]?.outline).toContainEqual({ x: len(`2'`), y: len(`10'`) });
    expect(breast.faces[2]?.regions[0]?.outline).toContainEqual({ x: len(`0"`), y: len(`10'`) });
  });
});

test('drop edge: one run of rail and the fall', () => {
  const raw = {
    kind: 'drop-edge',
    id: 'edge',
    name: 'Gallery edge',
    wall: 'south',
    at: `0'`,
    run: `14'`,
    drop: `10'-6"`,
  };
  const edge = only(measured({ shape: size(`14'`, `18'`, { south: 'foyer' }), ceiling: flat(`8'`), features: [raw] }));
  expect(edge).toMatchObject({
    drop: len(`10'-6"`),
    runs: [{ id: 'edge/rail', length: len(`14'`), pieces: [len(`14'`)] }],
  });
});

describe('headroom over a stair', () => {
  // 14 risers of 7" over goings of 10" from x = 3' to the east, under two ceilings: flat 8' up to x = 6', from there a well.
  const flight = {
    kind: 'stair',
    id: 'stair',
    name: 'Stair',
    rise: '98"',
    risers: 14,
    going: '10"',
    width: `3'`,
    go: 'east',
  };
  const over = (lowTo: string, well: string): FeatureMeasure['headroom'] =>
    only(
      measured({
        shape: size(`20'`, `10'`),
        ceiling: [
          { name: 'Low', form: { form: 'flat', height: len(`8'`) }, over: strip(`0'`, lowTo), path: [] },
          { name: 'Well', form: { form: 'flat', height: len(well) }, over: strip(lowTo, `20'`), path: [] },
        ],
        features: [{ ...flight, x: `3'`, y: `4'` }],
      }),
    ).headroom;
  const strip = (from: string, to: string) =>
    [
      [from, `0'`],
      [to, `0'`],
      [to, `10'`],
      [from, `10'`],
    ].map(([x = '', y = '']) => ({ x: len(x), y: len(y) }));

  test('is least where the low ceiling ends: 30" along the nosings are 28" high, 68" below it', () => {
    const headroom = over(`5'-6"`, `20'`);
    expect(headroom?.height).toBeCloseTo(len('68"'), -3);
    expect(headroom?.along).toBeCloseTo(len('30"'), -3);
  });

  test('is least at the top where the well is low: 110" less 98"', () => {
    expect(over(`3'-6"`, '110"')?.height).toBeCloseTo(len('12"'), -3);
  });

  test('is not known where no hole is recorded that the flight could go up through', () => {
    expect(over(`19'`, `20'`)).toBeUndefined();
  });
});

test('stair: 10 ft 6 in. in 17 risers, going 10 1/2 in.', () => {
  const raw = {
    kind: 'stair',
    id: 'stair',
    name: 'Main stair',
    rise: `10'-6"`,
    risers: 17,
    going: `10 1/2"`,
    width: `3'-6"`,
    rails: 2,
    x: `4'`,
    y: `0'`,
    go: 'north',
  };
  const measure = measured({ ...hall, features: [raw] });
  const stair = only(measure);
  expect(stair.counts.map(({ id, count }) => [id, count])).toEqual([
    ['stair/treads', 16],
    ['stair/risers', 17],
  ]);
  // Riser 126 / 17 = 7.412 in.; 16 × hypot(7.412, 10.5) = 16 × 12.8525 in. = 17.1367 ft for each rail.
  expect(feet(stair.runs[0]?.length ?? len(`0"`))).toBeCloseTo((2 * 16 * Math.hypot(126 / 17, 10.5)) / 12, 7);
  expect(stair.runs[0]?.pieces).toHaveLength(2);
  expect(fact(stair, 'Riser')).toBe(`17 of 7 7/16"`);
  expect(fact(stair, 'Run')).toBe(`14'-0"`);
  expect(measure.floor.net).toBeCloseTo(432 - 49, 9); // 14 × 3.5
});

test('timber: four 8x12 of 19 ft', () => {
  const raw = {
    kind: 'timber',
    id: 'trusses',
    name: 'Trusses',
    count: 4,
    length: `19'`,
    width: `7 1/2"`,
    depth: `11 1/2"`,
    species: 'larch',
    density: '36 lb / cu ft',
  };
  const trusses = only(measured({ ...hall, features: [raw] }));
  expect(trusses.runs[0]).toMatchObject({
    id: 'trusses/length',
    length: len(`76'`),
    pieces: Array(4).fill(len(`19'`)),
  });
  expect(trusses.counts).toEqual([{ id: 'trusses/pieces', name: 'Pieces', count: 4 }]);
  expect(fact(trusses, 'Section, nominal')).toBe('8x12');
  expect(fact(trusses, 'Board feet')).toBe('608 bd ft'); // 8 × 12 × 19 / 12 = 152 each
  // What it weighs follows from the option as well: test/takeoff/timber.test.ts.
  expect(fact(trusses, 'Density')).toBe('36 lb / cu ft');
});

test('timber with a tenon at each end: pieces as they are ordered', () => {
  const raw = {
    kind: 'timber',
    id: 'posts',
    name: 'Posts',
    count: 3,
    length: `6'-6"`,
    width: `7 1/2"`,
    depth: `9 1/2"`,
    'end-allowances': [`4"`, `2 1/2"`],
    joinery: 'Tenons, pegged twice',
  };
  const posts = only(measured({ ...hall, features: [raw] }));
  // 6'-6" + 4" + 2 1/2" = 7'-0 1/2", three of them 21'-1 1/2"
  expect(posts.runs[0]).toMatchObject({ length: len(`21'-1 1/2"`), pieces: Array(3).fill(len(`7'-0 1/2"`)) });
  expect(posts.runs[0]?.why).toBe(`3 of 7'-0 1/2": 6'-6" clear, 4" and 2 1/2" at the ends`);
  expect(fact(posts, 'Joinery')).toBe('Tenons, pegged twice');
  expect(fact(posts, 'Board feet')).toBe('140.83 bd ft'); // 8 × 10 × 7.04167 / 12 = 46.944 each
});

test('a timber in millimeters keeps its real size', () => {
  const raw = { kind: 'timber', id: 'b', name: 'Beams', count: 2, length: '4.2 m', width: '150 mm', depth: '250 mm' };
  const beams = only(measured({ ...hall, features: [raw] }));
  expect(fact(beams, 'Section')).toBe('150 mm × 250 mm');
  expect(beams.facts.some(({ label }) => label === 'Section, nominal')).toBe(false);
  // 0.15 × 0.25 × 4.2 m = 0.1575 cu m each; 0.315 cu m at 423.776 board feet to a cubic meter
  expect(fact(beams, 'Board feet, real size')).toBe('133.49 bd ft');
});

test('niche: back, sides, and its opening off the wall', () => {
  const raw = {
    kind: 'niche',
    id: 'n',
    name: 'Shower niche',
    wall: 'east',
    at: `2'`,
    width: `1'-2"`,
    height: `1'-8"`,
    sill: `3'-6"`,
    depth: `3"`,
  };
  const measure = measured({ ...hall, features: [raw] });
  const opening = (14 * 20) / 144;
  expect(only(measure).faces.map(({ net }) => net)).toEqual([
    expect.closeTo(opening, 9),
    expect.closeTo((2 * 34 * 3) / 144, 9),
  ]);
  expect(wall(measure, 'east').net).toBeCloseTo(18 * 16 - opening, 9);
  expect(wall(measure, 'east').regions[0]?.holes).toHaveLength(1);
});

test('half wall: two faces, a cap, and the floor under it', () => {
  const raw = {
    kind: 'half-wall',
    id: 'pony',
    name: 'Half wall',
    x: `6'`,
    y: `5'`,
    go: 'east',
    run: `4'`,
    height: `3'-6"`,
    thickness: `4 1/2"`,
  };
  const measure = measured({ ...hall, features: [raw] });
  const pony = only(measure);
  expect(faces(pony)).toEqual({ 'pony/left': 14, 'pony/right': 14, 'pony/ends': 2.625 }); // 2 × 4 1/2" × 3'-6"
  expect(pony.runs[0]).toMatchObject({ id: 'pony/cap', length: len(`4'`) });
  expect(measure.floor.net).toBeCloseTo(432 - 4 * 0.375, 9);
});

test('half wall against a wall has one free end, and between two walls none', () => {
  const raw = { kind: 'half-wall', id: 'pony', name: 'Half wall', x: `0'`, y: `5'`, go: 'east' };
  const sizes = { height: `3'-6"`, thickness: `4 1/2"` };
  const one = only(measured({ ...hall, features: [{ ...raw, ...sizes, run: `4'` }] }));
  expect(faces(one)).toMatchObject({ 'pony/ends': 1.3125 });
  const none = only(measured({ ...hall, features: [{ ...raw, ...sizes, run: `24'` }] }));
  expect(faces(none)).toEqual({ 'pony/left': 84, 'pony/right': 84 });
  const openSide = { shape: size(`24'`, `18'`, { west: 'foyer' }), ceiling: flat(`16'`) };
  const open = only(measured({ ...openSide, features: [{ ...raw, ...sizes, run: `4'` }] }));
  expect(faces(open)).toMatchObject({ 'pony/ends': 2.625 });
});

test('built-in: front, top edge, and what it hides', () => {
  const raw = {
    kind: 'built-in',
    id: 'bench',
    name: 'Window seat',
    wall: 'west',
    at: `4'`,
    width: `6'`,
    depth: `1'-8"`,
    height: `1'-6"`,
  };
  const measure = measured({ ...hall, features: [raw] });
  expect(faces(only(measure))).toEqual({ 'bench/front': 9 });
  const [bench] = wall(measure, 'west').deductions;
  expect(bench).toMatchObject({ what: 'Window seat', of: 'bench', kind: 'feature', area: 9 });
  expect(bench?.hidden?.by).toBe('built-in');
  expect(regionArea(bench?.hidden?.pieces.map(({ region }) => region) ?? [])).toBeCloseTo(bench?.area ?? 0, 6);
  expect(measure.floor.net).toBeCloseTo(422, 9);
});

test('every kind is listed once, with a schema of its own name', () => {
  const names = featureKinds.map(({ kind }) => kind);
  expect(new Set(names).size).toBe(names.length);
  for (const { kind, schema } of featureKinds) {
    expect(schema).toMatchObject({ title: kind, properties: { kind: { const: kind } }, additionalProperties: false });
  }
});
