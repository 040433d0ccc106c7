import { describe, expect, test } from 'vitest';
import { layOut, type Layout } from '../../../src/core/takeoff/layout/index.js';
import { fromInches, inches, printLength, type Length } from '../../../src/base/units/index.js';
import { boards, feetOf, rectangle, region, sheets } from './shapes.js';

/** Every case is worked by hand in its comment. */
describe('courses', () => {
  test('the remainder is shared by the first and the last', () => {
    // 10'-0" = 120"; 120 / 5.125 = 23.4: 24 courses; 22 full ones take 112.75", the other two 3 5/8" each.
    const { courses } = layOut(boards([rectangle(144, 120)]));
    expect(courses).toHaveLength(24);
    expect(widths({ courses })).toEqual(['3 5/8"', ...Array.from({ length: 22 }, () => '5 1/8"'), '3 5/8"']);
    expect(courses.filter((course) => course.ripped)).toHaveLength(2);
  });

  test('nothing is ripped where full courses come out even', () => {
    // 8 × 6" = 48".
    const layout = layOut(boards([rectangle(144, 48)], { face: fromInches(6) }));
    expect(widths(layout)).toEqual(Array.from({ length: 8 }, () => '6"'));
    expect(layout.courses.some((course) => course.ripped)).toBe(false);
  });

  test('full first where the last is wide enough, else shared', () => {
    // 51" = 8 × 6" + 3": the last course has half a face. 50" leaves 2", a sliver: (6 + 2) / 2 = 4" twice.
    const rules = { endCourses: 'full-first' } as const;
    const enough = layOut(boards([rectangle(144, 51)], { face: fromInches(6) }, rules));
    expect([widths(enough).at(0), widths(enough).at(-1)]).toEqual(['6"', '3"']);
    const sliver = layOut(boards([rectangle(144, 50)], { face: fromInches(6) }, rules));
    expect([widths(sliver).at(0), widths(sliver).at(-1)]).toEqual(['4"', '4"']);
  });

  test('a surface narrower than a face is one ripped course', () => {
    const { courses } = layOut(boards([rectangle(96, 4)]));
    expect(courses.map(({ width, ripped }) => [printLength(width), ripped])).toEqual([['4"', true]]);
  });

  test('the start line is the far edge of the first course', () => {
    const { startLines } = layOut(boards([rectangle(144, 120)]));
    expect(startLines.map(({ distance, from, to }) => [distance, from, to].map(printLength))).toEqual([
      ['3 5/8"', '0"', `12'-0"`],
    ]);
  });
});

describe('spans', () => {
  const face = { face: fromInches(6) };

  test('a hole parts the courses that it cuts through', () => {
    // A skylight 24" × 12" over courses 3 and 4 of 6.
    const skylight: [number, number][] = [
      [60, 12],
      [84, 12],
      [84, 24],
      [60, 24],
    ];
    const layout = layOut(boards([region(corners(144, 36), [skylight])], face));
    expect(reaches(layout)).toEqual([
      [[0, 144]],
      [[0, 144]],
      [
        [0, 60],
        [84, 144],
      ],
      [
        [0, 60],
        [84, 144],
      ],
      [[0, 144]],
      [[0, 144]],
    ]);
  });

  test('a board runs past a notch that takes part of its width', () => {
    // The hole begins 3" up the third course and ends 3" up the fourth: both boards are notched, not parted.
    const outlet: [number, number][] = [
      [60, 15],
      [84, 15],
      [84, 21],
      [60, 21],
    ];
    const layout = layOut(boards([region(corners(144, 36), [outlet])], face));
    expect(reaches(layout)).toEqual(Array.from({ length: 6 }, () => [[0, 144]]));
  });

  test('at a slanted edge a board reaches its far corner', () => {
    // Right triangle 60" × 30": the slope takes 12" from each course of 6".
    const layout = layOut(
      boards(
        [
          region([
            [0, 0],
            [60, 0],
            [0, 30],
          ]),
        ],
        face,
      ),
    );
    expect(reaches(layout)).toEqual([[[0, 60]], [[0, 48]], [[0, 36]], [[0, 24]], [[0, 12]]]);
  });

  test('courses run through the parts of one plane, or start anew on each slope', () => {
    const parts = [
      rectangle(60, 12),
      region([
        [96, 0],
        [156, 0],
        [156, 18],
        [96, 18],
      ]),
    ];
    const through = layOut(boards(parts, face, { grid: 'through' }));
    expect(reaches(through)).toEqual([
      [
        [0, 60],
        [96, 156],
      ],
      [
        [0, 60],
        [96, 156],
      ],
      [[96, 156]],
    ]);
    const each = layOut(boards(parts, face));
    expect(each.courses.map(({ region: of, number }) => [of, number])).toEqual([
      [0, 1],
      [0, 2],
      [1, 1],
      [1, 2],
      [1, 3],
    ]);
  });
});

