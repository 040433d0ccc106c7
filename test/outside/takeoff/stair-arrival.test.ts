import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FeatureMeasure, RoomMeasure } from '../../../src/core/model/index.js';
import { arrivalOf, sideOfRail } from '../../../src/core/takeoff/railing/arrival.js';
import type { Stair } from '../../../src/core/feature/index.js';
import { feet, fromInches, type Length } from '../../../src/base/units/index.js';
import { measured } from '../../measure/measured.js';
import { flat, size } from '../../measure/room-record.js';

/** Where the rails of a stair end in the room above, by looking where a person would. No publication is behind it. In inches. */

const inches = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 4, max: most * 4 }).map((quarters) => quarters / 4);

describe('where a stair comes up', () => {
  const stair: Stair = {
    rise: fromInches(108),
    risers: 15,
    going: fromInches(10.5),
    width: fromInches(40),
    rails: 1,
    handrails: 0,
    x: 0 as Length,
    y: 0 as Length,
    go: 'north',
  };
  /** The side of the room above over which one comes in, going up that way; and where its left end lies. */
  const ways = {
    north: { side: 'south', at: (along: number): readonly [number, number] => [240 - along, 0] },
    south: { side: 'north', at: (along: number): readonly [number, number] => [along, 168] },
    east: { side: 'west', at: (along: number): readonly [number, number] => [0, along] },
    west: { side: 'east', at: (along: number): readonly [number, number] => [240, 168 - along] },
  } as const;
  type Way = keyof typeof ways;
  const places = fc.constantFrom(...(Object.keys(ways) as Way[]));

  const above = (side: string, edges: readonly (readonly [number, number])[]): RoomMeasure =>
    measured({
      shape: size(`20'`, `14'`, { [side]: 'hall' }),
      ceiling: flat(`9'`),
      features: edges.map(([at, run], index) => ({
        ...{ kind: 'drop-edge', id: `edge-${index}`, name: `Edge ${index}`, wall: side },
        ...{ at: `${at}"`, run: `${run}"`, drop: `9'` },
      })),
    });
  const hall = { room: 'hall', level: 'ground', measure: above('north', []) };
  const spot = ([x, y]: readonly [number, number]): unknown => ({ x: fromInches(x), y: fromInches(y) });

  test('in the one gap between edges that is as wide as it, to three inches, its rails at the ends', () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 6, max: 100 }), inches(30, 50), fc.boolean(), (go, at, gap, named) => {
        const { side, at: placeAt } = ways[go];
        const long = side === 'south' || side === 'north' ? 240 : 168;
        const measure = above(side, [
          [0, at],
          [at + gap, long - at - gap],
        ]);
        const landing = { room: 'loft', level: 'upper', measure };
        const found = arrivalOf({ ...stair, go, ...(named && { to: 'loft' }) }, hall, [hall, landing]);
        const fits = Math.abs(gap - 40) <= 3;
        // Who faces the wall from within the room has at their right what is at the left of who comes up.
        expect(found).toEqual(
          fits ? { room: 'loft', left: spot(placeAt(at + gap)), right: spot(placeAt(at)) } : undefined,
        );
      }),
      { numRuns: 60 },
    );
  });

  test('not on its own level, not in a room that it does not name, not over another side, not where two gaps fit', () => {
    const one = {
      room: 'loft',
      level: 'upper',
      measure: above('south', [
        [0, 60],
        [100, 140],
      ]),
    };
    const two = {
      room: 'loft',
      level: 'upper',
      measure: above('south', [
        [40, 60],
        [140, 60],
      ]),
    };
    expect(arrivalOf(stair, hall, [one])?.room).toBe('loft');
    expect(arrivalOf(stair, hall, [{ ...one, level: 'ground' }])).toBeUndefined();
    expect(arrivalOf({ ...stair, to: 'attic' }, hall, [one])).toBeUndefined();
    expect(arrivalOf({ ...stair, to: 'loft' }, hall, [{ ...one, level: 'ground' }])?.room).toBe('loft');
    for (const go of ['south', 'east', 'west', 'north-east'] as const)
      expect(arrivalOf({ ...stair, go }, hall, [one])).toBeUndefined();
    expect(arrivalOf(stair, hall, [two])).toBeUndefined();
  });

  test('a rail to the left of the middle of the flight is at the left of who goes up', () => {
    const corners = [
      [100, 50],
      [140, 50],
      [140, 200],
      [100, 200],
    ].map(([x = 0, y = 0]) => ({ x: fromInches(x), y: fromInches(y) }));
    const flight = { footprint: corners } as unknown as FeatureMeasure;
    const sides = (['north', 'south', 'east', 'west'] as const).map((go) =>
      [
        [104, 125],
        [136, 125],
        [120, 190],
        [120, 60],
      ].map(([x = 0, y = 0]) => sideOfRail({ ...stair, go }, flight, { x: fromInches(x), y: fromInches(y) })),
    );
    expect(sides.map(([west, east]) => [west, east]).slice(0, 2)).toEqual([
      ['left', 'right'],
      ['right', 'left'],
    ]);
    expect(sides.map(([, , north, south]) => [north, south]).slice(2)).toEqual([
      ['left', 'right'],
      ['right', 'left'],
    ]);
    expect(sideOfRail(stair, {} as unknown as FeatureMeasure, { x: 0 as Length, y: 0 as Length })).toBeUndefined();
  });

  test('the rail of a flight is as long as its slope: by Pythagoras over the whole of it', () => {
    const measure = measured({
      shape: size(`30'`, `14'`),
      ceiling: flat(`12'`),
      features: [
        {
          kind: 'stair',
          id: 'stair',
          name: 'Stair',
          rise: `9'`,
          risers: 15,
          going: `10 1/2"`,
          width: `3'-4"`,
          x: `2'`,
          y: `4'`,
          go: 'east',
        },
      ],
    });
    const rail = measure.features[0]?.runs[0];
    expect(feet(rail?.length ?? (0 as Length)) * 12).toBeCloseTo(Math.hypot((108 * 14) / 15, 10.5 * 14), 3);
  });
});
