import { describe, expect, test } from 'vitest';
import type { Convention, Option, Selection } from '../../src/core/model/index.js';
import { resolvePlaces, takeOff, type Takeoff } from '../../src/core/takeoff/index.js';
import { fromFeet, type Area } from '../../src/base/units/index.js';
import { category, option, room, selection } from './room.js';

function take(
  at: string[],
  by: string,
  rule: Partial<Convention> = {},
  chosen: Option = option([{}]),
): readonly Takeoff[] {
  const chosenAt = selection(...at);
  const { places, unknown } = resolvePlaces(chosenAt, room);
  expect(unknown).toEqual([]);
  const { takeoffs, unsuited } = takeOff(
    { selection: chosenAt, category: category(by, rule), measure: room },
    places,
    chosen,
  );
  expect(unsuited).toEqual([]);
  return takeoffs;
}

const net = (takeoffs: readonly Takeoff[], part = 'main') => takeoffs.find((takeoff) => takeoff.part === part)?.net;
const waste10 = { amount: 10, scale: 2 };

describe('steps of the ceiling', () => {
  const step = {
    ...room.floor,
    id: 'step-border-tray',
    name: 'Step from border up to tray',
    gross: 12 as Area,
    net: 12 as Area,
    lines: [],
  };
  const stepped = { ...room, steps: [step] };
  const taken = (measure: typeof room, ...at: string[]) => {
    const { places, unknown } = resolvePlaces(selection(...at), measure);
    return { ids: places.map(({ id }) => id), unknown };
  };

  test('are places by themselves and together, and no part of the ceiling', () => {
    expect(taken(stepped, 'ceiling').ids).toEqual(['ceiling']);
    expect(taken(stepped, 'ceiling', 'ceiling-steps').ids).toEqual(['ceiling', 'step-border-tray']);
    expect(taken(stepped, 'step-border-tray', 'ceiling-steps').ids).toEqual(['step-border-tray']);
  });

  test('are unknown where there are none', () => {
    expect(taken(room, 'ceiling-steps', 'step-border-tray').unknown).toEqual(['ceiling-steps', 'step-border-tray']);
  });
});