test('the last nanometres of an unfolded slope make no course and no cut', () => {
  // 8 courses of 6" and 12' of run, each a nanometre over.
  const clean = rectangle(144, 48);
  const over = {
    ...clean,
    outline: clean.outline.map(({ x, y }) => ({ x: (x + 1) as Length, y: (y - (y > 0 ? -1 : 1)) as Length })),
  };
  const layout = layOut(boards([over], { face: fromInches(6) }));
  expect(layout.courses.map(({ width }) => printLength(width))).toEqual(Array<string>(8).fill('6"'));
  expect(bought(layout)).toEqual({ '12\'-0"': 8 });
});

describe('what to buy', () => {
  test('one board for each course where a length fits', () => {
    const layout = layOut(boards([rectangle(144, 48)], { face: fromInches(6) }));
    expect(bought(layout)).toEqual({ '12\'-0"': 8 });
    expect(layout.waste).toBeCloseTo(0, 12);
  });

  test('the length that is cut without waste is chosen', () => {
    // 4'-11" three times and two cuts make 14'-9 1/4": one of 16' for three courses; 12' holds two, 8' one. 6 courses:
    // 2 @ 16' = 32', against 3 @ 12' = 36'. Too short to be joined: twice the least piece is 5'.
    const layout = layOut(
      boards([rectangle(59, 36)], { face: fromInches(6), stock: feetOf(8, 12, 16) }, { leastPiece: fromInches(30) }),
    );
    expect(bought(layout)).toEqual({ '16\'-0"': 2 });
    // (192 − 3 × 59 − 3 × 1/8) = 14 5/8" left of each.
    expect(layout.boards.map(({ offcuts }) => offcuts.map(({ length }) => printLength(length)))).toEqual([
      [`1'-2 5/8"`],
      [`1'-2 5/8"`],
    ]);
  });

  test('without off-cuts every piece is a board of its own', () => {
    const rules = { reuseOffcuts: false, joints: 'long-spans' } as const;
    const layout = layOut(boards([rectangle(59, 36)], { face: fromInches(6), stock: feetOf(8, 12, 16) }, rules));
    expect(bought(layout)).toEqual({ '8\'-0"': 6 });
  });

  test('the saw takes its part: two times 5 feet do not come out of 10', () => {
    const short = { face: fromInches(6), stock: feetOf(10) };
    const sawn = layOut(boards([rectangle(60, 12)], short, { leastPiece: fromInches(36) }));
    expect(bought(sawn)).toEqual({ '10\'-0"': 2 });
    const scored = layOut(
      boards([rectangle(60, 12)], { ...short, kerf: fromInches(0) }, { leastPiece: fromInches(36) }),
    );
    expect(bought(scored)).toEqual({ '10\'-0"': 1 });
  });

  test('the off-cut of one course begins the next', () => {
    // Four courses of 20' from 16' boards, no kerf: 16 + 4 | 12 + 8 | 8 + 12 | 4 + 16: 5 boards, nothing left.
    const layout = layOut(
      boards([rectangle(240, 24)], { face: fromInches(6), stock: feetOf(16), kerf: fromInches(0) }),
    );
    expect(bought(layout)).toEqual({ '16\'-0"': 5 });
    expect(layout.boards.flatMap(({ offcuts }) => offcuts)).toEqual([]);
    expect(layout.departures).toEqual([]);
  });

  test('a strip left beside a ripped sheet is used where sheets allow it, not with matched boards', () => {
    // 24' × 2' of one ripped course: two 12' strips come from one 12' sheet.
    const strips = layOut(sheets([rectangle(288, 24)]));
    expect(bought(strips)).toEqual({ '12\'-0"': 1 });
    expect(strips.waste).toBeCloseTo(0, 12);
    const edges = layOut(sheets([rectangle(288, 24)], {}, { reuseRips: false }));
    expect(bought(edges)).toEqual({ '12\'-0"': 2 });
  });

  test('a ceiling of 14 by 12 feet in sheets', () => {
    // Three courses of 14' = 42' of sheet; 8', 10', 12' sum to even feet: 42' exactly, if joints 4' apart allow.
    const layout = layOut(sheets([rectangle(168, 144)]));
    expect(inches(layout.bought) / 12).toBe(42);
    expect(layout.departures).toEqual([]);
  });

  test('waste counts what is not on the surface', () => {
    // A triangle of 60" × 30" is 900 sq in; its courses need 60, 48, 36, 24 and 12".
    const triangle = region([
      [0, 0],
      [60, 0],
      [0, 30],
    ]);
    const given = { face: fromInches(6), stock: feetOf(8), kerf: fromInches(0) };
    const layout = layOut(boards([triangle], given, { joints: 'long-spans' }));
    // Without a kerf 60 + 36 fill one board of 96", and 48 + 24 + 12 leave 12" of another.
    expect(bought(layout)).toEqual({ '8\'-0"': 2 });
    expect(layout.waste).toBeCloseTo(1 - 900 / (192 * 6), 12);
  });
});

