import fc from 'fast-check';
import { headings } from '../../../../src/base/geometry/index.js';
import { fromFeet } from '../../../../src/base/units/index.js';
import type { CeilingForm } from '../../../../src/core/model/index.js';
import { measured } from '../../../measure/measured.js';
import { size } from '../../../measure/room-record.js';
import { heightOf, recorded, rectangle, type Height, type Spot } from './plan.js';

/** Floors of several heights in a plain room, with a hole in some. */

export const [wide, deep] = [24, 16];
export const shape = size(`24'`, `16'`);
const plan = rectangle(0, 0, wide, deep);

export const half = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 2, max: most * 2 }).map((halves) => halves / 2);

/** A part of the floor in the west, from a corner or standing free, and one in the east. */
const part = (west: number, east: number) =>
  fc.record({
    x: half(west, west + 2),
    y: fc.oneof(fc.constant(0), half(1, 5)),
    wide: half(3, east - west - 3),
    deep: half(3, 9),
    height: fc.constantFrom(-2, -1, -0.5, 0.5, 7 / 12, 1, 1.5),
    ramp: fc.option(
      fc.record({
        low: fc.constantFrom(headings.north, headings.east, headings.south, headings.west),
        rise: fc.constantFrom(1, 2),
      }),
      { nil: undefined },
    ),
  });

export interface Level {
  readonly over: readonly Spot[];
  readonly height: Height;
}

const ceilings: fc.Arbitrary<CeilingForm> = fc.oneof(
  half(9, 12).map((height): CeilingForm => ({ form: 'flat', height: fromFeet(height) })),
  fc
    .constantFrom(headings.north, headings.east, headings['south-west'])
    .map((low): CeilingForm => ({ form: 'shed', low, plate: fromFeet(8), pitch: { rise: 3, run: 12 } })),
);

const floors = fc
  .record({
    one: part(0, 11),
    other: part(11, 22),
    two: fc.boolean(),
    form: ceilings,
    hole: fc.boolean(),
    through: fc.boolean(),
  })
  .map(({ one, other, two, form, hole, through }) => {
    const parts = (two ? [one, other] : [one]).map(({ x, y, ramp, height, ...each }) => {
      const over = rectangle(x, y, x + each.wide, y + each.deep);
      const reach = ({ x: east, y: north }: Spot): number => (ramp ? ramp.low.x * east + ramp.low.y * north : 0);
      const lowest = Math.max(...over.map(reach));
      const at: Height = (spot) => height + ((lowest - reach(spot)) * (ramp?.rise ?? 0)) / 12;
      const slope = ramp && { low: ramp.low, pitch: { rise: ramp.rise, run: 12 } };
      return { over, at, height, ...(slope && { ramp: slope }) };
    });
    // Clear of both parts, which end at 14 ft.
    const well = hole ? rectangle(9, 14.5, 14, 15.5) : undefined;
    const measure = measured({
      shape,
      ceiling: form,
      floor: parts.map(({ over, height, ramp }, index) => ({
        name: `Part ${index + 1}`,
        over: over.map(recorded),
        height: fromFeet(height),
        ...(ramp && { ramp }),
      })),
      ...(well && { voids: [{ name: 'Well', corners: well.map(recorded), isOpenAbove: through }] }),
    });
    const levels: readonly Level[] = parts.map(({ over, at }) => ({ over, height: at }));
    const xs = parts.flatMap(({ over }) => [over[0]?.x ?? 0, over[1]?.x ?? 0]);
    return {
      measure,
      levels,
      parts,
      well,
      through,
      ceiling: heightOf({ form }, plan),
      borders: [...xs, 9, 14].sort((a, b) => a - b),
    };
  });

/** Measured once for all that is asked of them. */
export const rooms = fc.sample(floors, { numRuns: 40, seed: 1968 });
