import { describe, expect, test } from 'vitest';
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
