import { describe, expect, test } from 'vitest';
import {
  boardRules,
  fromFrame,
  layOut,
  sheetRules,
  summarize,
  type Course,
  type Layout,
  type LayoutInput,
} from '../../../src/core/takeoff/layout/index.js';
import { fromInches, printLength, type Length } from '../../../src/base/units/index.js';
import { boards, feetOf, rectangle, sheets } from '../../takeoff/layout/shapes.js';
import { areaOf, bandsIn, extent, grid, hair, laidIn, leastSumOf, planesIn } from './second-way/courses.js';
import { cases, type Laid } from './second-way/layouts.js';

/** Boards and sheets on surfaces of all shapes, each figure of a layout worked a second way (`second-way/courses.ts`). How few pieces a
 *  layout buys is not asked here: its bound is. */

describe('courses by a second way', () => {
  test('how many, how wide and where they begin', () => {
    for (const { input, layout, bands } of cases) {
      const { courses, direction, face, kerf } = layout;
      expect(courses.map(({ region, number, offset, width }) => [region, number, offset, width])).toEqual(
        bands.map(({ plane, number, offset, width }) => [plane, number, offset, width]),
      );
      expect(courses.map(({ ripped }) => ripped)).toEqual(bands.map(({ width }) => width < input.face - hair));
      expect([direction, face, kerf]).toEqual([input.direction, input.face, input.kerf ?? fromInches(1 / 8)]);
    }
  });

  test('boards lie where the surface is, and nowhere else', () => {
    for (const { layout, bands } of cases) {
      layout.courses.forEach((course, index) => {
        const { spans = [] } = bands[index] ?? {};
        // A corner that only just reaches into a course is of no length.
        const told = spans.filter(([from, to]) => to - from > 4 * grid);
        const laid = laidIn(course).filter(([from, to]) => to - from > 4 * grid);
        expect(laid.length).toBe(told.length);
        told.forEach(([from, to], at) => {
          expect(Math.abs((laid[at]?.[0] ?? NaN) - from)).toBeLessThanOrEqual(slackAt(from));
          expect(Math.abs((laid[at]?.[1] ?? NaN) - to)).toBeLessThanOrEqual(slackAt(to));
        });
      });
    }
  });

  test('the line to snap is the far edge of the first course, as long as that is', () => {
    for (const { layout, bands } of cases) {
      const { startLines, courses } = layout;
      const firsts = bands.filter(({ number }) => number === 1);
      expect(startLines.map(({ region, distance, across }) => [region, distance, across])).toEqual(
        firsts.map(({ plane, width, offset }) => [plane, width, offset + width]),
      );
      startLines.forEach(({ region, from, to }) => {
        const first = courses.find((course) => course.region === region && course.number === 1);
        const ends = first?.pieces.flatMap(({ start, end }) => [start, end]) ?? [];
        expect([from + 0, to + 0]).toEqual(extent(ends).map((end) => end + 0));
      });
    }
  });

  test('a place among the courses is one on the surface: turned by the direction, of every whole degree', () => {
    const [along, across] = [7_000_000_003, 3_000_000_001];
    const far = Math.hypot(along, across);
    // Nothing has no sign.
    for (const turn of [180, -180]) expect(fromFrame(turn, { along: 0, across: 0 })).toEqual({ x: 0, y: 0 });
    for (let degrees = -720; degrees <= 720; degrees += 1) {
      const away = Math.atan2(across, along) + (degrees * Math.PI) / 180;
      const { x, y } = fromFrame(degrees, { along, across });
      expect(Math.abs(x - far * Math.cos(away)), `${degrees}`).toBeLessThan(2);
      expect(Math.abs(y - far * Math.sin(away)), `${degrees}`).toBeLessThan(2);
    }
  });

  test('a tenth of a millimetre makes no course and is not ripped, a hair more does', () => {
    const face = fromInches(5.125);
    for (const over of [-33, -32, -1, 0, 1, 32, 33].map((steps) => steps * grid))
      for (const endCourses of ['full-first', 'balanced'] as const) {
        const input = boards([rectangle(60, (10 * face + over) / fromInches(1))], {}, { endCourses });
        const widths = layOut(input).courses.map(({ width }) => width);
        expect(widths).toEqual(bandsIn(input).map(({ width }) => width));
        expect(widths.length).toBe(over > hair ? 11 : 10);
      }
    const ripped = [32, 33].map((steps) => {
      const input = boards(
        [rectangle(60, (2 * face - steps * grid) / fromInches(1))],
        {},
        { endCourses: 'full-first' },
      );
      return layOut(input).courses.map((course) => course.ripped);
    });
    expect(ripped).toEqual([
      [false, false],
      [false, true],
    ]);
  });
});

