import { describe, expect, test } from 'vitest';
import { fromFeet } from '../../../src/base/units/index.js';
import { headings } from '../../../src/base/geometry/index.js';
import { problemsOf } from '../../measure/measured.js';
import type { RoomText } from '../../measure/room-record.js';
import { flat, plain } from './second-way/plain.js';
import { recorded, rectangle, type Spot } from './second-way/plan.js';

/** What does not fit, told with its figures, worked by hand. No publication is behind it. */

describe('what is told of outlines, by hand', () => {
  const shape = plain(true, () => ({}));
  const part = (name: string, over: readonly Spot[], height: number) => ({
    name,
    form: flat(height),
    over: over.map(recorded),
  });
  const told = (record: RoomText): readonly string[] => problemsOf(record).map(({ message }) => message);

  test('ceiling parts that leave something, or take the same twice', () => {
    const ceiling = [part('West', rectangle(0, 0, 6, 12), 9), part('East', rectangle(10, 0, 16, 9), 9)];
    // 4 × 12 between them and 6 × 3 in the north-east.
    expect(told({ shape, ceiling })).toEqual([
      `the ceiling parts leave 66 sq ft of 192 sq ft uncovered, within x 6'-0" to 16'-0", y 0" to 12'-0"`,
    ]);
    const twice = [part('West', rectangle(0, 0, 9, 12), 9), part('East', rectangle(7.5, 0, 16, 12), 9)];
    expect(told({ shape, ceiling: twice })).toEqual(["ceiling parts 'West' and 'East' overlap by 18 sq ft"]);
  });

  test('places are told from the south-west corner, wherever that is', () => {
    const corners = rectangle(-30, 20, -14, 32).map((at, index) => ({ at: recorded(at), wall: `w${index}` }));
    const ceiling = [part('West', rectangle(-30, 20, -20, 32), 9), part('East', rectangle(-20, 20, -14, 29.5), 9)];
    expect(told({ shape: { by: 'outline', corners }, ceiling })).toEqual([
      `the ceiling parts leave 15 sq ft of 192 sq ft uncovered, within x 10'-0" to 16'-0", y 9'-6" to 12'-0"`,
    ]);
  });

  test('outlines that cross themselves, and where', () => {
    const bow = [
      { x: 2, y: 3 },
      { x: 8, y: 9 },
      { x: 8, y: 3 },
      { x: 2, y: 9 },
    ];
    const where = `corners 1 to 2 and 3 to 4 meet x 3'-0", y 3'-0" from its south-west`;
    const ceiling = { form: 'flat', height: fromFeet(9) } as const;
    expect(told({ shape, ceiling, voids: [{ name: 'Well', corners: bow.map(recorded) }] })[0]).toContain(where);
    expect(
      told({ shape, ceiling, floor: [{ name: 'Dais', over: bow.map(recorded), height: fromFeet(1) }] })[0],
    ).toContain(where);
    expect(told({ shape, ceiling: [part('West', bow, 9)] })[0]).toContain(where);
    const walls = bow.map((at, index) => ({ at: recorded(at), wall: `w${index + 1}` }));
    // 3 × √2 from either end, to a sixteenth: 4'-2 15/16".
    expect(told({ shape: { by: 'outline', corners: walls }, ceiling })).toEqual([
      `walls 'w1' and 'w3' meet or cross 4'-2 15/16" from the start of 'w1'`,
    ]);
  });

  test('a flat that cuts nothing, a ceiling under the floor, a part of the room behind a wall that leans', () => {
    const cut = (at: number) =>
      told({
        shape,
        ceiling: {
          form: { form: 'shed', low: headings.north, plate: fromFeet(8), pitch: { rise: 3, run: 12 } },
          cut: fromFeet(at),
        },
      });
    expect([cut(8.5), cut(8), cut(7)].map((list) => list.length)).toEqual([0, 1, 1]);
    expect(cut(7)[0]).toContain(`the flat at 7'-0" cuts the ceiling at or below its plate at 8'-0"`);
    // Down from 8 ft over 12 ft at 1 in 1.
    const steep = {
      form: 'planes',
      planes: [
        [
          [0, 0, 8],
          [16, 0, 8],
          [0, 12, -4],
        ].map(([x = 0, y = 0, height = 0]) => ({ ...recorded({ x, y }), height: fromFeet(height) })),
      ],
    } as const;
    expect(told({ shape, ceiling: steep })).toEqual([`the ceiling comes down to 4'-0" under the floor`]);
    const ell = [
      { x: 0, y: 0 },
      { x: 0, y: 12 },
      { x: 8, y: 12 },
      { x: 8, y: 6 },
      { x: 16, y: 6 },
      { x: 16, y: 0 },
    ].map((at, index) => ({
      at: recorded(at),
      wall: `w${index + 1}`,
      ...(index === 3 && { leans: { by: fromFeet(1), at: fromFeet(8) } }),
    }));
    expect(told({ shape: { by: 'outline', corners: ell }, ceiling: flat(9) })).toEqual([
      "wall 'w4' leans into the room, but part of the room lies behind its line",
    ]);
  });

  test('features that stand outside of the room, and skylights that take the same of the ceiling', () => {
    const breast = {
      kind: 'chimney-breast',
      id: 'breast',
      name: 'Breast',
      wall: 'north',
      at: `2'`,
      width: `6'`,
      depth: `13'`,
    };
    expect(told({ shape, ceiling: flat(9), features: [breast] })).toEqual([
      '6 sq ft of the 78 sq ft that Breast stands on lie outside the room',
    ]);
    const sky = (id: string, x: number) => ({
      kind: 'skylight',
      id,
      name: id,
      x: `${x}'`,
      y: `3'`,
      width: `4'`,
      length: `3'`,
      depth: `1'`,
    });
    // One foot of four by three.
    expect(told({ shape, ceiling: flat(9), features: [sky('One', 2), sky('Other', 5)] })).toEqual([
      'Other and One take the same 3 sq ft of the ceiling, in plan',
    ]);
    expect(told({ shape, ceiling: flat(9), features: [sky('One', 2), sky('Other', 6)] })).toEqual([]);
  });
});
