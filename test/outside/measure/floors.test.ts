import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feet, fromFeet, printLength, type Length } from '../../../src/base/units/index.js';
import type { CeilingForm, RoomMeasure } from '../../../src/core/model/index.js';
import { measured, problemsOf, wall } from '../../measure/measured.js';
import { opening } from '../../measure/room-record.js';
import { deep, half, rooms, shape, wide, type Level } from './second-way/floors.js';
import {
  cellsOf,
  integral,
  isIn,
  recorded,
  rectangle,
  steepness,
  total,
  type Height,
  type Spot,
} from './second-way/plan.js';

/** Floors of several heights, their risers, holes in them, and the walls that stand on them, by a second way (`second-way/plan.ts`). */

const floorAt = (levels: readonly Level[], at: Spot): number =>
  levels.find(({ over }) => isIn(over, at))?.height(at) ?? 0;

describe.each(rooms.map((one, index) => [index, one] as const))(
  'floor %i',
  (_, { measure, levels, parts, well, through, ceiling, borders }) => {
    const stops = rectangle(0, 0, wide, deep);
    // Rows that end where parts do.
    const ys = [
      ...new Set([
        0,
        deep,
        ...(well ? [14.5, 15.5] : []),
        ...levels.flatMap(({ over }) => [over[0]?.y ?? 0, over[2]?.y ?? 0]),
      ]),
    ].sort((a, b) => a - b);
    const cells = ys
      .slice(1)
      .flatMap((top, index) => cellsOf(rectangle(0, ys[index] ?? 0, wide, top), 12, 12, borders));
    const floor: Height = (at) => floorAt(levels, at);
    const isHole = (at: Spot): boolean => well !== undefined && isIn(well, at);

    test('areas, volume and heights', () => {
      const gross = total(cells, ({ at, area }) => area * steepness(floor, at).factor);
      const holes = total(cells, ({ at, area }) => (isHole(at) ? area : 0));
      expect(measure.floor.gross).toBeCloseTo(gross, 4);
      expect(measure.floor.net).toBeCloseTo(gross - holes, 4);
      const air = cells.filter(({ at }) => !(through && isHole(at)));
      const clear: Height = (at) => ceiling(at) - floor(at);
      expect(measure.volume).toBeCloseTo(
        total(air, ({ at, area }) => area * clear(at)),
        3,
      );
      const standing = cells.filter(({ at }) => !isHole(at));
      for (const [least, area] of [
        [5, measure.headroom.fiveFeet],
        [7, measure.headroom.sevenFeet],
      ] as const) {
        const high = total(standing, (cell) => (clear(cell.at) >= least ? cell.area : 0));
        expect(Math.abs(area - high)).toBeLessThan(8);
      }
      const sloped = (of: typeof cells): number => total(of, ({ at, area }) => area * steepness(ceiling, at).factor);
      expect(measure.ceiling.gross).toBeCloseTo(sloped(cells), 3);
      expect(measure.ceiling.net).toBeCloseTo(sloped(air), 3);
      const heights = air.map(({ at }) => clear(at));
      expect(feet(measure.lowest)).toBeLessThanOrEqual(Math.min(...heights) + 1e-6);
      expect(feet(measure.lowest)).toBeGreaterThan(Math.min(...heights) - 0.6);
      expect(feet(measure.highest)).toBeGreaterThanOrEqual(Math.max(...heights) - 1e-6);
      expect(feet(measure.highest)).toBeLessThan(Math.max(...heights) + 0.6);
    });

    test('each level by itself', () => {
      parts.forEach(({ over, at, height, ramp }, index) => {
        const level = measure.floor.levels?.find(({ name }) => name === `Part ${index + 1}`);
        const area = total(
          cells.filter((cell) => isIn(over, cell.at)),
          (cell) => cell.area * steepness(at, cell.at).factor,
        );
        expect(level?.area).toBeCloseTo(area, 4);
        expect(level?.height).toBe(fromFeet(height));
        expect(level?.slope).toBeCloseTo(ramp ? ramp.pitch.rise / 12 : 0, 9);
      });
      expect(total(measure.floor.levels ?? [], ({ area }) => area)).toBeCloseTo(measure.floor.net, 6);
    });

    test('risers around each, up or down', () => {
      const up = new Map<string, number>();
      for (const [index, { over, height }] of levels.entries()) {
        const borderOf = (from: Spot, to: Spot): void => {
          const run = Math.hypot(to.x - from.x, to.y - from.y);
          const way = { x: (to.x - from.x) / run, y: (to.y - from.y) / run };
          const at = (along: number, aside: number): Spot => ({
            x: from.x + way.x * along + way.y * aside,
            y: from.y + way.y * along - way.x * aside,
          });
          // The other part may lie there, or a wall.
          const gain = (sign: number): number =>
            integral(
              0,
              run,
              (along) => {
                const beyond = at(along, 1e-7);
                if (!isIn(stops, beyond)) return 0;
                return Math.max(0, sign * (height(at(along, 0)) - floorAt(levels, beyond)));
              },
              800,
            );
          const meets = levels.findIndex((other) => isIn(other.over, at(run / 2, 1e-7)));
          const other = meets < 0 ? 'floor' : `part-${meets + 1}`;
          const me = `part-${index + 1}`;
          if (meets >= 0 && meets < index) return;
          up.set(`riser-${other}-${me}`, (up.get(`riser-${other}-${me}`) ?? 0) + gain(1));
          up.set(`riser-${me}-${other}`, (up.get(`riser-${me}-${other}`) ?? 0) + gain(-1));
        };
        over.forEach((from, corner) => borderOf(from, over[(corner + 1) % over.length] as Spot));
      }
      const expected = [...up].filter(([, area]) => area > 0.02);
      const risers = (measure.risers ?? []).filter(({ net }) => net > 0.02);
      expect(risers.map(({ id }) => id).sort()).toEqual(expected.map(([id]) => id).sort());
      for (const [id, area] of expected) {
        const riser = risers.find((one) => one.id === id);
        expect(Math.abs((riser?.net ?? 0) - area), id).toBeLessThan(0.05);
        const isLevel = parts.every(({ ramp }) => ramp === undefined);
        // All of it as high: its area is its run times its rise.
        if (isLevel)
          expect(feet(riser?.run ?? (0 as Length)) * feet(riser?.rise ?? (0 as Length))).toBeCloseTo(
            riser?.net ?? NaN,
            4,
          );
        else
          expect(feet(riser?.run ?? (0 as Length)) * feet(riser?.rise ?? (0 as Length))).toBeGreaterThan(
            (riser?.net ?? 0) - 1e-4,
          );
      }
    });

    test('walls stand on it', () => {
      const ends: Readonly<Record<string, readonly [Spot, Spot]>> = {
        north: [
          { x: 0, y: deep },
          { x: wide, y: deep },
        ],
        east: [
          { x: wide, y: deep },
          { x: wide, y: 0 },
        ],
        south: [
          { x: wide, y: 0 },
          { x: 0, y: 0 },
        ],
        west: [
          { x: 0, y: 0 },
          { x: 0, y: deep },
        ],
      };
      for (const [name, [from, to]] of Object.entries(ends)) {
        const { run } = wall(measure, name);
        const at = (along: number): Spot => {
          const share = along / feet(run);
          const inset = 1e-7;
          const [x, y] = [from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share];
          return { x: Math.min(wide - inset, Math.max(inset, x)), y: Math.min(deep - inset, Math.max(inset, y)) };
        };
        const area = integral(0, feet(run), (along) => ceiling(at(along)) - floor(at(along)), 960);
        expect(Math.abs(wall(measure, name).gross - area), name).toBeLessThan(0.05);
      }
    });
  },
);