describe('what is bought, by a second way', () => {
  test('where its surface goes', () => {
    for (const { input, layout } of cases) {
      const { face, endTrim = 0 } = input;
      const bought = sum(layout.boards.map(({ length }) => length));
      expect(layout.bought).toBe(bought);
      expect(sum(layout.stock.map(({ length, count }) => length * count))).toBe(bought);
      const covered = areaOf(input);
      const laid = sum(
        layout.courses.map(({ pieces, width }) => sum(pieces.map(({ start, end }) => (end - start) * width))),
      );
      const offcuts = layout.boards.flatMap((board) => board.offcuts);
      const left = (narrow: boolean): number =>
        sum(offcuts.filter(({ width }) => width < face - hair === narrow).map(({ length, width }) => length * width));
      const [strips, ends, trim] = [left(true), left(false), endTrim * layout.boards.length * face];
      const shares = {
        bought: bought * face,
        covered,
        cutAway: laid - covered,
        strips,
        ends,
        endTrim: trim,
        sawCuts: bought * face - laid - strips - ends - trim,
      };
      for (const [key, area] of Object.entries(shares))
        expect(layout.surface[key as keyof typeof shares] / (bought * face), key).toBeCloseTo(
          area / (bought * face),
          9,
        );
      expect(layout.waste).toBeCloseTo(1 - covered / (bought * face), 9);
    }
  });

  test('no less can be, and by how much it is more', () => {
    for (const { input, layout } of cases) {
      const { endTrim = 0, stock } = input;
      const needed = neededFor(input, layout);
      expect(Math.abs(layout.needed - needed)).toBeLessThanOrEqual(1);
      const most = Math.max(...stock) - endTrim;
      const bound = leastSumOf([...new Set(stock)], layout.needed + endTrim * Math.ceil(layout.needed / most));
      expect(layout.bound).toBe(bound);
      expect(layout.gap).toBeCloseTo(layout.bought / bound - 1, 12);
      expect(layout.gap).toBeGreaterThanOrEqual(0);
    }
  });

  test('the ends come off in halves, and every piece of a course is on a board', () => {
    for (const { input, layout } of cases) {
      const { endTrim = 0 } = input;
      for (const { length, pieces, offcuts } of layout.boards) {
        const parts = [...pieces, ...offcuts];
        expect(Math.min(...parts.map(({ along }) => along))).toBe(Math.floor(endTrim / 2));
        expect(Math.max(...parts.map((part) => part.along + part.length))).toBeLessThanOrEqual(
          length - Math.ceil(endTrim / 2),
        );
        // Saw cuts alone are between them.
        const most = Math.max(0, parts.length - 1) * layout.kerf + layout.kerf;
        expect(length - endTrim - sum(lengthwise(parts))).toBeLessThanOrEqual(most);
        for (const { course, piece, length: long, width } of pieces) {
          const laid = layout.courses[course]?.pieces[piece];
          expect(long).toBe((laid?.end ?? 0) - (laid?.start ?? 0));
          expect(width).toBe(layout.courses[course]?.width);
        }
      }
      expect(sum(layout.boards.map(({ pieces }) => pieces.length))).toBe(
        sum(layout.courses.map(({ pieces }) => pieces.length)),
      );
    }
  });
});