describe('area', () => {
  // Standing walls: 14 × 9 + 16 × 9 + 14 × 9 = 396; the west side is open and has no wall.
  test('takes every opening off, or none, or those over a size', () => {
    expect(net(take(['walls'], 'area'))).toBe(396 - 36 - 54 - 21);
    expect(net(take(['walls'], 'area', { openings: { rule: 'none' } }))).toBe(396 - 54);
    expect(net(take(['walls'], 'area', { openings: { rule: 'over', area: 32 } }))).toBe(396 - 36 - 54);
  });

  test('an opening of just the limit stays in', () => {
    expect(net(take(['north'], 'area', { openings: { rule: 'over', area: 36 } }))).toBe(126);
    expect(net(take(['north'], 'area', { openings: { rule: 'over', area: 35.9 } }))).toBe(90);
  });

  test('says why each opening was taken or left', () => {
    const [takeoff] = take(['north', 'south'], 'area', { openings: { rule: 'over', area: 32 } });
    expect(takeoff?.places.flatMap((place) => place.adjustments)).toEqual([
      { what: 'Window W01', amount: -36, why: 'deducted: over 32 sq ft' },
      { what: 'Door D01', amount: 0, why: 'not deducted: not over 32 sq ft (21 sq ft)' },
    ]);
  });

  // The breast takes 54 of the east wall's 144 sq ft. What is built before it lies behind it.
  test('a feature hides a surface from what its category says, and by default from all', () => {
    expect(net(take(['east'], 'area'))).toBe(90);
    expect(net(take(['east'], 'area', { hiddenBy: ['chimney-breast'] }))).toBe(90);
    expect(net(take(['east'], 'area', { hiddenBy: ['built-in', 'niche'] }))).toBe(144);
    const [takeoff] = take(['east'], 'area', { hiddenBy: [] });
    expect(takeoff?.places[0]).toMatchObject({
      net: 144,
      adjustments: [{ amount: 0, why: 'not deducted: it stands before what lies behind it (54 sq ft)' }],
    });
  });

  test('base runs behind what does not hide it', () => {
    const base = (hiddenBy: string[]) => net(take(['east'], 'run', { hiddenBy }, option([{ unit: 'lin ft' }])));
    expect([base(['chimney-breast']), base([])]).toEqual([10, 16]);
  });

  test('coats multiply what is bought, and waste comes on top', () => {
    const [takeoff] = take(['ceiling'], 'area', { times: 2 }, option([{ waste: waste10 }]));
    expect(takeoff).toMatchObject({ net: 224, factors: [{ times: 2 }] });
    expect(takeoff?.required).toBeCloseTo(492.8, 9);
  });

  test('a feature by its name means its standing faces', () => {
    expect(net(take(['breast'], 'area'))).toBe(43.5 + 18 + 18);
    expect(net(take(['breast/hearth'], 'area'))).toBe(10);
  });

  // The north wall is 14 × 9 = 126, less its window of 36: 90 net.
  test.each([
    { what: 'smaller on its other side', there: [64], taken: [64], left: 26 },
    { what: 'as large there', there: [90], taken: [90], left: 0 },
    { what: 'larger there', there: [126], taken: [90], left: 0 },
    { what: 'counted in two rooms along it', there: [40, 30], taken: [40, 30], left: 20 },
    { what: 'counted in two rooms that reach past its end', there: [40, 60], taken: [40, 50], left: 0 },
  ])('a wall between rooms that is $what', ({ there, taken, left }) => {
    const at = selection('north', 'south');
    const counted = new Map([['north', there.map((area, index) => ({ room: `Room ${index}`, net: area }))]]);
    const { takeoffs } = takeOff(
      { selection: at, category: category('area'), measure: room, counted },
      resolvePlaces(at, room).places,
      option([{}]),
    );
    const [north, south] = takeoffs[0]?.places ?? [];
    expect(north?.adjustments.slice(1).map(({ what, amount }) => [what, amount])).toEqual(
      taken.map((amount, index) => [`Counted from the Room ${index} side`, -amount]),
    );
    // The south wall, 126 less a door of 21, is shared with nobody.
    expect([north?.net, south?.net, takeoffs[0]?.net]).toEqual([left, 105, left + 105]);
  });

  test('a place named twice counts once', () =>
    expect(net(take(['north', 'walls'], 'area', { openings: { rule: 'none' } }))).toBe(342));
});

