import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CeilingFacet, CourseRun, Region } from '../../../src/core/model/index.js';
import { facetDirections, flatDirection, wallDirection } from '../../../src/core/takeoff/course-direction.js';
import { fromFeet, type Area } from '../../../src/base/units/index.js';

/** The way courses run, by vectors in space: a course is laid on its slope, and what a plan shows of it is its shadow. No publication is
 *  behind it; which way courses run where the record says nothing is common practice, no source. */

type Vector = readonly [x: number, y: number, z: number];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => a.map((part) => part / Math.sqrt(dot(a, a))) as unknown as Vector;
const up: Vector = [0, 0, 1];

const rectangle = (west: number, south: number, width: number, depth: number): Region => ({
  outline: [
    [west, south],
    [west + width, south],
    [west + width, south + depth],
    [west, south + depth],
  ].map(([x = 0, y = 0]) => ({ x: fromFeet(x), y: fromFeet(y) })),
  holes: [],
});

const facet = (slope: number, riseDirection: number, area = 1, shape = rectangle(0, 0, 1, 1)): CeilingFacet => ({
  name: '',
  plan: shape,
  shape,
  slope,
  riseDirection,
  area: area as Area,
  highest: fromFeet(8),
});

/** A slope as an unfolded sheet lies on it: its first axis level, its second straight up the slope. */
function sheetOn({ slope, riseDirection }: CeilingFacet): { readonly level: Vector; readonly steep: Vector } {
  const rise = (riseDirection * Math.PI) / 180;
  const steep = unit([Math.cos(rise), Math.sin(rise), slope]);
  // Seen from below, as a ceiling is: level is to the right of who looks up the slope from above.
  return { level: unit(cross(steep, up)), steep };
}

/** A direction on the sheet, in space. */
function laid(on: CeilingFacet, degrees: number): Vector {
  const { level, steep } = sheetOn(on);
  const turn = (degrees * Math.PI) / 180;
  return level.map((part, axis) => part * Math.cos(turn) + (steep[axis] ?? 0) * Math.sin(turn)) as unknown as Vector;
}

const bearings = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];

/** The bearing whose arrow is most alike, by eight dot products. */
function bearingOf([x, y]: Vector): string {
  const likeness = bearings.map((_, index) => {
    const turn = (index * Math.PI) / 4;
    return x * Math.sin(turn) + y * Math.cos(turn);
  });
  return bearings[likeness.indexOf(Math.max(...likeness))] ?? '';
}

/** As steep as 76 degrees, where what lies to the right of a course that goes east may lie west of it. */
const slopes = fc.constantFrom(1 / 12, 0.25, 0.5, 8 / 12, 0.75, 1, 2, 3, 4);
const ways = fc.constantFrom('east-west' as const, 'north-south' as const);
const quarters = fc.constantFrom(0, 90, 180, 270);
const runs = { numRuns: 400 };

describe('on a slope, as recorded', () => {
  test('a course casts its shadow along the recorded way, and the first lies to the south or the east', () => {
    fc.assert(
      fc.property(slopes, fc.oneof(fc.integer({ min: 0, max: 359 }), quarters), ways, (slope, rises, way) => {
        const on = facet(slope, rises);
        const { direction, run, startsAt } = facetDirections([on], way)[0] ?? { direction: NaN };
        const shadow = laid(on, direction);
        const along: Vector = way === 'east-west' ? [1, 0, 0] : [0, 1, 0];
        expect(Math.abs(cross([shadow[0], shadow[1], 0], along)[2])).toBeLessThan(1e-9);
        expect(run).toBe(way);
        expect(direction).toBeGreaterThanOrEqual(0);
        expect(direction).toBeLessThan(360);
        if (startsAt === 'the eave') {
          // Level, and up the slope from there.
          expect(direction).toBe(0);
          expect(Math.abs(shadow[2])).toBe(0);
          return;
        }
        expect(Math.abs(shadow[2])).toBeGreaterThan(0);
        // Courses are counted to the left, so that the first lies at the right.
        const right = laid(on, direction - 90);
        expect(right[0] - right[1]).toBeGreaterThan(-1e-9);
        expect(startsAt).toBe(`the ${bearingOf(right)} side`);
      }),
      runs,
    );
  });

  test('where the slope rises with the compass, but for the last digits of a float, every turn is a quarter', () => {
    for (const rises of [0, 90, 180, 270])
      for (const noise of [0, 1e-9, -1e-9])
        for (const way of ['east-west', 'north-south'] as const) {
          const isLevel = (rises % 180 === 0) === (way === 'north-south');
          // Up the slope the first course is at the right hand, else down the slope: south or east.
          const side = way === 'east-west' ? 'the south side' : 'the east side';
          const isUp = rises === 0 || rises === 90;
          const { direction, startsAt } = facetDirections([facet(0.75, rises + noise)], way)[0] ?? {};
          expect([direction, startsAt]).toEqual(isLevel ? [0, 'the eave'] : [isUp ? 90 : 270, side]);
        }
  });
});