test('where the rules are not kept is told, and nowhere else, by measuring every joint and every piece', () => {
  let told = 0;
  for (const { input, layout, bands } of cases) {
    const mine = broken({ input, layout, bands });
    expect(
      layout.departures.map(({ kind, course, at, words }) => `${kind} in ${course} at ${at}: ${words}`).sort(),
    ).toEqual([...mine].sort());
    told += mine.length;
  }
  expect(told).toBeGreaterThan(100);
});

test('by hand: two halves come out of one sheet if it is scored, not if it is sawn', () => {
  // A wall of 8' × 6': a course of 4' and one of 2'. Scored, a sheet and a half; sawn by an eighth of an inch, 2' is too wide to share.
  const [scored, sawn] = [0, 1 / 8].map(
    (kerf) => layOut(sheets([rectangle(96, 72)], { kerf: fromInches(kerf) })).needed,
  );
  expect([scored, sawn]).toEqual([fromInches(144), fromInches(192)]);
});

test('the rules of the trade: common practice, no source', () => {
  const inch = fromInches(1);
  const { stagger, leastPiece, leastEndShare, endCourses, reuseOffcuts, reuseRips, joints } = boardRules;
  // End joints of matched boards two feet apart, no piece under sixteen inches, equal ends of half a board at least, and no second use of a
  // strip that has lost its edge.
  expect([stagger / inch, leastPiece / inch, leastEndShare, endCourses]).toEqual([24, 16, 0.5, 'balanced']);
  expect([reuseOffcuts, reuseRips, joints]).toEqual([true, false, 'any-span']);
  // Sheets four feet wide: joints four feet apart, no piece under two feet, a strip of a foot at least, strips used.
  expect([sheetRules.stagger / inch, sheetRules.leastPiece / inch, sheetRules.leastEndShare * 4]).toEqual([48, 24, 1]);
  expect([sheetRules.endCourses, sheetRules.reuseRips]).toEqual(['full-first', true]);
});

test('nothing is laid without a face, without stock that is longer than what comes off its ends, or without a surface', () => {
  const plain = boards([rectangle(120, 60)]);
  const none = [
    { ...plain, face: 0 as Length },
    { ...plain, stock: [] },
    { ...plain, stock: feetOf(0) },
    { ...plain, stock: feetOf(1), endTrim: fromInches(12) },
    { ...plain, regions: [{ outline: rectangle(1, 1).outline.slice(0, 2), holes: [] }] },
  ];
  for (const input of none) {
    const { notLaid, boards: bought, courses, waste, gap, bound } = layOut(input);
    expect(notLaid).toBeDefined();
    expect([bought.length, courses.length, waste, gap, bound]).toEqual([0, 0, 0, 0, 0]);
  }
  const least = { ...plain, stock: feetOf(1), endTrim: fromInches(11) };
  expect([plain, least].map((input) => layOut(input).notLaid)).toEqual([undefined, undefined]);
});

test('a summary in square feet and sixteenths of an inch, from the boards', () => {
  for (const { input, layout, bands } of cases) {
    const named = planesIn(input).map((_, index) => ({
      place: `${index}`,
      name: `Plane ${index}`,
      direction: 0,
      run: '',
      startsAt: '',
    }));
    const summary = summarize(layout, { lay: 'boards', orderBy: 'area' }, named);
    for (const [key, area] of Object.entries(summary.surface)) {
      const inches = layout.surface[key as keyof typeof layout.surface] / 25_400_000 ** 2;
      expect(area, key).toBeCloseTo(inches / 144, 5);
    }
    const byPlane = named.map((_, plane) => bands.filter((band) => band.plane === plane));
    const narrowest = (end: 0 | -1): number => Math.min(...byPlane.map((own) => own.at(end)?.width ?? Infinity));
    expect([summary.courses, summary.firstCourse, summary.lastCourse]).toEqual([
      bands.length,
      narrowest(0),
      narrowest(-1),
    ]);
    expect(
      summary.surfaces.map(({ courses, firstCourse, lastCourse, edge }) => [courses, firstCourse, lastCourse, edge]),
    ).toEqual(byPlane.map((own) => [own.length, own[0]?.width, own.at(-1)?.width, own[0]?.offset]));
    summary.surfaces.forEach(({ joints }, plane) => {
      const own = layout.courses.filter(({ region }) => region === plane);
      expect(joints).toEqual(own.map(jointsOf));
    });
    expect(
      summary.cuts
        .map(({ from, length, width, count }) => `${count} of ${length} × ${width ?? 'all'} from ${from}`)
        .sort(),
    ).toEqual(cutList(input, layout));
  }
});

