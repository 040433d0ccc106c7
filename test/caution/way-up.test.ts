import { describe, expect, test } from 'vitest';
import type { Caution, RoomView } from '../../src/core/caution/index.js';
import type { Area } from '../../src/base/units/index.js';
import { feature, len, opening, room, seenBy, surface, wall } from './house.js';

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

function up(
  flights: readonly Flight[],
  area = 300,
  use: RoomView['use'] = 'gallery',
  rule = 'only-way-up',
): readonly Caution[] {
  const features = flights.map((flight, index) => stair(`stair-${index}`, flight));
  const above = room({ slug: 'loft', level: 'upper', use, measure: { floor: surface('floor', area) } });
  return seenBy(rule, [room({ measure: { features } }), above], { levels });
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

  test('no stair at all is not passed over, and called what it is: no ladder, no steep stair', () => {
    const [caution] = up([], 300, 'gallery', 'way-up');
    expect(caution?.seen).toContain('No stair up to this level is recorded');
    expect(caution).toMatchObject({ room: 'loft', title: 'No way up is recorded' });
    expect(up([])).toEqual([]);
    expect(up([{ going: '5"' }], 300, 'gallery', 'way-up')).toEqual([]);
  });

  test('a house on one level needs none', () => {
    expect(['only-way-up', 'way-up'].flatMap((rule) => seenBy(rule, room()))).toHaveLength(0);
  });
});

describe('a loft and the stair that leads to it', () => {
  const loft = (slug: string, more: Parameters<typeof room>[0] = {}): RoomView =>
    room({ slug, level: 'upper', use: 'gallery', measure: { floor: surface('floor', 300) }, ...more });
  const hall = (flight: Flight & { readonly to?: string }, more: Parameters<typeof room>[0] = {}): RoomView => {
    const { to, ...sizes } = flight;
    const one = stair('stair', sizes);
    const data = { ...(one.data as object), ...(to !== undefined && { to }) };
    return room({ slug: 'hall', measure: { features: [{ ...one, data }] }, ...more });
  };
  const seen = (rooms: readonly RoomView[]): readonly string[] =>
    ['only-way-up', 'way-up']
      .flatMap((rule) => seenBy(rule, rooms, { levels }))
      .map((caution) => `${caution.room}: ${caution.seen}`);

  test('a stair to one loft does not answer for another', () => {
    expect(seen([hall({ to: 'east' }), loft('east'), loft('west')])).toEqual([
      'west: No stair up to west is recorded; it holds 300 sq ft of floor.',
    ]);
  });

  test('a stair in the house does not make the ladder to another loft an extra', () => {
    const ladder = room({ slug: 'study', measure: { features: [stair('ladder', { going: '5"' })] } });
    const open = [wall('north', { openTo: 'study' })];
    const west = loft('west', { measure: { floor: surface('floor', 300), walls: open } });
    expect(seen([hall({ to: 'east' }), ladder, loft('east'), west])).toEqual([
      'study: ladder is the only way up to 300 sq ft of floor in west, and it has a going of 5".',
    ]);
  });

  test('where a stair leads is read from the open side, and asked for where nothing says it', () => {
    const open = { measure: { floor: surface('floor', 300), walls: [wall('north', { openTo: 'hall' })] } };
    expect(seen([hall({}), loft('east', open)])).toEqual([]);
    expect(seen([hall({}), loft('east', open), loft('west')])).toEqual([
      'west: No stair up to west is recorded; it holds 300 sq ft of floor.',
    ]);
    expect(seen([hall({}), loft('east'), loft('west')])).toEqual([
      'east: No stair up to east is recorded; it holds 300 sq ft of floor. Where stair leads is not recorded: write to: with the room at the head of it.',
      'west: No stair up to west is recorded; it holds 300 sq ft of floor. Where stair leads is not recorded: write to: with the room at the head of it.',
    ]);
  });

  test('rooms that one can walk between are one floor', () => {
    const door = opening({ to: 'west' });
    const east = loft('east', { measure: { floor: surface('floor', 300), openings: [door] } });
    expect(seen([hall({ to: 'west' }), east, loft('west')])).toEqual([]);
    const window = opening({ to: 'west', kind: 'window', sill: len(`3'`) });
    const apart = loft('east', { measure: { floor: surface('floor', 300), openings: [window] } });
    expect(seen([hall({ to: 'west' }), apart, loft('west')])).toHaveLength(1);
  });

  test('the hole of the stair is no floor: 230 sq ft with a well of 40 may have a ladder alone', () => {
    const well = { what: 'Well', of: 'Well', kind: 'void', area: 40 as Area } as const;
    const floor = { ...surface('floor', 230), deductions: [well] };
    expect(seen([hall({ going: '5"' }), loft('east', { measure: { floor } })])).toEqual([]);
    expect(seen([hall({ going: '5"' }), loft('east', { measure: { floor: surface('floor', 230) } })])).toHaveLength(1);
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
