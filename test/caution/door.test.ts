import { describe, expect, test } from 'vitest';
import type { Caution, RoomView } from '../../src/core/caution/index.js';
import type { OpeningMeasure } from '../../src/core/model/index.js';
import { category, len, opening, option, room, seenBy, selection, wall } from './house.js';

const doors = category(['rough-height', 'jamb'], { slug: 'door', layer: 'fixture', trade: 'joiner' });
const leaf = {
  height: `6'-8"`,
  widths: [`2'-6"`, `3'-0"`],
  'rough-width': '2"',
  'rough-height': '2 1/2"',
  jamb: '4 9/16"',
};
const door = (attributes: Record<string, string | readonly string[]> = leaf) =>
  selection(['D1'], doors, option(attributes));

/** A wall ten feet long under a slope: `low` at the left end, `high` at the right. */
function sloped(low: string, high: string): ReturnType<typeof wall> {
  const top = [
    { along: len('0"'), height: len(low) },
    { along: len(`10'`), height: len(high) },
  ];
  return wall('north', { top });
}

describe('door head against ceiling and header', () => {
  // 6'-8" and 2 1/2" rough, 3 1/2" header, 3" plates: 7'-5".
  test.each([
    [`7'-4 15/16"`, 1],
    [`7'-5"`, 0],
    [`7'-5 1/16"`, 0],
  ])('under a level ceiling of %s: %i', (height, count) => {
    const measure = { openings: [opening()], walls: [sloped(height, height)] };
    expect(seenBy('door-under-slope', room({ selections: [door()], measure }))).toHaveLength(count);
  });

  test('the lowest point over the door counts, not the middle and not the rest of the wall', () => {
    // One foot in ten: a foot from the corner it is 1.2" higher, 7'-3.95"; at the far edge of the door 7'-6.95".
    const measure = { openings: [opening()], walls: [sloped(`7'-2 3/4"`, `8'-2 3/4"`)] };
    expect(seenBy('door-under-slope', room({ selections: [door()], measure }))[0]?.seen).toContain(
      'is at 7\'-3 15/16"',
    );
    const clear = { openings: [opening()], walls: [sloped(`7'-4"`, `8'-4"`)] };
    expect(seenBy('door-under-slope', room({ selections: [door()], measure: clear }))).toHaveLength(0);
  });

  test('a raked head that follows the slope has the same room over all of it', () => {
    // The ceiling rises 3" over the door as its head does, from 6'-5" to 6'-8": 8.2" and 9.2" are left.
    const seen = (low: string, high: string, shape?: OpeningMeasure['shape']) => {
      const measure = { openings: [opening(shape && { shape })], walls: [sloped(low, high)] };
      return seenBy('door-under-slope', room({ selections: [door()], measure }));
    };
    const shape = { is: 'rake', low: 'left', to: len(`6'-5"`) } as const;
    expect(seen(`7'`, `8'`, shape)[0]?.seen).toMatch(
      /raked, 6'-5" at the left; the ceiling of .* down to 8 3\/16" above/u,
    );
    expect(seen(`7'-1"`, `8'-1"`, shape)).toHaveLength(0);
    expect(seen(`7'-1"`, `8'-1"`)).toHaveLength(1);
  });

  test('a cased opening is recorded as framed: 6\'-8" and 6 1/2" is 7\'-2 1/2"', () => {
    const cased = (height: string) => {
      const measure = { openings: [opening({ kind: 'cased' })], walls: [sloped(height, height)] };
      return seenBy('door-under-slope', room({ measure }));
    };
    expect(cased(`7'-2 7/16"`)).toHaveLength(1);
    expect(cased(`7'-2 1/2"`)).toHaveLength(0);
  });

  test('where no wall stands, and at windows, there is nothing to see', () => {
    const low = { top: sloped(`7'`, `7'`).top };
    const open = { openings: [opening()], walls: [wall('north', { ...low, openTo: 'beside' })] };
    expect(seenBy('door-under-slope', room({ measure: open }))).toHaveLength(0);
    const window = { openings: [opening({ kind: 'window' })], walls: [wall('north', low)] };
    expect(seenBy('door-under-slope', room({ measure: window }))).toHaveLength(0);
  });
});

describe('what is framed against the door', () => {
  test.each([
    [`6'-7 15/16"`, 1],
    [`6'-8"`, 0],
    [`6'-8 1/16"`, 1],
  ])('an opening %s high: %i', (height, count) => {
    const measure = { openings: [opening({ height: len(height) })] };
    expect(seenBy('rough-opening', room({ selections: [door()], measure }))).toHaveLength(count);
  });

  test('a width that is not made', () => {
    const wide = (width: string) =>
      seenBy('rough-opening', room({ selections: [door()], measure: { openings: [opening({ width: len(width) })] } }));
    expect(wide(`3'-0"`)).toHaveLength(0);
    expect(wide(`2'-8"`)).toHaveLength(1);
  });

  test('what is not recorded is asked about', () => {
    const selections = [door({ height: `6'-8"` })];
    const [caution] = seenBy('rough-opening', room({ selections, measure: { openings: [opening()] } }));
    expect(caution?.seen).toContain('not recorded: widths made, rough opening');
  });
});

