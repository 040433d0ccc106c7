import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headings } from '../../src/base/geometry/index.js';
import { feet, fromFeet } from '../../src/base/units/index.js';
import { measured, problemsOf, regionArea, told, wall } from './measured.js';
import { box, flat, len, opening, pitch, room, size, walk } from './room-record.js';

const shape = size(`20'`, `14'`);
const ceiling = flat(`9'`);
const part = (name: string, height: string, over: ReturnType<typeof box>) => ({ name, height: len(height), over });

describe(`a room 20' × 14' with a pit 8' × 6' sunk 1'-2", clear of the walls`, () => {
  const pit = part('Pit', `-1'-2"`, box(`6'`, `4'`, `8'`, `6'`));
  const measure = measured({ shape, ceiling, floor: [pit] });

  test('has all of its floor, in two levels', () => {
    expect(measure.floor.net).toBeCloseTo(280, 9);
    expect(regionArea(measure.floor.regions)).toBeCloseTo(280, 6);
    expect(measure.floor.levels?.map(({ name, height, area }) => [name, feet(height), area])).toEqual([
      ['Pit', -14 / 12, 48],
      ['Floor', 0, 232],
    ]);
  });

  test('has a riser all around it: 28 lin ft, 14" high', () => {
    expect(measure.risers?.map(({ id, name }) => [id, name])).toEqual([
      ['riser-pit-floor', 'Riser from pit up to floor'],
    ]);
    const [riser] = measure.risers ?? [];
    expect(feet(riser?.run ?? len(`0'`))).toBeCloseTo(28, 6);
    expect(feet(riser?.rise ?? len(`0'`))).toBeCloseTo(14 / 12, 6);
    expect(riser?.net).toBeCloseTo((28 * 14) / 12, 6);
  });

  test('holds more air, and stands higher in the pit; its walls are what they were', () => {
    expect(measure.volume).toBeCloseTo(280 * 9 + (48 * 14) / 12, 6);
    expect([feet(measure.lowest), feet(measure.highest)]).toEqual([9, 9 + 14 / 12]);
    expect(wall(measure, 'north').gross).toBe(180);
    expect(wall(measure, 'north').foot).toBeUndefined();
  });
});

describe(`the same room with a dais 20' × 4' along the north wall, up 7"`, () => {
  const dais = part('Dais', `7"`, box(`0'`, `10'`, `20'`, `4'`));
  const measure = measured({ shape, ceiling, floor: [dais] });

  test('shows less wall above it', () => {
    // North: 20 × (9 − 7/12). East: 14 × 9 less 4 × 7/12.
    expect(wall(measure, 'north').gross).toBeCloseTo(20 * (9 - 7 / 12), 9);
    expect(wall(measure, 'east').gross).toBeCloseTo(126 - (4 * 7) / 12, 9);
    expect(wall(measure, 'south').gross).toBe(180);
    expect(regionArea(wall(measure, 'east').regions)).toBeCloseTo(126 - (4 * 7) / 12, 6);
    expect(measure.volume).toBeCloseTo(280 * 9 - (80 * 7) / 12, 6);
  });

  test('has one riser of 20 lin ft', () => {
    const [riser, ...more] = measure.risers ?? [];
    expect(more).toEqual([]);
    expect([riser?.id, feet(riser?.run ?? len(`0'`))]).toEqual(['riser-floor-dais', 20]);
  });

  test('a door there stands on it', () => {
    const door = opening('D1', 'door', 'north', `2'`, `3' x 7'`, { to: 'hall' });
    const den = room({ slug: 'den', shape, ceiling, floor: [dais], openings: [door] });
    const [found] = measured(den).openings;
    expect([found?.sill, found?.floor]).toEqual([len(`7"`), len(`7"`)]);
    // In the hall, whose floor is level, it stands on that.
    const seen = { by: 'seen', mark: 'D1', recordedIn: 'den', wall: 'south', at: len(`1'`), path: [] } as const;
    const [there] = measured(room({ slug: 'hall', shape, ceiling, openings: [seen] }), [den]).openings;
    expect([there?.sill, there?.floor]).toEqual([0, undefined]);
  });

  test('a door that the level room records stands on the dais of the other', () => {
    const hall = room({
      slug: 'hall',
      shape,
      ceiling,
      openings: [opening('D1', 'door', 'south', `1'`, `3' x 7'`, { to: 'den' })],
    });
    const seen = { by: 'seen', mark: 'D1', recordedIn: 'hall', wall: 'north', at: len(`2'`), path: [] } as const;
    const [there] = measured(room({ slug: 'den', shape, ceiling, floor: [dais], openings: [seen] }), [hall]).openings;
    expect([there?.sill, there?.floor]).toEqual([len(`7"`), len(`7"`)]);
  });

  test('a window does not begin below it', () => {
    const low = opening('W1', 'window', 'north', `2'`, `3' x 4'`, { sill: len(`6"`) });
    expect(told(problemsOf({ shape, ceiling, floor: [dais], openings: [low] }))).toEqual([
      `opening-below-floor at openings.0.sill: W1 begins 6" above the room's floor, but the floor before it is 7" above that`,
    ]);
  });
});

