import { headings } from '../../src/base/geometry/index.js';
import { describe, expect, test } from 'vitest';
import { feet } from '../../src/base/units/index.js';
import { measured, regionArea, top, wall } from './measured.js';
import { box, flat, len, outline, pitch, point, size } from './room-record.js';

const gable = { form: 'gable', ridge: headings.east, plate: len(`9'`), pitch: pitch('8/12') } as const;

test("gable 8/12 over 24' x 18', plate 9'", () => {
  // Rise 9 × 8/12 = 6, ridge 15. Slope factor sqrt(1 + 4/9) = 1.2018504.
  const measure = measured({ shape: size(`24'`, `18'`), ceiling: gable });
  expect(measure.ceiling.net).toBeCloseTo(432 * Math.sqrt(13 / 9), 9);
  expect(measure.ceiling.planArea).toBeCloseTo(432, 9);
  expect(wall(measure, 'east').gross).toBeCloseTo(216, 9); // 18 × 9 + 18 × 6 / 2
  expect(wall(measure, 'north').gross).toBeCloseTo(216, 9); // 24 × 9
  expect(top(measure, 'east')).toEqual(['0 9', '9 15', '18 9']);
  expect(measure.volume).toBeCloseTo(5184, 9); // 432 × 9 + 24 × 54
  expect([feet(measure.lowest), feet(measure.highest)]).toEqual([9, 15]);
  expect(measure.ceiling.facets.map(({ name, slope, riseDirection }) => [name, slope, riseDirection])).toEqual([
    ['South slope', 8 / 12, 90],
    ['North slope', 8 / 12, 270],
  ]);
});

test('a facet unfolds to its true size: 24 along the eave, 9 × 1.20185 up the slope', () => {
  const [south] = measured({ shape: size(`24'`, `18'`), ceiling: gable }).ceiling.facets;
  const xs = south?.shape.outline.map(({ x }) => feet(x)) ?? [];
  const ys = south?.shape.outline.map(({ y }) => feet(y)) ?? [];
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(24, 8);
  expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(9 * Math.sqrt(13 / 9), 8);
  expect(south && regionArea([south.shape])).toBeCloseTo(south?.area ?? 0, 6);
});

test("the same gable cut flat at 13'", () => {
  // Slopes reach 13 after 4 / (8/12) = 6 ft: flat 24 × 6, slopes 2 × 24 × 6 × 1.20185; gable walls 162 + (18 + 6) / 2 × 4.
  const measure = measured({ shape: size(`24'`, `18'`), ceiling: { form: gable, cut: len(`13'`) } });
  expect(measure.ceiling.net).toBeCloseTo(144 + 288 * Math.sqrt(13 / 9), 9);
  expect(measure.ceiling.facets.map(({ name }) => name)).toEqual(['South slope', 'North slope', 'Flat']);
  expect(wall(measure, 'west').gross).toBeCloseTo(210, 9);
  expect(top(measure, 'west')).toEqual(['0 9', '6 13', '12 13', '18 9']);
  expect(measure.volume).toBeCloseTo(24 * 210, 9);
});

test('a gable by ridge height is the gable by pitch', () => {
  const byRidge = { form: 'gable', ridge: headings.east, plate: len(`9'`), ridgeHeight: len(`15'`) } as const;
  const [one, other] = [gable, byRidge].map((ceiling) => measured({ shape: size(`24'`, `18'`), ceiling }));
  expect(one?.volume).toBeCloseTo(other?.volume ?? 0, 9);
  expect(one?.ceiling.net).toBeCloseTo(other?.ceiling.net ?? 0, 9);
});

test("hip 6/12 over 20' x 12', plate 8'", () => {
  // Every slope has factor sqrt(1.25); ridge 3 ft up and 8 ft long: 8 × 12 × 3 / 2 and a pyramid of 12 × 12 × 3 / 3.
  const measure = measured({
    shape: size(`20'`, `12'`),
    ceiling: { form: 'hip', plate: len(`8'`), pitch: pitch('6/12') },
  });
  expect(measure.ceiling.net).toBeCloseTo(240 * Math.sqrt(1.25), 9);
  expect(measure.volume).toBeCloseTo(1920 + 144 + 144, 9);
  expect(measure.walls.map(({ gross }) => gross)).toEqual([160, 96, 160, 96]);
  expect(measure.ceiling.facets).toHaveLength(4);
});

