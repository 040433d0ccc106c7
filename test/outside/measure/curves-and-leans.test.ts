import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feet, fromFeet, printLength, type Length } from '../../../src/base/units/index.js';
import type { CeilingForm, Shape, WallArc, WallLean } from '../../../src/core/model/index.js';
import { headings } from '../../../src/base/geometry/index.js';
import { measured, problemsOf, wall } from '../../measure/measured.js';
import { deep, flat, names, plain, wide } from './second-way/plain.js';
import { heightOf, integral, recorded, rectangle, type Spot } from './second-way/plan.js';

/** Walls that bow and walls that lean, plans that do not quite close, and holes, by closed forms. Source: geometry. */

const tenths = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 12, max: most * 12 }).map((inches) => inches / 12);

/** What a chord cuts off a circle: a sector less a triangle. */
function bow(chord: number, rise: number) {
  const radius = (chord * chord) / 8 / rise + rise / 2;
  const half = rise <= radius ? Math.asin(chord / 2 / radius) : Math.PI - Math.asin(chord / 2 / radius);
  return { radius, length: 2 * half * radius, area: half * radius * radius - (chord / 2) * (radius - rise) };
}

describe('a wall that is an arc', () => {
  test('gives or takes what a chord cuts off a circle, written either way round, by its rise or its radius', () => {
    fc.assert(
      fc.property(
        fc.boolean(),
        fc.constantFrom('out' as const, 'in' as const),
        fc.constantFrom(...names),
        tenths(0.5, 5),
        fc.boolean(),
        (isClockwise, bows, name, rise, byRadius) => {
          const chord = name === 'north' || name === 'south' ? wide : deep;
          const { radius, length, area } = bow(chord, rise);
          const arc: WallArc = byRadius ? { bows, radius: fromFeet(radius) } : { bows, rise: fromFeet(rise) };
          const shape = plain(isClockwise, (one) => (one === name ? { arc } : {}));
          const measure = measured({ shape, ceiling: flat(9) });
          const plan = wide * deep + (bows === 'out' ? area : -area);
          expect(measure.floor.net).toBeCloseTo(plan, 3);
          expect(measure.volume).toBeCloseTo(9 * plan, 2);
          expect(measure.ceiling.net).toBeCloseTo(plan, 3);
          const around = 2 * (wide + deep) - chord + length;
          expect(Math.abs(feet(measure.perimeter) - around)).toBeLessThan(0.03);
          expect(Math.abs(wall(measure, name).gross - 9 * length)).toBeLessThan(0.2);
          expect(wall(measure, name).arc).toMatchObject({ bows });
          expect(feet(wall(measure, name).arc?.radius ?? (0 as Length))).toBeCloseTo(radius, 3);
          expect(feet(wall(measure, name).arc?.rise ?? (0 as Length))).toBeCloseTo(rise, 3);
        },
      ),
    );
  });

  test('stands under a slope as high as that is along it', () => {
    fc.assert(
      fc.property(
        tenths(0.5, 5),
        fc.constantFrom(headings.north, headings.east, headings['south-west']),
        (rise, low) => {
          const form: CeilingForm = { form: 'shed', low, plate: fromFeet(8), pitch: { rise: 3, run: 12 } };
          const arc: WallArc = { bows: 'out', rise: fromFeet(rise) };
          const measure = measured({ shape: plain(true, (one) => (one === 'north' ? { arc } : {})), ceiling: form });
          const { radius, length } = bow(wide, rise);
          const half = length / 2 / radius;
          const spotAt = (along: number): Spot => {
            const turn = along / radius - half;
            return { x: wide / 2 + radius * Math.sin(turn), y: deep + rise - radius + radius * Math.cos(turn) };
          };
          // The plate is at the lowest place of the whole plan, which may be on the arc.
          const arced = Array.from({ length: 2001 }, (_, step) => spotAt((length * step) / 2000));
          const height = heightOf({ form }, [...rectangle(0, 0, wide, deep), ...arced]);
          const area = integral(0, length, (along) => height(spotAt(along)), 2000);
          expect(Math.abs(wall(measure, 'north').gross - area) / area).toBeLessThan(0.002);
          const { top } = wall(measure, 'north');
          expect(feet(top[0]?.height ?? (0 as Length))).toBeCloseTo(height({ x: 0, y: deep }), 2);
          expect(feet(top.at(-1)?.height ?? (0 as Length))).toBeCloseTo(height({ x: wide, y: deep }), 2);
          expect(Math.abs(feet(top.at(-1)?.along ?? (0 as Length)) - length)).toBeLessThan(0.03);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('must reach from end to end', () => {
    fc.assert(
      fc.property(tenths(1, 12), (radius) => {
        const arc: WallArc = { bows: 'out', radius: fromFeet(radius) };
        const found = problemsOf({ shape: plain(true, (one) => (one === 'north' ? { arc } : {})), ceiling: flat(9) });
        const say = (size: number): string => printLength(fromFeet(size));
        expect(found.map(({ message, fix }) => [message, fix])).toEqual(
          radius < wide / 2
            ? [
                [
                  `an arc of ${say(radius)} does not reach from end to end of wall 'north', which is ${say(wide)}`,
                  `${say(wide / 2)}, a half circle, is the least radius that does`,
                ],
              ]
            : [],
        );
      }),
    );
  });

  test('ends a part of the floor that reaches past it, and lets none lie outside of it', () => {
    for (const [name, over, beyond] of [
      ['north', rectangle(2, 6, 14, 15.9), rectangle(2, 6, 14, 16.5)],
      ['east', rectangle(8, 2, 19.9, 10), rectangle(8, 2, 20.5, 10)],
      ['south', rectangle(2, -3.9, 14, 6), rectangle(2, -4.5, 14, 6)],
      ['west', rectangle(-3.9, 2, 8, 10), rectangle(-4.5, 2, 8, 10)],
    ] as const) {
      const shape = plain(true, (one) => (one === name ? { arc: { bows: 'out', rise: fromFeet(4) } } : {}));
      const told = (part: readonly Spot[]) =>
        problemsOf({
          shape,
          ceiling: flat(9),
          floor: [{ name: 'Bay', over: part.map(recorded), height: fromFeet(0.5) }],
        });
      expect(told(over), name).toEqual([]);
      // Half a foot beyond the crown of the arc, all along.
      const [{ message = '' } = {}] = told(beyond);
      const strip = (name === 'north' || name === 'south' ? 12 : 8) / 2;
      // The corners of an arc's pieces lie a hair outside of it.
      expect(Math.abs(parseFloat(message) - strip), name).toBeLessThan(0.05);
    }
  });
});

test('a wall that leans takes a wedge of the air and of its neighbours, and has its own slope', () => {
  fc.assert(
    fc.property(
      fc.boolean(),
      fc.constantFrom(...names),
      tenths(0.5, 3),
      tenths(7, 10),
      (isClockwise, name, by, high) => {
        const leans: WallLean = { by: fromFeet(by), at: fromFeet(8) };
        const measure = measured({
          shape: plain(isClockwise, (one) => (one === name ? { leans } : {})),
          ceiling: flat(high),
        });
        const isLong = name === 'north' || name === 'south';
        const [run, across] = isLong ? [wide, deep] : [deep, wide];
        // As far in as it is at the ceiling, at 5 and at 7 ft.
        const [top = 0, five = 0, seven = 0] = [high, 5, 7].map((height) => (by * height) / 8);
        expect(wall(measure, name).gross).toBeCloseTo(run * Math.hypot(top, high), 4);
        const beside = names[(names.indexOf(name) + 1) % 4] ?? '';
        expect(wall(measure, beside).gross).toBeCloseTo(high * (across - top / 2), 4);
        expect(measure.volume).toBeCloseTo(run * high * (across - top / 2), 3);
        expect(measure.ceiling.net).toBeCloseTo(run * (across - top), 4);
        expect(measure.headroom.fiveFeet).toBeCloseTo(run * (across - five), 4);
        expect(measure.headroom.sevenFeet).toBeCloseTo(high >= 7 ? run * (across - seven) : 0, 4);
        expect([feet(measure.lowest), feet(measure.highest)]).toEqual([
          expect.closeTo(high, 5),
          expect.closeTo(high, 5),
        ]);
        const face = wall(measure, name).top.map(({ along, height }) => [feet(along), feet(height)]);
        expect(face).toEqual([
          [0, expect.closeTo(Math.hypot(top, high), 5)],
          [expect.closeTo(run, 5), expect.closeTo(Math.hypot(top, high), 5)],
        ]);
      },
    ),
  );
});

test('a walk that does not quite close has opposite walls meet in their harmonic mean', () => {
  // The miss is shared in proportion to what goes each way: E − (E − W) × E / (E + W) = 2EW / (E + W).
  fc.assert(
    fc.property(
      tenths(8, 20),
      tenths(8, 20),
      fc.integer({ min: -16, max: 16 }),
      fc.integer({ min: -16, max: 16 }),
      (east, north, x, y) => {
        const [west, south] = [east + x / 3072, north + y / 3072];
        const shape: Shape = {
          by: 'walk',
          walls: [
            { name: 'north', go: 'east', run: fromFeet(east) },
            { name: 'east', go: 'south', run: fromFeet(south) },
            { name: 'south', go: 'west', run: fromFeet(west) },
            { name: 'west', go: 'north', run: fromFeet(north) },
          ],
        };
        const measure = measured({ shape, ceiling: flat(9) });
        const [width, depth] = [(2 * east * west) / (east + west), (2 * north * south) / (north + south)];
        expect(measure.floor.net).toBeCloseTo(width * depth, 5);
        expect(feet(measure.perimeter)).toBeCloseTo(2 * (width + depth), 6);
        const corners = measure.plan.map((at) => [feet(at.x), feet(at.y)]);
        expect(corners[0]).toEqual([0, expect.closeTo(depth, 6)]);
        expect(corners[2]).toEqual([expect.closeTo(width, 6), 0]);
      },
    ),
  );
});

describe('holes in a floor', () => {
  const ceiling = flat(9);
  const hole = (over: readonly Spot[], more = {}) => ({ name: 'Well', corners: over.map(recorded), ...more });

  test('have floor to the right of each side, where no wall is, whichever way they are written', () => {
    fc.assert(
      fc.property(fc.boolean(), tenths(0, 9), tenths(1, 5), tenths(1, 4), (isClockwise, x, width, depth) => {
        const corners = rectangle(x, 0, x + width, depth);
        const names = ['a', 'b', 'c', 'd'];
        const written = isClockwise ? [...corners].reverse() : corners;
        const measure = measured({ shape: plain(true, () => ({})), ceiling, voids: [hole(written, { sides: names })] });
        expect(measure.floor.net).toBeCloseTo(wide * deep - width * depth, 5);
        const [{ sides } = { sides: [] }] = measure.voids;
        expect(sides.map(({ name }) => name).sort()).toEqual(names);
        for (const { from, to, run, edges, name } of sides) {
          const [ahead, aside] = [feet((to.x - from.x) as Length), feet((to.y - from.y) as Length)];
          expect(feet(run)).toBeCloseTo(Math.hypot(ahead, aside), 6);
          // A step to the right of the middle of a side leads out of the hole.
          const right = {
            x: (feet(from.x) + feet(to.x)) / 2 + Math.sign(aside) * 0.01,
            y: (feet(from.y) + feet(to.y)) / 2 - Math.sign(ahead) * 0.01,
          };
          expect(right.x > x && right.x < x + width && right.y > 0 && right.y < depth).toBe(false);
          const isWall = feet(from.y) === 0 && feet(to.y) === 0;
          const isWest = x === 0 && feet(from.x) === 0 && feet(to.x) === 0;
          expect(edges.map((edge) => [feet(edge.from), feet(edge.to)])).toEqual(
            isWall || isWest ? [] : [[0, expect.closeTo(feet(run), 6)]],
          );
          // The side that is written first from a corner to the next keeps its name.
          const at = names.indexOf(name);
          const ends = [written[at], written[(at + 1) % 4]].map((end) => `${end?.x.toFixed(4)} ${end?.y.toFixed(4)}`);
          expect([from, to].map((end) => `${feet(end.x).toFixed(4)} ${feet(end.y).toFixed(4)}`).sort()).toEqual(
            ends.sort(),
          );
        }
      }),
    );
  });

  test('outside are told by how much', () => {
    fc.assert(
      fc.property(tenths(10, 24), tenths(1, 6), (x, width) => {
        const out = Math.max(0, Math.min(width, x + width - wide)) * 2;
        const two = (area: number): string => (Math.round(area * 100) / 100).toLocaleString('en');
        fc.pre(x < wide);
        expect(
          problemsOf({ shape: plain(true, () => ({})), ceiling, voids: [hole(rectangle(x, 2, x + width, 4))] }).map(
            ({ message }) => message,
          ),
        ).toEqual(
          out > 1e-6 ? [`${two(out)} sq ft of the ${two(width * 2)} sq ft of void 'Well' lie outside the room`] : [],
        );
      }),
    );
  });
});
