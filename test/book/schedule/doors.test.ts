import { describe, expect, test } from 'vitest';
import { fromInches } from '../../../src/base/units/index.js';
import { shapeOf } from '../../../src/table/shape-of.js';
import { twoRooms } from './house.js';

const door = '{ at: D02, category: door, chosen: panel }';

describe('a door', () => {
  const { doors, hardware } = twoRooms({
    study: [door, '{ at: D02, category: hardware, standard: lever }', '{ at: D02, category: casing, chosen: flat }'],
  });

  // 2'-6" + 2" by 6'-8" + 2 1/2"
  test('has the rough opening that its maker adds to', () => {
    expect(doors).toHaveLength(1);
    expect(doors[0]?.rough).toEqual({ width: fromInches(32), height: fromInches(82.5) });
    expect(doors[0]).toMatchObject({ fits: true, core: 'solid', thickness: fromInches(1.375) });
  });

  // 3 1/2" studs, 1/2" board in the study, 5/8" in the hall: 4 5/8", deeper than the 4 9/16" jamb
  test('has a wall that is deeper than its jamb', () => {
    expect(doors[0]?.jamb).toEqual({ made: fromInches(4.5625), wall: fromInches(4.625), reaches: false });
  });

  test('names its hardware set, which names the door', () => {
    expect(doors[0]?.hardware).toMatchObject({ set: 'H1', standing: 'standard' });
    expect(hardware).toMatchObject([
      { set: 'H1', holds: 'one pair of levers, three hinges', doors: [{ mark: 'D02', standing: 'standard' }] },
    ]);
  });

  test('names its trim by the key of the finish schedule', () => {
    expect(doors[0]?.trim).toMatchObject([{ room: 'study', key: 'CS1', standing: 'chosen' }]);
  });
});

test('a wall is not known without studs', () => {
  expect(twoRooms({ study: [door], studs: '' }).doors[0]?.jamb).toEqual({ made: fromInches(4.5625) });
});

test('an arched door says so in its schedule, in words and with the figure of its record', () => {
  const { doors } = twoRooms({
    study: [door],
    door: `width: 2'-6", height: 6'-8", hinge: left, swing: hall, shape: { arch: { rise: 8" } }`,
  });
  expect(doors[0]?.shape).toEqual({ is: 'arch', rise: fromInches(8) });
  expect(doors.map(shapeOf)).toEqual(['Arched, rise 8"']);
});

test('an opening higher than the door is made has no rough opening yet', () => {
  const [row] = twoRooms({ study: [door], door: `width: 2'-6", height: 8'-0", hinge: left, swing: hall` }).doors;
  expect(row).toMatchObject({ fits: false, madeHeight: fromInches(80) });
  expect(row).not.toHaveProperty('rough');
});

test('a pocket door has neither hand nor the rough opening of a swinging one', () => {
  const [row] = twoRooms({ study: [door], door: `width: 2'-6", height: 6'-8", operation: pocket` }).doors;
  expect(row).not.toHaveProperty('hand');
  expect(row).not.toHaveProperty('rough');
});

describe('what a door is asked for', () => {
  const hung = (facts: string) =>
    twoRooms({
      study: [door, '{ at: D02, category: hardware, standard: lever }'],
      door: `width: 2'-6", height: 6'-8", hinge: left, swing: hall${facts}`,
    });

  test('stands in the schedule: function, stop, rating, undercut', () => {
    const { doors, hardware } = hung(', function: privacy, stop: wall, fire-rating: 20 min, undercut: 3/4"');
    expect(doors[0]).toMatchObject({
      function: 'privacy',
      stop: 'wall',
      fireRating: '20 min',
      undercut: fromInches(0.75),
      // 80" is over 60" and not over 90".
      hinges: { count: 3 },
    });
    expect(hardware).toMatchObject([{ set: 'H1', function: 'privacy', leaves: 'single' }]);
  });

  test('a pair has twice the hinges, and a set of its own', () => {
    const { doors, hardware } = hung(', function: passage, operation: double');
    expect(doors[0]?.hinges?.count).toBe(6);
    expect(hardware).toMatchObject([{ function: 'passage', leaves: 'pair' }]);
  });

  test('a pocket door has no hinges', () => {
    const [row] = twoRooms({ study: [door], door: `width: 2'-6", height: 6'-8", operation: pocket` }).doors;
    expect(row).not.toHaveProperty('hinges');
  });

  test('flush in the wall, it has no casing', () => {
    const { doors } = hung(', flush: true');
    expect(doors[0]?.isFlush).toBe(true);
  });
});
