import { describe, expect, test } from 'vitest';
import { layOut, type LayoutInput } from '../../../src/core/takeoff/layout/index.js';
import { fromInches } from '../../../src/base/units/index.js';
import { boards, feetOf, rectangle, region, sheets } from './shapes.js';
import { plainLoop, processorTime } from '../../processor-time.js';

/** Surfaces as houses have them. The bound is the total length of the courses, rounded up to a sum of stock lengths: no
 *  layout can buy less, and most come close, since pieces may be joined. */
const surfaces: readonly (readonly [name: string, input: LayoutInput])[] = [
  [`great room 30' × 24', boards the long way`, boards([rectangle(360, 288)])],
  [`great room 30' × 24', boards the short way`, boards([rectangle(360, 288)], { direction: 90 })],
  [`great room 30'-3 1/2" × 24'`, boards([rectangle(363.5, 288)])],
  [`living room 24' × 18'-6", 1x8`, boards([rectangle(288, 222)], { face: fromInches(6.75) })],
  [
    `living room 24' × 18'-6", 1x8, the short way`,
    boards([rectangle(288, 222)], { face: fromInches(6.75), direction: 90 }),
  ],
  [`bedroom 13'-5" × 12'`, boards([rectangle(161, 144)])],
  [`bath 8' × 5'-4", 1x4 the short way`, boards([rectangle(96, 64)], { face: fromInches(3.125), direction: 90 })],
  [`closet 3'-4" × 8'`, boards([rectangle(40, 96)])],
  [`one length only, 16'`, boards([rectangle(240, 144)], { stock: feetOf(16) })],
  [`one length only, 12'`, boards([rectangle(192, 144)], { stock: feetOf(12) })],
  [`every foot from 8' to 16'`, boards([rectangle(351.25, 222)], { stock: feetOf(8, 9, 10, 11, 12, 13, 14, 15, 16) })],
  [
    `joints on joists at 16"`,
    boards([rectangle(360, 288)], {}, { framing: { spacing: fromInches(16), from: fromInches(0) } }),
  ],
  [
    'four slopes of a hip',
    boards([
      region([
        [0, 0],
        [240, 0],
        [120, 140],
      ]),
      region([
        [0, 0],
        [360, 0],
        [240, 140],
        [120, 140],
      ]),
      region([
        [0, 0],
        [240, 0],
        [120, 140],
      ]),
      region([
        [0, 0],
        [360, 0],
        [240, 140],
        [120, 140],
      ]),
    ]),
  ],
  [
    'an L with a skylight',
    boards([
      region(
        [
          [0, 0],
          [360, 0],
          [360, 120],
          [200, 120],
          [200, 288],
          [0, 288],
        ],
        [
          [
            [50, 50],
            [90, 50],
            [90, 100],
            [50, 100],
          ],
        ],
      ),
    ]),
  ],
  [`drywall ceiling 24' × 18'-6"`, sheets([rectangle(288, 222)])],
  [`drywall ceiling 14' × 12'`, sheets([rectangle(168, 144)])],
  [`drywall wall 13' × 8'`, sheets([rectangle(156, 96)])],
];

describe('bought beyond the bound', () => {
  test.each(surfaces.map(([name, input]) => ({ name, input })))('$name: not over 4 %', ({ input }) => {
    const layout = layOut(input);
    expect(layout.departures).toEqual([]);
    expect(layout.gap).toBeGreaterThanOrEqual(0);
    expect(layout.gap).toBeLessThanOrEqual(0.04);
  });
});

test('the great room is laid faster than a plain loop of forty million steps', () => {
  const input = boards([rectangle(363.5, 288)]);
  layOut(input);
  const reference = fastest(plainLoop.run);
  const laid = fastest(() => {
    expect(layOut(input).courses).toHaveLength(57);
  });
  expect(laid / reference).toBeLessThan(2);
});

/** Milliseconds of the fastest of five runs. */
function fastest(run: () => void): number {
  return Math.min(...Array.from({ length: 5 }, () => processorTime(run)));
}