describe('run', () => {
  // 14 + (16 − 6 breast) + (14 − 3 − 2.5 doors); the open side has no base.
  test('base runs along standing walls, past what reaches the floor', () =>
    expect(net(take(['base'], 'run', {}, option([{ unit: 'lin ft' }])))).toBe(32.5));

  const lineal = option([{ unit: 'lin ft' }]);
  const along = (at: string[], except: Selection['except'] = [], rule: Partial<Convention> = {}) => {
    const chosenAt = { ...selection(...at), except };
    const { places } = resolvePlaces(chosenAt, room);
    const from = { selection: chosenAt, category: category('run', rule), measure: room };
    return takeOff(from, places, lineal).takeoffs[0];
  };

  test('base at named walls stops where base at all of them does', () => {
    expect(along(['north', 'east', 'south'])?.net).toBe(32.5);
    expect(along(['south'])?.places[0]?.adjustments).toEqual([
      { what: 'D01', amount: -3, why: 'opening down to the floor' },
      { what: 'D02', amount: -2.5, why: 'opening down to the floor' },
    ]);
    expect(along(['south'], [], { along: 'ceiling' })?.net).toBe(14);
  });

  test('what hangs above the floor shortens no base', () => {
    const [breast] = room.features;
    if (!breast) throw new Error('the fixture has a breast');
    const niche = {
      ...breast,
      covers: [{ wall: 'north', from: fromFeet(1), to: fromFeet(3), sill: fromFeet(3), height: fromFeet(5) }],
    };
    const measure = { ...room, features: [niche] };
    const at = selection('north');
    const { takeoffs } = takeOff(
      { selection: at, category: category('run'), measure },
      resolvePlaces(at, measure).places,
      lineal,
    );
    expect(takeoffs[0]?.net).toBe(14);
  });

  test('base follows the floor: up a ramp, and stops at a door that stands on a dais', () => {
    const door = {
      ...room.openings.find(({ mark }) => mark === 'D01'),
      wall: 'south',
      at: fromFeet(9),
      sill: fromFeet(0.5),
      floor: fromFeet(0.5),
    };
    // Level for 2', a ramp 8' long and 6" high, level for 4': 2 + sqrt(64.25) + 4, less a door of 3'.
    const foot = [
      [0, 0],
      [2, 0],
      [10, 0.5],
      [14, 0.5],
    ].map(([along = 0, height = 0]) => ({ along: fromFeet(along), height: fromFeet(height) }));
    const walls = room.walls.map((one) => (one.id === 'south' ? { ...one, foot } : one));
    const measure = { ...room, walls, openings: [door as (typeof room.openings)[number]] };
    const at = selection('south');
    const from = { selection: at, category: category('run'), measure };
    const { takeoffs } = takeOff(from, resolvePlaces(at, measure).places, lineal);
    expect(takeoffs[0]?.net).toBeCloseTo(6 + Math.sqrt(64.25) - 3, 6);
  });

  test('a nosing runs along the risers of the floor', () => {
    const surface = { gross: 4 as Area, deductions: [], net: 4 as Area, regions: [] };
    const riser = {
      id: 'riser-floor-dais',
      name: 'Riser',
      ...surface,
      run: fromFeet(8),
      rise: fromFeet(0.5),
      lines: [],
    };
    const measure = { ...room, risers: [riser] };
    const at = selection('risers');
    const { places } = resolvePlaces(at, measure);
    const of = (by: 'run' | 'area') =>
      takeOff(
        { selection: at, category: category(by), measure },
        places,
        by === 'run' ? lineal : option([{ unit: 'sq ft' }]),
      ).takeoffs[0];
    expect([of('run')?.net, of('area')?.net]).toEqual([8, 4]);
  });

  test('walls and stretches can be left out', () => {
    expect(along(['base'], [{ place: 'south' }])?.net).toBe(24);
    const stretch = { place: 'north', from: fromFeet(4), to: fromFeet(7) };
    expect(along(['base'], [{ place: 'south' }, stretch])?.net).toBe(21);
    expect(along(['north'], [stretch])?.places[0]?.adjustments).toEqual([
      { what: 'Left out', amount: -3, why: 'nothing runs here' },
    ]);
    // 0' to 3' of the south wall, where one door takes 2' to 5' and another 2'-6": 5 + 2.5 are gone of 14.
    expect(along(['south'], [{ place: 'south', from: fromFeet(0), to: fromFeet(3) }])?.net).toBe(6.5);
  });

  test('what is left out of an area is no place of it', () => {
    const at = { ...selection('walls'), except: [{ place: 'east' }] };
    expect(resolvePlaces(at, room).places.map(({ id }) => id)).toEqual(['north', 'south']);
  });

  test('casing is two legs and a head that runs past them; a window has four sides', () => {
    const casing = option([{ unit: 'lin ft' }], {
      face: { text: '3"', value: { kind: 'length', length: fromFeet(0.25) } },
    });
    expect(net(take(['D01'], 'run', {}, casing))).toBe(7 + 7 + 3 + 0.5);
    expect(net(take(['W01'], 'run', {}, casing))).toBe(6 + 6 + 6 + 6 + 1);
    expect(net(take(['doors'], 'run', {}, option([{ unit: 'lin ft' }])))).toBe(17 + 16.5);
  });
});

test('each: a door between two rooms is counted in the room that records it', () => {
  const [takeoff] = take(['doors'], 'each', {}, option([{ unit: 'each' }]));
  expect(takeoff).toMatchObject({ gross: 2, net: 1, required: 1 });
});