test('there is enough of each to ask', () => {
  expect(rooms.flatMap(({ measure }: { measure: RoomMeasure }) => measure.risers ?? []).length).toBeGreaterThan(40);
});

describe('what does not fit is told by how much', () => {
  const say = (length: number): string => printLength(fromFeet(length));
  const flat: CeilingForm = { form: 'flat', height: fromFeet(9) };

  test('a part of the floor outside, in square feet to two places', () => {
    fc.assert(
      fc.property(half(1, 30), half(1, 6), half(1, 6), (x, width, depth) => {
        const over = rectangle(x, 2, x + width, 2 + depth);
        const out = Math.max(0, Math.min(width, x + width - wide)) * depth;
        const found = problemsOf({
          shape,
          ceiling: flat,
          floor: [{ name: 'Dais', over: over.map(recorded), height: fromFeet(1) }],
        });
        const two = (area: number): string => String(Math.round(area * 100) / 100);
        expect(found.filter(({ code }) => code === 'floor-part-outside').map(({ message }) => message)).toEqual(
          out > 0
            ? [`${two(out)} sq ft of the ${two(width * depth)} sq ft of floor part 'Dais' lie outside the room`]
            : [],
        );
      }),
    );
  });

  test('two parts on the same floor, and a floor through its ceiling', () => {
    fc.assert(
      fc.property(half(0, 8), half(1, 14), (at, height) => {
        const parts = [rectangle(2, 2, 8, 6), rectangle(2 + at, 2, 6 + at, 8)];
        const shared = Math.max(0, Math.min(8, 6 + at) - Math.max(2, 2 + at)) * 4;
        const found = problemsOf({
          shape,
          ceiling: flat,
          floor: parts.map((over, index) => ({
            name: `Part ${index + 1}`,
            over: over.map(recorded),
            height: fromFeet(index === 0 ? height : 0.5),
          })),
        }).map(({ message }) => message);
        const high =
          height > 9
            ? [`floor part 'Part 1' rises up to ${say(height - 9)} through the ceiling, or a wall that leans, over it`]
            : [];
        expect(found).toEqual(
          shared > 0 ? [`floor parts 'Part 1' and 'Part 2' overlap by ${String(shared)} sq ft`] : high,
        );
      }),
    );
  });

  test('a window below the floor before it; what one walks through stands on it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(-1, -0.5, 0.5, 1, 1.5),
        fc.integer({ min: -18, max: 24 }),
        half(0, 20),
        (height, sill, at) => {
          const floor = [{ name: 'Dais', over: rectangle(4, 12, 12, 16).map(recorded), height: fromFeet(height) }];
          const window = {
            ...opening('W1', 'window', 'north', `0'`, `3' x 3'`, { sill: fromFeet(sill / 12) }),
            at: fromFeet(at),
          };
          const meets = at < 12 && at + 3 > 4;
          const reaches = at >= 4 && at + 3 <= 12;
          const before = meets ? (reaches ? height : Math.max(height, 0)) : 0;
          const overFloor = (length: number): string => (length < 0 ? `${say(-length)} below` : `${say(length)} above`);
          const isLow = sill / 12 < before - 1e-6;
          expect(
            problemsOf({ shape, ceiling: flat, floor, openings: [window] }).map(({ message, fix }) => [message, fix]),
          ).toEqual(
            isLow
              ? [
                  [
                    `W1 begins ${overFloor(sill / 12)} the room's floor, but the floor before it is ${overFloor(before)} that`,
                    `sill: ${say(before)} puts it on the floor there`,
                  ],
                ]
              : [],
          );
          const door = { ...opening('D1', 'door', 'north', `0'`, `3' x 6'-8"`), at: fromFeet(at) };
          const { openings } = measured({ shape, ceiling: flat, floor, openings: [door] });
          expect(openings[0]?.sill).toBe(fromFeet(before));
        },
      ),
      { numRuns: 200 },
    );
  });
});