test(`a ramp 12' long at 1/12 beside a platform a foot high`, () => {
  // True length 12 × sqrt(1 + 1/144) = 12.041595; mean height 0.5 over 48 sq ft, 1 over 16.
  const ramp = {
    ...part('Ramp', `0"`, box(`0'`, `0'`, `12'`, `4'`)),
    ramp: { low: headings.west, pitch: pitch('1/12') },
  };
  const platform = part('Platform', `1'`, box(`12'`, `0'`, `4'`, `4'`));
  const measure = measured({ shape, ceiling, floor: [ramp, platform] });
  expect(measure.floor.net).toBeCloseTo(280 - 48 + 48 * Math.hypot(1, 1 / 12), 9);
  expect(measure.volume).toBeCloseTo(280 * 9 - 24 - 16, 6);
  expect(wall(measure, 'south').gross).toBeCloseTo(180 - 6 - 4, 9);
  // Beside the ramp a triangle 12 × 1; the platform has 4 to the north and 4 to the east.
  const faces = Object.fromEntries((measure.risers ?? []).map(({ id, net }) => [id, Math.round(net * 1e6) / 1e6]));
  expect(faces).toEqual({ 'riser-floor-ramp': 6, 'riser-floor-platform': 8 });
});

test('what is over, on and in it: parts lie in the room, once, and inside of themselves', () => {
  const outside = part('Pit', `-1'`, box(`16'`, `4'`, `8'`, `6'`));
  expect(told(problemsOf({ shape, ceiling, floor: [outside] }))).toEqual([
    `floor-part-outside at floor.0.over: 24 sq ft of the 48 sq ft of floor part 'Pit' lie outside the room`,
  ]);
  const twice = [part('One', `7"`, box(`0'`, `0'`, `8'`, `6'`)), part('Two', `1'`, box(`6'`, `0'`, `8'`, `6'`))];
  expect(told(problemsOf({ shape, ceiling, floor: twice }))).toEqual([
    `floor-parts-overlap at floor.1.over: floor parts 'One' and 'Two' overlap by 12 sq ft`,
  ]);
  const [a, b, c, d] = box(`0'`, `0'`, `8'`, `6'`);
  const crossed = { name: 'Bow tie', height: len(`7"`), over: [a, c, b, d].flatMap((corner) => corner ?? []) };
  expect(told(problemsOf({ shape, ceiling, floor: [crossed] }))[0]).toMatch(
    /^floor-part-crosses at floor\.0\.over: the outline of floor part 'Bow tie' crosses itself/u,
  );
});