describe('where the record says nothing', () => {
  test('level on a slope, from its eave', () => {
    for (let rises = 0; rises < 360; rises += 1) {
      const words = rises % 180 === 90 ? 'east-west' : rises % 180 === 0 ? 'north-south' : 'level along the slope';
      expect(facetDirections([facet(0.5, rises)])).toEqual([{ direction: 0, run: words, startsAt: 'the eave' }]);
    }
  });

  test('what is flat between slopes goes as the largest of them does, whatever its own shape', () => {
    const one = fc.record({
      slope: slopes,
      // Neither way more than the other at 45 degrees.
      rises: fc.integer({ min: 0, max: 359 }).filter((degrees) => degrees % 90 !== 45),
      area: fc.integer({ min: 1, max: 1000 }),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(one, { minLength: 1, maxLength: 4, selector: ({ area }) => area }),
        fc.boolean(),
        fc.option(ways, { nil: undefined }),
        (list, long, way) => {
          const flat = facet(0, 0, 5000, long ? rectangle(0, 0, 9, 2) : rectangle(0, 0, 2, 9));
          const [, told] = facetDirections(
            [facet(1, 0, 0.5), flat, ...list.map(({ slope, rises, area }) => facet(slope, rises, area))],
            way,
          );
          const most = list.reduce((best, each) => (each.area > best.area ? each : best));
          const rise = (most.rises * Math.PI) / 180;
          const level = Math.abs(Math.sin(rise)) > Math.abs(Math.cos(rise)) ? 'east-west' : 'north-south';
          expect(told).toEqual(flatWords(way ?? level));
        },
      ),
    );
  });

  test('a floor along the longer side of its largest part, wherever that lies', () => {
    const part = fc.record({
      west: fc.integer({ min: -50, max: 50 }),
      south: fc.integer({ min: -50, max: 50 }),
      width: fc.integer({ min: 1, max: 40 }),
      depth: fc.integer({ min: 1, max: 40 }),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 4 }), fc.option(ways, { nil: undefined }), (parts, way) => {
        const regions = parts.map(({ west, south, width, depth }) => rectangle(west, south, width, depth));
        const size = Math.max(...parts.map(({ width, depth }) => width * depth));
        const [largest] = parts.filter(({ width, depth }) => width * depth === size);
        const longer = (largest?.width ?? 0) >= (largest?.depth ?? 0) ? 'east-west' : 'north-south';
        expect(flatDirection(regions, way)).toEqual(flatWords(way ?? longer));
      }),
      runs,
    );
  });
});

test('on walls: upright as recorded, else level; sheets hang from a level top', () => {
  const upright = { direction: 90, run: 'vertical', startsAt: 'the right-hand end' };
  const level = (startsAt: string): unknown => ({ direction: 0, run: 'horizontal', startsAt });
  const hung = (startsAt: string): unknown => ({ direction: 180, run: 'horizontal', startsAt });
  const [wall, face] = [true, false].map((isWall) => ({ isWall, isTopLevel: true }));
  const raked = { isWall: true, isTopLevel: false };
  if (!wall || !face) throw new Error('there are two');
  for (const lay of ['boards', 'sheets'] as const) expect(wallDirection(lay, wall, 'vertical')).toEqual(upright);
  expect([wall, face, raked].map((on) => wallDirection('boards', on))).toEqual([
    level('the floor'),
    level('the bottom'),
    level('the floor'),
  ]);
  expect([wall, face, raked].map((on) => wallDirection('sheets', on))).toEqual([
    hung('the ceiling'),
    hung('the top'),
    level('the floor'),
  ]);
});

/** First from the south, or from the east. */
function flatWords(way: CourseRun): unknown {
  const isEast = way === 'east-west';
  return { direction: isEast ? 0 : 90, run: way, startsAt: `the ${isEast ? 'south' : 'east'} side` };
}
