import { describe, expect, test } from 'vitest';
import { openingLine } from '../../src/core/caution/rule/glazing.js';
import type { Length } from '../../src/base/units/index.js';
import { measured } from '../measure/measured.js';
import { flat } from '../measure/room-record.js';
import { len, opening, room, seenBy, wall } from './house.js';

/** A window 30" wide and 4' high whose sill is so far above the rest of the room's floor, and the floor before it at another height. */
const window = (sill: string, floor: string) =>
  opening({
    mark: 'W1',
    kind: 'window',
    to: 'outside',
    at: len(`5'`),
    width: len(`30"`),
    height: len(`4'`),
    sill: len(sill),
    floor: len(floor),
  });
const seen = (rule: Parameters<typeof seenBy>[0], sill: string, floor: string, more: object = {}): readonly string[] =>
  seenBy(rule, room({ ...more, measure: { openings: [opening(), window(sill, floor)], walls: [wall('north')] } })).map(
    ({ seen: what }) => what,
  );

describe('a window is low or high over the floor that is before it', () => {
  const high = { aboveGround: len(`12'`) };

  test('on a dais of 7" a sill of 28" is 21" over the floor: low', () => {
    expect(seen('low-window', `28"`, `7"`, high)[0]).toContain(`its sill at 1'-9"`);
    expect(seen('low-window', `28"`, `0"`, high)).toEqual([]);
  });

  test('its height above the ground is that of the sill', () => {
    expect(seen('low-window', `28"`, `7"`, high)[0]).toContain(`14'-4" above the ground`);
  });

  test("glass beside a door in a pit of 1' is not low at 4'-6\"", () => {
    expect(seen('glazing-at-door', `4'-6"`, `0"`)).toHaveLength(1);
    expect(seen('glazing-at-door', `4'-6"`, `-1'`)).toEqual([]);
  });
});

test('a window in an arc lies on the arc, not on the straight line between its ends', () => {
  const spots = [
    [`0'`, `0'`],
    [`0'`, `10'`],
    [`12'`, `10'`],
    [`12'`, `0'`],
  ].map(([x = '', y = '']) => ({ x: len(x), y: len(y) }));
  const names = ['west', 'north', 'east', 'south'];
  const corners = spots.map((at, index) => ({
    at,
    wall: names[index] ?? '',
    ...(names[index] === 'north' && { arc: { bows: 'out', rise: len(`6'`) } as const }),
  }));
  const { walls } = measured({ shape: { by: 'outline', corners }, ceiling: flat(`9'`) });
  const run = walls.find(({ id }) => id === 'north')?.run ?? len(`0'`);
  const [spot] = openingLine(room({ measure: { walls } }), opening({ wall: 'north', at: (run / 6) as Length })) ?? [];
  // A sixth of the half circle is 30°: 6 − 6 cos 30° east, 10 + 6 sin 30° north.
  expect(spot?.x).toBeCloseTo(6 - 6 * Math.cos(Math.PI / 6), 1);
  expect(spot?.y).toBeCloseTo(13, 1);
});
