import fc from 'fast-check';
import type { LayoutInput } from '../../../src/core/takeoff/layout/index.js';
import type { Region } from '../../../src/core/model/index.js';
import { fromInches } from '../../../src/base/units/index.js';
import { boards, feetOf, rectangle, region, sheets } from './shapes.js';

/** Whole sixteenths of an inch, given in inches. */
function sixteenths(least: number, most: number): fc.Arbitrary<number> {
  return fc.integer({ min: least * 16, max: most * 16 }).map((count) => count / 16);
}

const rectangles = fc.tuple(sixteenths(30, 400), sixteenths(12, 300)).map(([w, h]) => rectangle(w, h));

/** An L: a rectangle less its upper right corner. */
const ells = fc
  .tuple(sixteenths(40, 200), sixteenths(30, 120), sixteenths(30, 200), sixteenths(20, 120))
  .map(([w, h, more, up]) =>
    region([
      [0, 0],
      [w + more, 0],
      [w + more, h],
      [w, h],
      [w, h + up],
      [0, h + up],
    ]),
  );

/** A rectangle with a hole that keeps off its edges. */
const holed = fc
  .tuple(
    sixteenths(100, 300),
    sixteenths(80, 200),
    fc.double({ min: 0.1, max: 0.5, noNaN: true }),
    fc.double({ min: 0.55, max: 0.9, noNaN: true }),
  )
  .map(([w, h, from, to]) => {
    const [a, b, c, d] = [w * from, w * to, h * from, h * to];
    return region(
      [
        [0, 0],
        [w, 0],
        [w, h],
        [0, h],
      ],
      [
        [
          [a, c],
          [b, c],
          [b, d],
          [a, d],
        ],
      ],
    );
  });

/** A slope of a hip roof: a trapezoid, or a triangle. */
const slopes = fc
  .tuple(
    sixteenths(60, 400),
    sixteenths(30, 200),
    fc.double({ min: 0, max: 0.5, noNaN: true }),
    fc.double({ min: 0.5, max: 1, noNaN: true }),
  )
  .map(([w, h, left, right]) =>
    right - left < 0.02
      ? region([
          [0, 0],
          [w, 0],
          [w / 2, h],
        ])
      : region([
          [0, 0],
          [w, 0],
          [w * right, h],
          [w * left, h],
        ]),
  );

export const surfaces: fc.Arbitrary<Region> = fc.oneof(rectangles, ells, holed, slopes);

const stocks = fc.constantFrom(
  feetOf(8, 10, 12, 16),
  feetOf(12),
  feetOf(16),
  feetOf(6, 8),
  feetOf(8, 9, 10, 11, 12, 13, 14, 16),
);

/** Boards on one or two surfaces, by many rules. */
export const boardInputs: fc.Arbitrary<LayoutInput> = fc
  .record({
    regions: fc.array(surfaces, { minLength: 1, maxLength: 2 }),
    direction: fc.constantFrom(0, 90, 180, 270, 30, 45),
    face: fc.constantFrom(3.125, 5.125, 6.75, 9.5),
    stock: stocks,
    kerf: fc.constantFrom(0, 0.125, 0.25),
    endTrim: fc.constantFrom(0, 2, 3.25),
    stagger: fc.constantFrom(0, 16, 24, 32),
    leastPiece: fc.constantFrom(0, 12, 16, 24),
    reuseOffcuts: fc.boolean(),
    joints: fc.constantFrom('any-span' as const, 'long-spans' as const),
    endCourses: fc.constantFrom('balanced' as const, 'full-first' as const),
    framed: fc.boolean(),
  })
  .map(({ regions, direction, face, stock, kerf, endTrim, stagger, leastPiece, framed, ...rules }) =>
    boards(
      regions,
      { direction, face: fromInches(face), stock, kerf: fromInches(kerf), endTrim: fromInches(endTrim) },
      {
        ...rules,
        stagger: fromInches(stagger),
        leastPiece: fromInches(leastPiece),
        ...(framed ? { framing: { spacing: fromInches(16), from: fromInches(0) } } : {}),
      },
    ),
  );

/** Sheets on one surface, strips used. */
export const sheetInputs: fc.Arbitrary<LayoutInput> = fc
  .record({
    surface: surfaces,
    direction: fc.constantFrom(0, 90, 45),
    kerf: fc.constantFrom(0, 0.125),
    stagger: fc.constantFrom(0, 24, 48),
    endCourses: fc.constantFrom('balanced' as const, 'full-first' as const),
  })
  .map(({ surface, direction, kerf, stagger, endCourses }) =>
    sheets([surface], { direction, kerf: fromInches(kerf) }, { stagger: fromInches(stagger), endCourses }),
  );