describe('rules that cannot be kept, and nothing to lay', () => {
  test('close joints are named', () => {
    // 9' from 8' boards only, joints 8' apart: the second course has no place for one.
    const layout = layOut(
      boards([rectangle(108, 12)], { face: fromInches(6), stock: feetOf(8) }, { stagger: fromInches(96) }),
    );
    expect(layout.departures.map(({ kind, course }) => [kind, course])).toEqual([['stagger', 1]]);
    expect(layout.departures[0]?.words).toMatch(
      /^course 2: a joint \S+ ?\S* from one in the course before, rule 8'-0"$/u,
    );
  });

  test.each([
    ['no stock length is given', { stock: [] }],
    ['no face width is given', { face: fromInches(0) }],
    ['there is no surface', { regions: [] }],
  ])('%s', (why, given) => {
    const layout = layOut(boards([rectangle(144, 48)], given));
    expect(layout.notLaid).toBe(why);
    expect([layout.courses, layout.boards, layout.stock, layout.bought, layout.waste, layout.gap]).toEqual([
      [],
      [],
      [],
      0,
      0,
      0,
    ]);
  });
});

test('joints land on framing where the rule asks', () => {
  const framing = { spacing: fromInches(16), from: fromInches(8) };
  const layout = layOut(boards([rectangle(360, 60)], {}, { framing }));
  expect(layout.departures).toEqual([]);
  const joints = layout.courses.flatMap(({ pieces }) => pieces.slice(1).map(({ start }) => inches(start)));
  expect(joints.length).toBeGreaterThan(10);
  expect(joints.filter((joint) => (joint - 8) % 16 !== 0)).toEqual([]);
});

test('planes of one layout have directions of their own and share the stock', () => {
  const regions = [
    { ...rectangle(96, 24), plane: 0 },
    {
      ...region([
        [200, 0],
        [296, 0],
        [296, 24],
        [200, 24],
      ]),
      plane: 0,
    },
    { ...rectangle(24, 96), plane: 1, direction: 90 },
  ];
  const layout = layOut(boards(regions, { face: fromInches(6), stock: feetOf(8) }));
  expect(layout.courses.map(({ region: of, pieces }) => [of, pieces.length])).toEqual([
    [0, 2],
    [0, 2],
    [0, 2],
    [0, 2],
    [1, 1],
    [1, 1],
    [1, 1],
    [1, 1],
  ]);
  expect(bought(layout)).toEqual({ '8\'-0"': 12 });
  expect(layout.waste).toBeCloseTo(0, 12);
});

function corners(width: number, height: number): [number, number][] {
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}

function widths({ courses }: Pick<Layout, 'courses'>): readonly string[] {
  return courses.map(({ width }) => printLength(width));
}

function bought({ stock }: Layout): Readonly<Record<string, number>> {
  return Object.fromEntries(stock.map(({ length, count }) => [printLength(length), count]));
}

/** Inches from and to that the pieces of each course cover without a gap. */
function reaches({ courses }: Layout): readonly (readonly (readonly number[])[])[] {
  return courses.map(({ pieces }) => {
    const runs: number[][] = [];
    for (const { start, end } of pieces.map((piece) => ({ start: inches(piece.start), end: inches(piece.end) }))) {
      const last = runs.at(-1);
      if (last && last[1] === start) last[1] = end;
      else runs.push([start, end]);
    }
    return runs;
  });
}