/** A door between two rooms with board on both sides and what the sound wall adds. */
function between(near: string, far: string, adds?: string): readonly RoomView[] {
  const boards = category(['board-thickness'], { slug: 'board', layer: 'substrate' });
  const sound = category(['stc', 'wall-adds'], { slug: 'sound', layer: 'insulation' });
  const board = (place: string, thickness: string) =>
    selection([place], boards, option({ 'board-thickness': thickness }));
  const more = adds === undefined ? [] : [selection(['north'], sound, option({ stc: 50, 'wall-adds': adds }))];
  return [
    room({ selections: [door(), board('north', near), ...more], measure: { openings: [opening()] } }),
    room({
      slug: 'beside',
      selections: [board('south', far)],
      measure: { openings: [opening({ to: 'room', own: false, wall: 'south' })], walls: [wall('south')] },
    }),
  ];
}

describe('jamb against wall', () => {
  // 3 1/2" of stud and both boards against a jamb of 4 9/16".
  test.each([
    ['1/2"', '1/2"', 0],
    ['1/2"', '5/8"', 0],
    ['5/8"', '9/16"', 0],
    ['5/8"', '5/8"', 1],
    ['1/2"', '7/16"', 0],
    ['7/16"', '7/16"', 1],
  ])('%s and %s of board: %i', (near, far, count) => {
    expect(seenBy('jamb-depth', between(near, far))).toHaveLength(count);
  });

  test('what a sound wall adds counts', () => {
    expect(seenBy('jamb-depth', between('1/2"', '1/2"', '3/16"'))).toHaveLength(0);
    expect(seenBy('jamb-depth', between('1/2"', '1/2"', '1/4"'))).toHaveLength(1);
  });

  test('a jamb of unknown depth is asked about', () => {
    const rest = Object.fromEntries(Object.entries(leaf).filter(([name]) => name !== 'jamb'));
    expect(seenBy('jamb-depth', room({ selections: [door(rest)] }))[0]?.seen).toContain('not recorded');
  });
});

describe('floors that meet at a door', () => {
  const floors = category(['build-up'], { slug: 'floor', schedule: 'floor' });
  const meet = (
    here: string | undefined,
    there: string,
    more: Parameters<typeof opening>[0] = {},
  ): readonly Caution[] => {
    const floor = (height: string | undefined) =>
      selection(['floor'], floors, option(height === undefined ? {} : { 'build-up': height }), {
        id: `floor ${height}`,
      });
    return seenBy('floor-build-up', [
      room({ selections: [floor(here)], measure: { openings: [opening(more)] } }),
      room({ slug: 'beside', selections: [floor(there)] }),
    ]);
  };

  test.each([
    ['15/16"', 0],
    ['1"', 0],
    ['1 1/16"', 1],
  ])('3/4" against %s: %i', (there, count) => expect(meet('3/4"', there)).toHaveLength(count));

  test('either may be the higher, and a window parts them', () => {
    expect(meet('1 1/16"', '3/4"')).toHaveLength(1);
    expect(meet('3/4"', '3"', { sill: len('24"'), kind: 'window' })).toHaveLength(0);
  });

  test('where one is not recorded it is asked about, once at that floor', () => {
    const [caution, ...more] = meet(undefined, '3/4"');
    expect(caution?.id).toBe('floor-build-up/room/floor');
    expect(more).toHaveLength(0);
  });

  test('an open side is a meeting too, once', () => {
    const floor = (height: string) => [selection(['floor'], floors, option({ 'build-up': height }))];
    const pair = [
      room({ slug: 'a', selections: floor('3/4"'), measure: { walls: [wall('north', { openTo: 'b' })] } }),
      room({ slug: 'b', selections: floor('2"'), measure: { walls: [wall('south', { openTo: 'a' })] } }),
    ];
    expect(seenBy('floor-build-up', pair).map(({ id }) => id)).toEqual(['floor-build-up/a/north']);
  });
});

describe('lock of a bath or bedroom', () => {
  const lock = (
    use: RoomView['use'],
    beside: RoomView['use'],
    locks?: 'passage' | 'privacy' | 'dummy' | 'entry',
  ): readonly Caution[] => {
    const at = (to: string) => opening({ to, ...(locks && { door: { function: locks } }) });
    return seenBy('privacy-at-door', [
      room({ slug: 'one', use, measure: { openings: [at('other')] } }),
      room({ slug: 'other', use: beside, measure: { openings: [{ ...at('one'), own: false }] } }),
    ]);
  };

  test.each([
    ['bath', 'hall', 'passage', 1],
    ['bath', 'hall', 'dummy', 1],
    ['bath', 'hall', 'privacy', 0],
    ['powder', 'mudroom', 'passage', 1],
    ['bedroom', 'hall', 'passage', 1],
    ['bedroom', 'closet', 'passage', 0],
    ['bath', 'closet', 'passage', 0],
    ['bedroom', 'bath', 'passage', 1],
    ['study', 'hall', 'passage', 0],
  ] as const)('of a %s to a %s, as %s: %i', (use, beside, locks, count) => {
    expect(lock(use, beside, locks)).toHaveLength(count);
  });

  test.each([
    ['bath', 'hall', 1],
    ['bedroom', 'hall', 1],
    ['bedroom', 'bath', 1],
    ['bedroom', 'closet', 0],
    ['study', 'hall', 0],
  ] as const)('of a %s to a %s, its function not recorded: %i', (use, beside, count) => {
    const cautions = lock(use, beside);
    expect(cautions).toHaveLength(count);
    for (const { seen } of cautions) expect(seen).toContain('whether it locks from inside is not told');
  });
});
