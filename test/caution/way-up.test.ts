import { describe, expect, test } from 'vitest';
import type { Caution, RoomView } from '../../src/core/caution/index.js';
import type { Area } from '../../src/base/units/index.js';
import { feature, len, room, seenBy, surface } from './house.js';

const levels = ['main', 'upper'];

interface Flight {
  readonly rise?: string;
  readonly going?: string;
  readonly width?: string;
}

/** Ten risers: a rise of 77 1/2" is ten risers of 7 3/4". */
function stair(
  id: string,
  { rise = '77 1/2"', going = '10"', width = '36"' }: Flight,
): RoomView['measure']['features'][number] {
  return feature('stair', id, { rise: len(rise), risers: 10, going: len(going), width: len(width), rails: 0 });
}

function up(flights: readonly Flight[], area = 300, use: RoomView['use'] = 'gallery'): readonly Caution[] {
  const features = flights.map((flight, index) => stair(`stair-${index}`, flight));
  const above = room({ slug: 'loft', level: 'upper', use, measure: { floor: surface('floor', area) } });
  return seenBy('only-way-up', [room({ measure: { features } }), above], { levels });
}

describe('ladder or stair as the only way up', () => {
  test.each([
    ['77 3/8"', 0],
    ['77 1/2"', 0],
    ['77 5/8"', 1],
  ])('ten risers in %s: %i', (rise, count) => expect(up([{ rise }])).toHaveLength(count));

  test.each([
    ['9 15/16"', 1],
    ['10"', 0],
    ['10 1/16"', 0],
  ])('a going of %s: %i', (going, count) => expect(up([{ going }])).toHaveLength(count));

  test.each([
    ['35 15/16"', 1],
    ['36"', 0],
    ['36 1/16"', 0],
  ])('a width of %s: %i', (width, count) => expect(up([{ width }])).toHaveLength(count));

  test.each([
    [199.9, 0],
    [200, 0],
    [200.1, 1],
  ])('a ladder to %d sq ft: %i', (area, count) => expect(up([{ going: '5"' }], area)).toHaveLength(count));

  test('a ladder to a small bath is a caution all the same', () => {
    expect(up([{ going: '5"' }], 60, 'bath')).toHaveLength(1);
  });

  test('a ladder beside a stair is an extra', () => {
    expect(up([{ going: '5"' }, {}])).toHaveLength(0);
    expect(up([{ going: '5"' }, { width: '30"' }])).toHaveLength(2);
  });

  test('no stair at all is not passed over', () => {
    const [caution] = up([]);
    expect(caution?.seen).toContain('No stair up to this level is recorded');
    expect(caution?.room).toBe('loft');
  });

  test('a house on one level needs none', () => {
    expect(seenBy('only-way-up', room())).toHaveLength(0);
  });
});

describe('headroom', () => {
  const under = (sevenFeet: number, fiveFeet: number, use: RoomView['use'] = 'gallery') =>
    seenBy(
      'headroom',
      room({ use, measure: { headroom: { sevenFeet: sevenFeet as Area, fiveFeet: fiveFeet as Area } } }),
    );

  test.each([
    [49.9, 1],
    [50, 0],
    [50.1, 0],
  ])('%d of 100 sq ft under seven feet: %i', (seven, count) => expect(under(seven, 100)).toHaveLength(count));

  test('floor under less than five feet does not count', () => {
    // 60 of 120 sq ft is half of what counts, although the room has more floor.
    expect(under(60, 120)).toHaveLength(0);
    expect(under(0, 0)).toHaveLength(0);
  });

  test('a room that is nowhere five feet high is seen in a bedroom, not in a closet', () => {
    expect(under(10, 100, 'bedroom')).toHaveLength(1);
    expect(under(10, 100, 'closet')).toHaveLength(0);
  });
});
