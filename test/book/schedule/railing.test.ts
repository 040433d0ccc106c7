import fc from 'fast-check';
import { expect, test, describe } from 'vitest';
import { drawnRoom, lookUp } from '../../../src/core/book/index.js';
import { balustersIn, cablesUnder } from '../../../src/core/takeoff/arithmetic/index.js';
import { fromInches, printLength } from '../../../src/base/units/index.js';
import { demoBook } from '../../demo-house.js';

const book = await demoBook('2026-04-20');
const { railings } = book.schedules;
const row = (place: string) => railings.rows.find((each) => each.place === place);
const gallery = book.selections.find(({ id }) => id === 'gallery/railing/edge');
const stair = book.selections.find(({ id }) => id === 'stair-hall/railing/stair');
const counts = (selection: typeof gallery, option: string) =>
  selection?.alternatives
    .find((each) => each.option === option)
    ?.takeoff.flatMap(({ counts: own = [] }) => own.map(({ unit, amount }) => [unit, amount]));

describe('posts where runs end together', () => {
  test('the well has one post at its corner, and one at the top of the stair', () => {
    expect(row('foot-edge')?.rail?.shared).toMatchObject([
      { end: 'left end', other: 'right end of Side of the stair well', isOwn: false },
    ]);
    expect(row('stair')?.rail?.shared).toMatchObject([
      { end: 'top', other: 'left end of Side of the stair well', isOwn: false },
    ]);
    expect(row('well-edge')?.rail?.shared.map(({ isOwn }) => isOwn)).toEqual([true, true]);
    expect(row('edge')?.rail?.shared).toEqual([]);
  });

  test('the lines of the take-off say which run has it', () => {
    const posts = gallery?.alternatives[0]?.takeoff.find(({ part }) => part === 'post');
    expect(posts?.places.map(({ gross, net }) => [gross, net])).toEqual([
      [5, 5],
      [4, 4],
      [2, 1],
    ]);
    expect(posts?.places[2]?.adjustments).toEqual([
      {
        what: 'Post at its left end',
        amount: -1,
        why: 'the one at the right end of Side of the stair well; counted there',
      },
    ]);
    expect(posts?.places[0]?.why).toBe(`14'-0" in 4 spaces of 3'-6", none over 4'-0"`);
  });

  test('plans, schedule and take-off have the same posts', () => {
    const look = lookUp(book);
    const drawn = book.rooms.flatMap((room) => [...drawnRoom(room, look).posts]);
    expect(drawn.map(([id, posts]) => [id, posts.filter(({ isOwn }) => isOwn).length])).toEqual([
      ['edge', 5],
      ['well-edge', 4],
      ['foot-edge', 1],
    ]);
    for (const [id, posts] of drawn) expect(posts.filter(({ isOwn }) => isOwn)).toHaveLength(row(id)?.posts ?? 0);
    // An elevation shows the corner post on both of its sides.
    expect(drawn.map(([, posts]) => posts.length)).toEqual([5, 4, 2]);
  });
});

describe('what fills the bays', () => {
  // 14 ft: 4 bays of 42" − 1 1/2" = 40 1/2"; (40.5 − 3.75) / 4.25 = 8.6, nine of 1/2". 12 ft: 3 of 46 1/2"; 42.75 / 4.25 = 10.06, eleven.
  // 3'-6": 1 of 40 1/2", nine. 36 + 33 + 9 = 78.
  test('pickets of the gallery', () => {
    expect(counts(gallery, 'steel-picket')).toEqual([['balusters', 78]]);
    // (40.5 − 9 × 0.5) / 10 = 3.6
    expect(row('edge')?.rail?.pieces[0]?.infill).toMatchObject({ fill: 'balusters', count: 36, gap: fromInches(3.6) });
  });

  // 36" / 3" − 1 = 11 on each run, 29 1/2 ft together.
  test('cables of the gallery', () => {
    expect(counts(gallery, 'cable')).toEqual([
      ['cables', 33],
      ['lin ft of cable', expect.closeTo(11 * 29.5, 6)],
    ]);
  });

  // Bays of 40 1/2", 46 1/2" and 40 1/2", less half an inch at each side.
  test('panels of the gallery by width', () => {
    expect(counts(gallery, 'glass-panel')).toEqual([
      [`panels 3'-3 1/2" wide`, 5],
      [`panels 3'-9 1/2" wide`, 3],
    ]);
  });

  // 17.046 ft along the slope in 5 spaces of 40.91", on the level 40.91 / √(1 + 0.69468²) = 33.6"; less 1 1/2" 32.1";
  // (32.1 − 3.75) / 4.25 = 6.67, seven. Brackets: 17.046 / 4 = 4.26, five spaces, six.
  test('the stair: balusters stand plumb, and brackets hold the handrail along the slope', () => {
    expect(counts(stair, 'steel-picket')).toEqual([
      ['balusters', 35],
      ['lin ft of handrail', expect.closeTo((16 * Math.hypot(124 / 17, 10.5)) / 12, 6)],
      ['brackets', 6],
    ]);
    expect(printLength(row('stair')?.rail?.handrail?.length ?? fromInches(0))).toBe(`17'-0 9/16"`);
  });
});

const inches = fc.integer({ min: 1, max: 1600 }).map((sixteenths) => fromInches(sixteenths / 16));

test('no gap is wider than the widest, and one baluster less would leave one that is', () => {
  fc.assert(
    fc.property(inches, inches, inches, (bay, width, widest) => {
      const { balusters, gap } = balustersIn(bay, width, widest);
      expect(gap).toBeLessThanOrEqual(widest + 1);
      if (balusters > 0) expect((bay - (balusters - 1) * width) / balusters).toBeGreaterThan(widest - 1);
    }),
  );
});

test('cables leave no gap wider than their spacing', () => {
  fc.assert(
    fc.property(inches, inches, (height, apart) => {
      expect(height / (cablesUnder(height, apart) + 1)).toBeLessThanOrEqual(apart + 1);
    }),
  );
});
