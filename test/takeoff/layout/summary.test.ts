import { describe, expect, test } from 'vitest';
import { layOut, summarize } from '../../../src/core/takeoff/layout/index.js';
import { fromInches } from '../../../src/base/units/index.js';
import { boards, feetOf, rectangle, region } from './shapes.js';

describe('a summary', () => {
  test('keeps courses, end widths, stock, waste, bound, cuts and where each surface lies', () => {
    // 12' × 10' in 5 1/8" faces: 22 whole courses make 112 3/4", and 7 1/4" are left for two of 3 5/8".
    const layout = layOut(boards([rectangle(144, 120)]));
    const plane = { place: 'floor', name: 'Floor', direction: 0, run: 'east-west', startsAt: 'the south side' };
    expect(summarize(layout, { lay: 'boards', orderBy: 'area' }, [plane])).toEqual({
      lay: 'boards',
      orderBy: 'area',
      face: fromInches(5.125),
      courses: 24,
      firstCourse: fromInches(3.625),
      lastCourse: fromInches(3.625),
      stock: [{ length: fromInches(144), count: 24 }],
      waste: 1 - (144 * 120) / (24 * 144 * 5.125),
      // Square feet; 24 boards of 12' cover 5 1/8" each, and of the two that are ripped a strip is left past the saw.
      surface: {
        bought: (24 * 144 * 5.125) / 144,
        covered: 120,
        cutAway: 0,
        strips: (2 * 144 * 1.375) / 144,
        ends: 0,
        endTrim: 0,
        sawCuts: (2 * 144 * 0.125) / 144,
      },
      bought: fromInches(24 * 144),
      bound: fromInches(24 * 144),
      gap: 0,
      cuts: [
        { length: fromInches(144), from: fromInches(144), count: 22 },
        { length: fromInches(144), width: fromInches(3.625), from: fromInches(144), count: 2 },
      ],
      surfaces: [
        {
          ...plane,
          courses: 24,
          firstCourse: fromInches(3.625),
          lastCourse: fromInches(3.625),
          edge: 0,
          startLine: { from: 0, to: fromInches(144) },
          joints: Array.from({ length: 24 }, () => []),
        },
      ],
      departures: [],
    });
  });

  test('joints are where pieces meet, not where an opening parts a course', () => {
    // A hole as high as a course parts it; the course below has room for one joint of 16' in 20'.
    const holed = region(
      [
        [0, 0],
        [240, 0],
        [240, 12],
        [0, 12],
      ],
      [
        [
          [96, 6],
          [108, 6],
          [108, 12],
          [96, 12],
        ],
      ],
    );
    const given = { face: fromInches(6), stock: feetOf(16) };
    const layout = layOut(boards([holed], given, { joints: 'long-spans' }));
    const plane = { place: 'north', name: 'North wall', direction: 0, run: 'horizontal', startsAt: 'the floor' };
    const [surface] = summarize(layout, { lay: 'boards', orderBy: 'area' }, [plane]).surfaces;
    expect(surface?.joints.map((course) => course.length)).toEqual([1, 0]);
  });

  test('a departure is told with its surface', () => {
    const layout = layOut(
      boards([rectangle(108, 12)], { face: fromInches(6), stock: feetOf(8) }, { stagger: fromInches(96) }),
    );
    const plane = { place: 'ceiling', name: 'South slope', direction: 0, run: 'east-west', startsAt: 'the eave' };
    expect(summarize(layout, { lay: 'boards', orderBy: 'area' }, [plane]).departures[0]).toMatch(
      /^South slope, course 2: a joint /u,
    );
  });
});