test('a hip over a convex outline rises from every wall', () => {
  // A right triangle with legs 8 and 6: inscribed circle 2, so a 12/12 hip rises 2 ft; pyramid 24 × 2 / 3.
  const shape = outline([`0'`, `0'`], [`8'`, `0'`], [`0'`, `6'`]);
  const measure = measured({ shape, ceiling: { form: 'hip', plate: len(`8'`), pitch: pitch('12/12') } });
  expect(feet(measure.highest)).toBeCloseTo(10, 6);
  expect(measure.volume).toBeCloseTo(192 + 16, 6);
  expect(measure.ceiling.net).toBeCloseTo(24 * Math.SQRT2, 6);
});

test("headroom under a shed: 4' at the west wall, rising 3/12 over 16'", () => {
  // Height 5 at x = 4 and 7 at x = 12: 12 × 10 and 4 × 10.
  const measure = measured({
    shape: size(`16'`, `10'`),
    ceiling: { form: 'shed', low: headings.west, plate: len(`4'`), pitch: pitch('3/12') },
  });
  expect(measure.headroom.fiveFeet).toBeCloseTo(120, 9);
  expect(measure.headroom.sevenFeet).toBeCloseTo(40, 9);
  expect(feet(measure.highest)).toBeCloseTo(8, 9);
  expect(wall(measure, 'east').gross).toBeCloseTo(80, 9);
  expect(wall(measure, 'north').gross).toBeCloseTo(96, 9);
});

test('a shed that rises to the north-east', () => {
  // 10' square: the far corner lies 10·√2 along the diagonal; at 12/12 it is 8 + 14.142.
  const measure = measured({
    shape: size(`10'`, `10'`),
    ceiling: { form: 'shed', low: headings['south-west'], plate: len(`8'`), pitch: pitch('12/12') },
  });
  expect(feet(measure.highest)).toBeCloseTo(8 + 10 * Math.SQRT2, 8);
  expect(measure.volume).toBeCloseTo(100 * (8 + 5 * Math.SQRT2), 8);
  expect(measure.ceiling.facets[0]?.riseDirection).toBeCloseTo(45, 9);
});

describe('ceiling in parts', () => {
  // 20 × 10: the western 12 ft flat at 9', the rest flat at 8'.
  const parts = [
    { name: 'Main', form: flat(`9'`), over: box(`0'`, `0'`, `12'`, `10'`) },
    { name: 'Bay', form: flat(`8'`), over: box(`12'`, `0'`, `8'`, `10'`) },
  ];
  const measure = measured({ shape: size(`20'`, `10'`), ceiling: parts });

  test('walls step where the parts meet', () => {
    expect(top(measure, 'north')).toEqual(['0 9', '12 9', '12 8', '20 8']);
    expect(top(measure, 'south')).toEqual(['0 8', '8 8', '8 9', '20 9']);
    expect(wall(measure, 'north').gross).toBeCloseTo(172, 9); // 12 × 9 + 8 × 8
    expect(measure.volume).toBeCloseTo(1080 + 640, 9);
    expect(measure.ceiling.net).toBeCloseTo(200, 9);
    expect(measure.ceiling.facets.map(({ name }) => name)).toEqual(['Main: flat', 'Bay: flat']);
  });
});

describe('parts with other angles than right ones', () => {
  // 20 × 10, cut along the diagonal from the south-west to the north-east: flat 9' above it, and below it a shed that is
  // 7' at the south wall and rises 6/12.
  const corners = (...spots: [string, string][]) => spots.map(([x, y]) => point(x, y));
  const measure = measured({
    shape: size(`20'`, `10'`),
    ceiling: [
      { name: 'Flat', form: flat(`9'`), over: corners([`0'`, `0'`], [`0'`, `10'`], [`20'`, `10'`]) },
      {
        name: 'Shed',
        form: { form: 'shed', low: headings.south, plate: len(`7'`), pitch: pitch('6/12') },
        over: corners([`0'`, `0'`], [`20'`, `10'`], [`20'`, `0'`]),
      },
    ],
  });

  test('areas and volume: half flat, half sloped', () => {
    // Slope 6/12: factor √(1 + 1/4). Mean rise over the lower triangle: a third of 10', half as much up.
    expect(measure.ceiling.net).toBeCloseTo(100 + 100 * Math.sqrt(1.25), 9);
    expect(measure.volume).toBeCloseTo(900 + 100 * (7 + (10 / 3) * 0.5), 9);
  });

  test('walls under each part', () => {
    expect(top(measure, 'north')).toEqual(['0 9', '20 9']);
    expect(top(measure, 'west')).toEqual(['0 9', '10 9']);
    expect(top(measure, 'south')).toEqual(['0 7', '20 7']);
    // Facing east the left end is the north one, 7 + 10 / 2 = 12' high.
    expect(top(measure, 'east')).toEqual(['0 12', '10 7']);
    expect(wall(measure, 'east').gross).toBeCloseTo(95, 9);
  });
});