describe('stone', () => {
  const parts = [{ part: 'flats' }, { part: 'corners', unit: 'lin ft' as const }];
  const covers = (number: number) =>
    option(parts, { 'corner-covers': { text: '', value: { kind: 'number', number } } });

  test('flats are less by what the corners cover, by the figure of the product', () => {
    const half = take(['breast'], 'stone', {}, covers(0.5));
    expect([net(half, 'flats'), net(half, 'corners')]).toEqual([79.5 - 9, 18]);
    expect(net(take(['breast'], 'stone', {}, covers(0.75)), 'flats')).toBe(79.5 - 13.5);
  });

  test('what is covered is the faces, whatever the corners take of the flats', () => {
    const covered = (by: number) => take(['breast'], 'stone', {}, covers(by))[0]?.covered;
    expect([covered(0.5), covered(0.75), covered(10)]).toEqual([79.5, 79.5, 79.5]);
    expect(take(['breast'], 'stone', {}, option([{ part: 'flats' }]))[0]?.covered).toBeUndefined();
  });

  test('the riser of a hearth is named apart, with corners of its own', () => {
    const [breast] = room.features;
    if (!breast) throw new Error('the fixture has a breast');
    const face = breast.faces[3];
    if (!face) throw new Error('and a hearth');
    const riser = { ...face, id: 'breast/hearth-riser', gross: 8 as Area, net: 8 as Area };
    const corners = { ...breast.runs[0], id: 'breast/hearth-corners', name: '', length: fromFeet(2), pieces: [] };
    const raised = { ...breast, faces: [...breast.faces, riser], runs: [...breast.runs, corners] };
    const measure = { ...room, features: [raised] };
    const of = (...at: string[]) => {
      const { places } = resolvePlaces(selection(...at), measure);
      return takeOff({ selection: selection(...at), category: category('stone'), measure }, places, covers(0.5))
        .takeoffs;
    };
    expect([net(of('breast'), 'flats'), net(of('breast'), 'corners')]).toEqual([79.5 - 9, 18]);
    const both = of('breast', 'breast/hearth-riser');
    expect([net(both, 'flats'), net(both, 'corners')]).toEqual([79.5 - 9 + 8 - 1, 20]);
  });

  test('a stone sold without corner pieces covers it all with flats', () => {
    const flats = take(['breast'], 'stone', {}, option([{ part: 'flats' }]));
    expect([flats.length, net(flats, 'flats')]).toEqual([1, 79.5]);
  });
});

test('railing: posts at both ends and no further apart than the spacing', () => {
  const rail = (feet: number) =>
    option(
      [
        { part: 'rail', unit: 'lin ft' },
        { part: 'post', unit: 'each' },
      ],
      { 'post-spacing': { text: '', value: { kind: 'length', length: fromFeet(feet) } } },
    );
  const posts = (feet: number) => net(take(['stair'], 'railing', {}, rail(feet)), 'post');
  expect(net(take(['stair'], 'railing', {}, rail(6)), 'rail')).toBe(15.5);
  expect([posts(16), posts(15.5), posts(8), posts(5)]).toEqual([2, 2, 3, 5]);
});

test('stair: treads and risers', () => {
  const takeoffs = take(
    ['stair'],
    'stair',
    {},
    option([
      { part: 'tread', unit: 'each' },
      { part: 'riser', unit: 'each' },
    ]),
  );
  expect([net(takeoffs, 'tread'), net(takeoffs, 'riser')]).toEqual([16, 17]);
});

test('places that a convention cannot measure are named, and so are words that name nothing', () => {
  const at = selection('ceiling', 'trusses', 'west');
  const { places, unknown } = resolvePlaces(at, room);
  expect(unknown).toEqual(['trusses', 'west']);
  const { unsuited } = takeOff({ selection: at, category: category('each'), measure: room }, places, option([{}]));
  expect(unsuited.map((place) => place.id)).toEqual(['ceiling']);
});
