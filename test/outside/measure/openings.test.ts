import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headings } from '../../../src/base/geometry/index.js';
import { feet, fromFeet, printLength, type Length } from '../../../src/base/units/index.js';
import type { CeilingForm, OpeningShape, OwnOpening, Room } from '../../../src/core/model/index.js';
import { measured, problemsOf } from '../../measure/measured.js';
import { opening, room, size } from '../../measure/room-record.js';
import { heightOf, integral, rectangle, type Spot } from './second-way/plan.js';

/** Openings in the walls of plain rooms by a second way: walls are walked along, and heights are asked where one stands. No publication is
 *  behind it. What does not fit is told with the figure by which it does not. */

const [wide, deep] = [20, 14];
const corners = rectangle(0, 0, wide, deep);
/** From the left end as one faces it from within. */
const walls = {
  north: { run: wide, at: (along: number): Spot => ({ x: along, y: deep }) },
  east: { run: deep, at: (along: number): Spot => ({ x: wide, y: deep - along }) },
  south: { run: wide, at: (along: number): Spot => ({ x: wide - along, y: 0 }) },
  west: { run: deep, at: (along: number): Spot => ({ x: 0, y: along }) },
};
type Wall = keyof typeof walls;

const inches = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 4, max: most * 4 }).map((quarters) => quarters / 48);
const names = fc.constantFrom(...(Object.keys(walls) as Wall[]));
const shape = size(`20'`, `14'`);

/** Straight along every wall, so that the least and the greatest height are at its ends. */
const sheds = fc
  .record({
    low: fc.constantFrom(headings.north, headings.east, headings.south, headings.west),
    plate: inches(84, 110),
    rise: fc.constantFrom(1, 3, 6),
  })
  .map(({ low, plate, rise }): CeilingForm => ({
    form: 'shed',
    low,
    plate: fromFeet(plate),
    pitch: { rise, run: 12 },
  }));
const gables = fc
  .record({
    ridge: fc.constantFrom(headings.north, headings.east),
    plate: inches(72, 100),
    rise: fc.constantFrom(4, 8, 12),
  })
  .map(({ ridge, plate, rise }): CeilingForm => ({
    form: 'gable',
    ridge,
    plate: fromFeet(plate),
    pitch: { rise, run: 12 },
  }));

interface Size {
  readonly at: number;
  readonly width: number;
  readonly sill: number;
  readonly height: number;
}

function own(mark: string, kind: OwnOpening['kind'], wall: string, { at, width, sill, height }: Size): OwnOpening {
  const sizes = { at: fromFeet(at), width: fromFeet(width), sill: fromFeet(sill), height: fromFeet(height) };
  return { ...opening(mark, kind, wall, `0'`, `1' x 1'`), ...sizes };
}

const say = (length: number): string => printLength(fromFeet(length));

