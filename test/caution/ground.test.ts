import { describe, expect, test } from 'vitest';
import { loadHouse } from '../../src/disk/load/index.js';
import { len, opening, room, seenBy } from './house.js';

/** A low window of a room whose floor is so far above the ground outside, where that is recorded. */
function seen(level: string, ground: string | undefined, sill = '20"'): readonly string[] {
  const window = opening({ mark: 'W1', kind: 'window', to: 'outside', sill: len(sill) });
  const of = room({
    level,
    measure: { openings: [window] },
    ...(ground !== undefined && { aboveGround: len(ground) }),
  });
  return seenBy('low-window', of, { levels: ['main', 'upper'] }).map((caution) => caution.seen);
}

describe('a low window', () => {
  test.each([
    // Its sill is 72" above the ground at a floor of 52".
    ['main', '51 15/16"', 0],
    ['main', '52"', 0],
    ['main', '52 1/16"', 1],
    ['upper', '52"', 0],
    ['upper', '52 1/16"', 1],
    ['main', '-3\'-0"', 0],
    // Where the ground is not recorded, by the level.
    ['main', undefined, 0],
    ['upper', undefined, 1],
  ])('of the %s level, its floor %s above the ground: %i', (level, ground, count) => {
    expect(seen(level, ground)).toHaveLength(count);
  });

  test('says how high it is, or that it is not recorded', () => {
    expect(seen('main', `10'`)[0]).toContain('is 11\'-8" above the ground');
    expect(seen('upper', undefined)[0]).toContain(
      'How high it is above the ground and whether it opens is not recorded',
    );
  });

  test('of 24" is not low, however high above the ground', () => expect(seen('upper', `30'`, '24"')).toHaveLength(0));
});

test('the demo house records its levels above the ground', async () => {
  const { house } = await loadHouse('.');
  expect(house?.records.house.levels.map(({ aboveGround }) => aboveGround)).toEqual([len(`1'-6"`), len(`11'-10"`)]);
});