test('whatever part is raised: floor stays, walls and risers and air add up', () => {
  const sizes = fc.record({
    x: fc.integer({ min: 0, max: 12 }),
    y: fc.integer({ min: 0, max: 8 }),
    width: fc.integer({ min: 1, max: 8 }),
    depth: fc.integer({ min: 1, max: 6 }),
    inches: fc.integer({ min: -30, max: 30 }).filter((each) => each !== 0),
  });
  fc.assert(
    fc.property(sizes, ({ x, y, width, depth, inches }) => {
      const over = box(`${x}'`, `${y}'`, `${width}'`, `${depth}'`);
      const measure = measured({ shape, ceiling, floor: [{ name: 'Part', height: fromFeet(inches / 12), over }] });
      const rise = inches / 12;
      expect(measure.floor.net).toBeCloseTo(280, 6);
      expect(measure.volume).toBeCloseTo(280 * 9 - width * depth * rise, 6);
      // Around the part stands a riser, or the wall is shorter by it or longer.
      const riser = (measure.risers ?? []).reduce((sum, { net }) => sum + net, 0);
      const walls = measure.walls.reduce((sum, { gross }) => sum + gross, 0);
      const atWalls = (68 * 9 - walls) / rise;
      expect(riser / Math.abs(rise) + atWalls).toBeCloseTo(2 * (width + depth), 5);
    }),
    { numRuns: 100 },
  );
});

test('a hole across the edge of a dais takes its stretch of the riser', () => {
  const dais = part('Dais', `7"`, box(`0'`, `10'`, `20'`, `4'`));
  const hole = { name: 'Well', corners: box(`4'`, `8'`, `3'`, `4'`) };
  const [riser] = measured({ shape, ceiling, floor: [dais], voids: [hole] }).risers ?? [];
  expect(feet(riser?.run ?? len(`0'`))).toBeCloseTo(17, 6);
  expect(riser?.net).toBeCloseTo((17 * 7) / 12, 6);
});

test(`a ramp over all of the room has its true length, also where its name is Floor`, () => {
  const ramp = {
    ...part('Floor', `0"`, box(`0'`, `0'`, `20'`, `14'`)),
    ramp: { low: headings.west, pitch: pitch('1/12') },
  };
  expect(measured({ shape, ceiling, floor: [ramp] }).floor.net).toBeCloseTo(280 * Math.hypot(1, 1 / 12), 6);
});

describe('a floor that rises through what is over it is told of', () => {
  test('under a level ceiling', () => {
    const high = part('Dais', `9'-2"`, box(`0'`, `10'`, `20'`, `4'`));
    expect(told(problemsOf({ shape, ceiling, floor: [high] }))).toEqual([
      `ceiling-below-floor at floor.0: floor part 'Dais' rises up to 2" through the ceiling, or a wall that leans, over it`,
    ]);
    expect(measured({ shape, ceiling, floor: [{ ...high, height: len(`9'`) }] }).volume).toBeCloseTo(200 * 9, 6);
  });

  test('where the ceiling itself falls below the floor', () => {
    const spot = (x: string, y: string, height: string) => ({ x: len(x), y: len(y), height: len(height) });
    const planes = [[spot(`0'`, `0'`, `-1'`), spot(`20'`, `0'`, `-1'`), spot(`0'`, `14'`, `9'`)]];
    expect(told(problemsOf({ shape, ceiling: { form: 'planes', planes } }))).toEqual([
      `ceiling-below-floor at ceiling.0: the ceiling comes down to 1'-0" under the floor`,
    ]);
  });

  test('before a wall that leans', () => {
    const leans = { by: len(`3'`), at: len(`6'`) };
    const leaning = walk(`north east 20'`, `east south 14'`, `south west 20'`, `west north 14'`);
    const attic = leaning.by === 'walk' && {
      ...leaning,
      walls: leaning.walls.map((one) => (one.name === 'north' ? { ...one, leans } : one)),
    };
    const dais = (depth: string) => [part('Dais', `7"`, box(`0'`, `10'`, `20'`, depth))];
    // 1" before the foot the wall is 2" high.
    expect(told(problemsOf({ shape: attic || shape, ceiling, floor: dais(`3'-11"`) }))).toEqual([
      `ceiling-below-floor at floor.0: floor part 'Dais' rises up to 5" through the ceiling, or a wall that leans, over it`,
    ]);
    expect(told(problemsOf({ shape: attic || shape, ceiling, floor: dais(`4'`) }))).toEqual([
      `wall-leans at floor.0.over: floor part 'Dais' reaches wall 'north', which leans: what is between them is not measured`,
    ]);
    expect(problemsOf({ shape: attic || shape, ceiling, floor: dais(`3'-8"`) })).toEqual([]);
  });
});