describe('an opening that does not fit', () => {
  const told = (form: CeilingForm, ...openings: OwnOpening[]) =>
    problemsOf({ shape, ceiling: form, openings }).map(({ code, message, fix }) => [code, message, fix]);

  test('is told by how much it is too wide, lies past an end, or is too high', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        sheds,
        names,
        fc.constantFrom('door' as const, 'window' as const, 'cased' as const),
        fc.record({ at: inches(-60, 200), width: inches(24, 300), sill: inches(0, 40), height: inches(60, 130) }),
        (form, wall, kind, sizes) => {
          const { run, at: spotAt } = walls[wall];
          const { at, width, sill, height } = sizes;
          const ceiling = heightOf({ form }, corners);
          const ends = [at, at + width].map((along) => ceiling(spotAt(along)));
          const limit = kind === 'door' ? Math.min(...ends) : Math.max(...ends);
          const expected = ((): readonly string[] | undefined => {
            if (width > run)
              return [
                'opening-wider-than-wall',
                `M1 is ${say(width)} wide, wider than its wall '${wall}' of ${say(run)}`,
                `${say(run)} is the most that fits`,
              ];
            const fix = `at may be ${say(0)} to ${say(run - width)}`;
            if (at < 0) return ['opening-past-wall', `M1 runs ${say(-at)} past the left end of wall '${wall}'`, fix];
            if (at + width > run + 1e-9)
              return [
                'opening-past-wall',
                `M1 runs ${say(at + width - run)} past the right end of wall '${wall}'`,
                fix,
              ];
            const head = sill + height;
            if (head <= limit + 1e-7) return undefined;
            return [
              'opening-above-ceiling',
              `the head of M1 is ${say(head)} above the floor, ${say(head - limit)} over the ceiling there at ${say(limit)}`,
              `a head of ${say(limit)} is the most that fits there`,
            ];
          })();
          seen.add(expected?.[1]?.replace(/[^a-z]*\d.*?(past|wide|over)/u, '').slice(0, 20) ?? 'fits');
          expect(told(form, own('M1', kind, wall, sizes))).toEqual(expected ? [expected] : []);
        },
      ),
      { numRuns: 300 },
    );
    expect(seen.size).toBeGreaterThanOrEqual(4);
  });

  test('is told by how much it overlaps another, along the wall, if it does so up the wall too', () => {
    const flat: CeilingForm = { form: 'flat', height: fromFeet(12) };
    const sizes = fc.record({ at: inches(0, 140), width: inches(12, 80), sill: inches(0, 60), height: inches(12, 60) });
    fc.assert(
      fc.property(sizes, sizes, fc.boolean(), (one, other, apart) => {
        const shared = (from: number, by: number, start: number, reach: number): number =>
          Math.min(from + by, start + reach) - Math.max(from, start);
        const across = shared(one.at, one.width, other.at, other.width);
        const up = shared(one.sill, one.height, other.sill, other.height);
        const meets = !apart && across > 1e-9 && up > 1e-9;
        expect(
          told(flat, own('W1', 'window', 'north', one), own('W2', 'window', apart ? 'south' : 'north', other)),
        ).toEqual(
          meets
            ? [
                [
                  'openings-overlap',
                  `W2 overlaps W1 in wall 'north' by ${say(across)}`,
                  `move it ${say(across)} along the wall`,
                ],
              ]
            : [],
        );
      }),
      { numRuns: 200 },
    );
  });

  test('two round ones in the corners of each other do not overlap until they are nearer than their radii', () => {
    fc.assert(
      fc.property(inches(0, 40), inches(0, 40), (aside, up) => {
        const disc = (mark: string, at: number, sill: number): OwnOpening => ({
          ...own(mark, 'window', 'north', { at, sill, width: 3, height: 3 }),
          shape: { is: 'round' } satisfies OpeningShape,
        });
        const far = Math.hypot(aside, up);
        // What they share then is more than a tape tells.
        fc.pre(Math.abs(far - 3) > 0.3);
        const found = told({ form: 'flat', height: fromFeet(12) }, disc('W1', 2, 2), disc('W2', 2 + aside, 2 + up));
        expect(found.length).toBe(far < 3 && aside < 3 && up < 3 ? 1 : 0);
      }),
    );
  });

  test('by hand: an arch under a slope by its corner, a raked head by its high end', () => {
    // Shed 8 ft in the west, 6 in 12: over the south wall it falls from 18 ft at the left to 8 at the right.
    const form: CeilingForm = { form: 'shed', low: headings.west, plate: fromFeet(8), pitch: { rise: 6, run: 12 } };
    const head = (low: 'left' | 'right'): OwnOpening => ({
      ...own('W1', 'window', 'south', { at: 10, width: 8, sill: 2, height: 10 }),
      shape: { is: 'rake', low, to: fromFeet(6) },
    });
    // Ceiling 13 ft at the left side of the window, 9 at its right: heads of 12 and 8 are under it, 8 and 12 are 3 ft over.
    expect(told(form, head('right'))).toEqual([]);
    expect(told(form, head('left')).map(([code, message]) => [code, message])).toEqual([
      [
        'opening-above-ceiling',
        `W1, raked, 6'-0" at the left, is 3'-0" over the ceiling at 18'-0" from the left end of wall 'south'`,
      ],
    ]);
  });
});

test('what lies on the wall is what is under the ceiling there', () => {
  fc.assert(
    fc.property(
      gables,
      names,
      fc.record({
        share: fc.double({ min: 0, max: 1, noNaN: true }),
        width: inches(24, 120),
        sill: inches(0, 36),
        height: inches(36, 150),
      }),
      (form, wall, { share, width, sill, height }) => {
        const { run, at: spotAt } = walls[wall];
        const at = Math.floor((run - width) * share * 12) / 12;
        const ceiling = heightOf({ form }, corners);
        const top = (along: number): number => ceiling(spotAt(along));
        const most = Math.max(...Array.from({ length: 401 }, (_, step) => top(at + (width * step) / 400)));
        fc.pre(sill + height < most - 0.05);
        const { openings, walls: measuredWalls } = measured({
          shape,
          ceiling: form,
          openings: [own('W1', 'window', wall, { at, width, sill, height })],
        });
        const seen = integral(at, at + width, (along) => Math.max(0, Math.min(top(along), sill + height) - sill), 600);
        expect(openings[0]?.area).toBeCloseTo(width * height, 6);
        expect(Math.abs((openings[0]?.areaOnWall ?? 0) - seen)).toBeLessThan(0.02);
        const of = measuredWalls.find(({ id }) => id === wall);
        expect((of?.gross ?? 0) - (of?.net ?? 0)).toBeCloseTo(openings[0]?.areaOnWall ?? NaN, 6);
      },
    ),
    { numRuns: 120 },
  );
});

test('from the other room a door has its hinges, and a rake its low side, at the other hand', () => {
  const ceiling: CeilingForm = { form: 'flat', height: fromFeet(10) };
  for (const [hinge, other] of [
    ['left', 'right'],
    ['right', 'left'],
  ] as const) {
    const door: OwnOpening = {
      ...own('D1', 'door', 'north', { at: 3, width: 3, sill: 0, height: 8 }),
      to: 'den',
      hinge,
      shape: { is: 'rake', low: hinge, to: fromFeet(7) },
    };
    const hall: Room = room({ slug: 'hall', shape, ceiling, openings: [door] });
    const seen = { by: 'seen', mark: 'D1', recordedIn: 'hall', wall: 'south', at: fromFeet(5), path: [] } as const;
    const [there] = measured(room({ slug: 'den', shape, ceiling, openings: [seen] }), [hall]).openings;
    expect(there).toMatchObject({ hinge: other, shape: { low: other }, at: fromFeet(5), to: 'hall', own: false });
    expect(feet(there?.width ?? (0 as Length)) * 7.5).toBeCloseTo(there?.areaOnWall ?? NaN, 6);
  }
});