test('a concave room under a gable: each plane over what is below it, pieces apart', () => {
  // A U of 24 × 18 with an 8 × 12 bite from the south; ridge east-west at y = 9. South slope: two legs of 8 × 9;
  // the bite takes y 0 to 12, so the north slope is 24 × 9 less 8 × 3.
  const shape = outline(
    [`0'`, `18'`],
    [`24'`, `18'`],
    [`24'`, `0'`],
    [`16'`, `0'`],
    [`16'`, `12'`],
    [`8'`, `12'`],
    [`8'`, `0'`],
    [`0'`, `0'`],
  );
  const factor = Math.sqrt(13 / 9);
  const measure = measured({ shape, ceiling: gable });
  expect(measure.ceiling.facets.map(({ name, area }) => [name, Math.round(area * 1e6) / 1e6])).toEqual([
    ['South slope 1', Math.round(72 * factor * 1e6) / 1e6],
    ['South slope 2', Math.round(72 * factor * 1e6) / 1e6],
    ['North slope', Math.round(192 * factor * 1e6) / 1e6],
  ]);
  // w5 runs along y = 12 (height 9 + (18 − 12) × 8/12 = 13), w4 climbs over the ridge.
  expect(top(measure, 'w5')).toEqual(['0 13', '8 13']);
  expect(top(measure, 'w4')).toEqual(['0 9', '9 15', '12 13']);
});

test('a void that the ceiling has too comes off it by its sloped area', () => {
  const voids = [{ name: 'Shaft', corners: box(`2'`, `2'`, `3'`, `4'`), isOpenAbove: true }];
  const measure = measured({ shape: size(`24'`, `18'`), ceiling: gable, voids });
  expect(measure.ceiling.deductions[0]?.area).toBeCloseTo(12 * Math.sqrt(13 / 9), 9);
  expect(measure.ceiling.gross).toBeCloseTo(432 * Math.sqrt(13 / 9), 9);
});

describe('steps between parts of a ceiling', () => {
  const border = { name: 'Border', form: flat(`9'`), over: box(`0'`, `0'`, `2'`, `12'`) };
  const over = box(`2'`, `0'`, `8'`, `12'`);
  const steps = (ceiling: Parameters<typeof measured>[0]['ceiling']) =>
    measured({ shape: size(`10'`, `12'`), ceiling } as Parameters<typeof measured>[0]).steps?.map(
      ({ id, net }) => [id, Math.round(net * 1e6) / 1e6] as const,
    );

  test('one foot up along 12 ft, in neither ceiling nor walls', () => {
    const measure = measured({
      shape: size(`10'`, `12'`),
      ceiling: [border, { name: 'Tray', form: flat(`10'`), over }],
    });
    expect(measure.steps?.map(({ id, name, net }) => [id, name, net])).toEqual([
      ['step-border-tray', 'Step from border up to tray', 12],
    ]);
    expect(regionArea(measure.steps?.[0]?.regions ?? [])).toBeCloseTo(12, 6);
    expect(measure.ceiling.net).toBeCloseTo(120, 9);
    expect(wall(measure, 'south').gross).toBeCloseTo(2 * 9 + 8 * 10, 9);
  });

  test('parts of one height, or one part, have none', () => {
    expect(steps([border, { name: 'Rest', form: flat(`9'`), over }])).toBeUndefined();
    expect(steps(flat(`9'`))).toBeUndefined();
  });

  test('under a gable across the step the face is a triangle on a rectangle', () => {
    // Ridge east-west over 12 ft at 6/12: 10 ft at the plates, 13 in the middle; 12 × 1 + 12 × 3 / 2 above the border's 9.
    const form = { form: 'gable', ridge: headings.east, plate: len(`10'`), pitch: pitch('6/12') } as const;
    expect(steps([border, { name: 'Vault', form, over }])).toEqual([['step-border-vault', 30]]);
  });

  test('a slope that starts below its neighbour makes a step each way', () => {
    // Low in the south at 8 ft, 4/12 over 12 ft: 12 in the north, level with the border at 3 ft. 3 × 1 / 2 and 9 × 3 / 2.
    const form = { form: 'shed', low: headings.south, plate: len(`8'`), pitch: pitch('4/12') } as const;
    expect(steps([border, { name: 'Slope', form, over }])).toEqual([
      ['step-slope-border', 1.5],
      ['step-border-slope', 13.5],
    ]);
  });

  test('where the higher part is open above there is nothing to finish', () => {
    const well = { name: 'Well', form: flat(`18'`), over, openAbove: { height: len(`10'-4"`), to: 'gallery' } };
    expect(steps([border, well])).toEqual([['step-border-well', 16]]);
  });

  test('where the lower part rises past the height that is open there is nothing to finish from there on', () => {
    // The border is 12 ft long; the slope rises 3 in 12 from 9 ft in the south and is open's 10 ft after 4: 4 × 1 / 2.
    const form = { form: 'shed', low: headings.south, plate: len(`9'`), pitch: pitch('3/12') } as const;
    const well = { name: 'Well', form: flat(`18'`), over, openAbove: { height: len(`10'`), to: 'gallery' } };
    const low = { ...border, name: 'Slope', form };
    expect(steps([low, well])).toEqual([['step-slope-well', 2]]);
  });

  test('a tray in the middle of a room has four sides', () => {
    const part = (name: string, height: string, ...place: [string, string, string, string]) => ({
      name,
      form: flat(height),
      over: box(...place),
    });
    const measure = measured({
      shape: size(`10'`, `12'`),
      ceiling: [
        part('South', `9'`, `0'`, `0'`, `10'`, `2'`),
        part('North', `9'`, `0'`, `10'`, `10'`, `2'`),
        part('West', `9'`, `0'`, `2'`, `2'`, `8'`),
        part('East', `9'`, `8'`, `2'`, `2'`, `8'`),
        part('Tray', `9'-6"`, `2'`, `2'`, `6'`, `8'`),
      ],
    });
    // 6 + 6 + 8 + 8 ft, half a foot high.
    expect(measure.steps?.map(({ net }) => net)).toEqual([3, 3, 4, 4]);
  });
});