describe('what opens into a pit or a yard below', () => {
  const pit = [part('Pit', `-1'-2"`, box(`0'`, `10'`, `20'`, `4'`))];

  test('a door stands in the pit, and takes its part of the wall down to it', () => {
    const door = opening('D1', 'door', 'north', `2'`, `3' x 7'`, { to: 'hall' });
    const measure = measured({ shape, ceiling, floor: pit, openings: [door] });
    expect(measure.openings[0]?.areaOnWall).toBeCloseTo(21, 9);
    expect(wall(measure, 'north').net).toBeCloseTo(20 * (9 + 14 / 12) - 21, 9);
  });

  test('a window there may begin below the rest of the floor, and nowhere else', () => {
    const low = opening('W1', 'window', 'north', `2'`, `3' x 4'`, { sill: len(`-4"`) });
    expect(wall(measured({ shape, ceiling, floor: pit, openings: [low] }), 'north').net).toBeCloseTo(
      20 * (9 + 14 / 12) - 12,
      9,
    );
    expect(told(problemsOf({ shape, ceiling, openings: [low] }))).toEqual([
      `opening-below-floor at openings.0.sill: W1 begins 4" below the room's floor, but the floor before it is 0" above that`,
    ]);
  });
});

describe('a part of the floor in a bay', () => {
  /** 12' × 10'; the north wall is an arc of 2' rise over 12': radius 10', a segment of 16.350111 sq ft. */
  const bay = (bows: 'out' | 'in') => {
    const square = walk(`north east 12'`, `east south 10'`, `south west 12'`, `west north 10'`);
    if (square.by !== 'walk') throw new Error('no walk');
    const arc = { bows, rise: len(`2'`) };
    return { ...square, walls: square.walls.map((one) => (one.name === 'north' ? { ...one, arc } : one)) };
  };
  const segment = 50 * (2 * Math.asin(0.6) - 0.96);

  test('ends at the arc where it is recorded past it', () => {
    const dais = (depth: string) => [part('Dais', `7"`, box(`0'`, `7'`, `12'`, depth))];
    const { floor, risers } = measured({ shape: bay('out'), ceiling, floor: dais(`5'`) });
    const [out] = floor.levels ?? [];
    expect(out?.area).toBeCloseTo(36 + segment, 2);
    expect(risers).toHaveLength(1);
    const [into] = measured({ shape: bay('in'), ceiling, floor: dais(`3'`) }).floor.levels ?? [];
    expect(into?.area).toBeCloseTo(36 - segment, 6);
  });

  test('does not reach past the crown of the arc, nor past another wall', () => {
    const past = (x: string, depth: string) =>
      told(problemsOf({ shape: bay('out'), ceiling, floor: [part('Dais', `7"`, box(x, `7'`, `12'`, depth))] }));
    // Of 6' one is past the crown: 12 sq ft, less what the pieces that stand for the arc reach past it, 1/16" at most.
    expect(past(`0'`, `6'`)).toEqual([
      `floor-part-outside at floor.0.over: 11.97 sq ft of the 72 sq ft of floor part 'Dais' lie outside the room`,
    ]);
    expect(past(`1'`, `3'`)).toEqual([
      `floor-part-outside at floor.0.over: 3 sq ft of the 36 sq ft of floor part 'Dais' lie outside the room`,
    ]);
  });
});

test('a part that is taped 1/16" short of a wall has no riser there', () => {
  const dais = part('Dais', `7"`, box(`0'`, `10'`, `20'`, `3'-11 15/16"`));
  const measure = measured({ shape, ceiling, floor: [dais] });
  expect(measure.risers?.map(({ run }) => feet(run))).toEqual([20]);
});