/** What lies on the grid is there to the nanometre; what lies between is set to it. */
function slackAt(place: number): number {
  return Math.abs(place / grid - Math.round(place / grid)) < 1e-6 ? 0 : grid;
}

/** Length of full boards: what is too wide to lie beside another on a board has its own; strips share by their width. */
function neededFor({ face, rules }: LayoutInput, { courses, kerf }: Layout): number {
  const spans = courses.flatMap((course) =>
    laidIn(course).map(([from, to]) => ({ long: to - from, wide: course.width })),
  );
  if (!rules.reuseRips) return sum(spans.map(({ long }) => long));
  const alone = spans.filter(({ wide }) => wide + kerf + wide > face);
  return Math.max(
    Math.ceil(sum(spans.map(({ long, wide }) => (long * wide) / face)) - 0.001),
    sum(alone.map(({ long }) => long)),
  );
}

/** Boards lie in a row, strips beside ripped pieces: lengths of what is as wide as the row is at its place. */
function lengthwise(parts: readonly { readonly along: number; readonly across: number; readonly length: number }[]) {
  return parts.filter(({ across }) => across === 0).map(({ length }) => length);
}

function jointsOf({ pieces }: Course): readonly number[] {
  return pieces.flatMap(({ start }, index) => (pieces[index - 1]?.end === start ? [start] : []));
}

function broken({ input, layout: { courses }, bands }: Laid): readonly string[] {
  const { stagger, leastPiece, framing } = input.rules;
  const lines: string[] = [];
  courses.forEach((course, index) => {
    const { number } = course;
    const tell = (kind: string, at: number, words: string): unknown =>
      lines.push(`${kind} in ${index} at ${at}: course ${number}: ${words}`);
    for (const [from, to] of laidIn(course)) {
      const own = course.pieces.filter(({ start, end }) => start >= from && end <= to);
      for (const { start, end } of own) {
        const long = end - start;
        if (own.length > 1 && long < leastPiece)
          tell('least piece', start, `a piece of ${printLength(long as Length)}, rule ${printLength(leastPiece)}`);
      }
    }
    const above = number === 1 ? [] : jointsOf(courses[index - 1] as Course);
    for (const joint of jointsOf(course)) {
      const nearest = Math.min(...above.map((other) => Math.abs(other - joint)));
      if (nearest < stagger)
        tell(
          'stagger',
          joint,
          `a joint ${printLength(nearest as Length)} from one in the course before, rule ${printLength(stagger)}`,
        );
      const spaces = framing ? (joint - (bands[index]?.origin ?? 0) - framing.from) / framing.spacing : 0;
      if (!Number.isInteger(spaces)) tell('framing', joint, 'a joint off the framing');
    }
  });
  return lines;
}

function cutList({ face }: LayoutInput, { boards: bought }: Layout): readonly string[] {
  const sixteenth = fromInches(1 / 16);
  const tape = (length: number): number => Math.floor(length / sixteenth + 1 / 2) * sixteenth;
  const each = bought.flatMap(({ length: from, pieces }) =>
    pieces.map(({ length, width }) => `${tape(length)} × ${width < face - hair ? tape(width) : 'all'} from ${from}`),
  );
  return [...new Set(each)].map((line) => `${each.filter((one) => one === line).length} of ${line}`).sort();
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