test('a ridge along the diagonal of a square, its eaves through the other two corners', () => {
  // 6 m square at 30°: the eaves lie 6·√2 apart, so the ridge is 3·√2 · tan 30° above the plate. All of it slopes alike: 36 / cos 30°.
  // Each half of the plan is a triangle with its point at the eave: on average it lies two thirds of the way up.
  const measure = measured({
    shape: size('6 m', '6 m'),
    ceiling: {
      form: 'gable',
      ridge: headings['north-east'],
      plate: len('2.2 m'),
      pitch: { rise: Math.tan(Math.PI / 6), run: 1 },
    },
  });
  const [squareMetre, cubicMetre, rise] = [1 / 0.3048 ** 2, 1 / 0.3048 ** 3, 3 * Math.SQRT2 * Math.tan(Math.PI / 6)];
  expect(measure.highest / 1e9).toBeCloseTo(2.2 + rise, 8);
  expect(measure.ceiling.net / squareMetre).toBeCloseTo(36 / Math.cos(Math.PI / 6), 8);
  expect(measure.volume / cubicMetre).toBeCloseTo(36 * (2.2 + (2 / 3) * rise), 8);
  // Each wall runs from an eave's corner up to the ridge's: 6 m at 2.2 m, and half of 6 by the rise above it.
  for (const wall of measure.walls) expect(wall.gross / squareMetre).toBeCloseTo(6 * 2.2 + 3 * rise, 8);
});

test('planes by three points each: the lowest of them', () => {
  // A ridge along y = 5' at 12' from plates at 7' and 9': as two sheds would have it.
  const point = (x: string, y: string, height: string) => ({ x: len(x), y: len(y), height: len(height) });
  const measure = measured({
    shape: size(`10'`, `10'`),
    ceiling: {
      form: 'planes',
      planes: [
        [point(`0'`, `0'`, `7'`), point(`10'`, `0'`, `7'`), point(`2'`, `5'`, `12'`)],
        [point(`0'`, `10'`, `9'`), point(`10'`, `10'`, `9'`), point(`2'`, `5'`, `12'`)],
      ],
    },
  });
  expect(feet(measure.highest)).toBeCloseTo(12, 8);
  expect(measure.volume).toBeCloseTo(10 * (5 * 9.5 + 5 * 10.5), 6);
  expect(measure.ceiling.net).toBeCloseTo(10 * (5 * Math.SQRT2 + Math.hypot(5, 3)), 6);
});
