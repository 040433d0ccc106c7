import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { describe, expect, test } from 'vitest';
import {
  fromFrame,
  layOut,
  type Course,
  type Layout,
  type LayoutInput,
  type Piece,
} from '../../../src/core/takeoff/layout/index.js';
import type { Point, Region } from '../../../src/core/model/index.js';
import { feet, type Length } from '../../../src/base/units/index.js';
import { boardInputs, sheetInputs, surfaces } from './surfaces.js';
import { boards } from './shapes.js';

/** What holds of every layout, whatever the surface and the rules. */
const inputs = fc.oneof({ weight: 3, arbitrary: boardInputs }, { weight: 1, arbitrary: sheetInputs });
const runs = { numRuns: 60 };

describe('on the surface', () => {
  test('every bit is covered, by an independent polygon library', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const layout = layOut(input);
        input.regions.forEach((region, of) => {
          const covered = rectanglesOf(layout, of).map((ring) =>
            areaOf(polygonClipping.intersection([ringsOf(region)], [[ring]])),
          );
          // Pieces do not overlap (below), so what they cover adds up to the region. Places are set to 3 125 nm: along a
          // perimeter of 150' no more than 0.002 sq ft may be missed.
          expect(Math.abs(sum(covered) - areaOf([ringsOf(region)]))).toBeLessThan(0.002);
        });
      }),
      { numRuns: 40 },
    );
  });

  test('nothing is covered twice: courses lie side by side, pieces end to end', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const { courses } = layOut(input);
        courses.forEach((course, i) => {
          const next = courses[i + 1];
          if (next && next.region === course.region) expect(course.offset + course.width).toBe(next.offset);
          course.pieces.forEach(({ start, end }, j) => {
            expect(end).toBeGreaterThan(start);
            const after = course.pieces[j + 1];
            if (after) expect(after.start).toBeGreaterThanOrEqual(end);
          });
        });
      }),
      runs,
    );
  });

  test('only end courses are ripped; two equal ones are half a face at least', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const layout = layOut(input);
        for (const region of new Set(layout.courses.map((course) => course.region))) {
          const widths = layout.courses.filter((course) => course.region === region).map(({ width }) => width);
          const [first, last] = [widths.at(0) ?? 0, widths.at(-1) ?? 0];
          for (const width of widths.slice(1, -1)) expect(width).toBe(input.face);
          if (widths.length < 2) continue;
          const { endCourses, leastEndShare } = input.rules;
          const least = endCourses === 'balanced' ? 0.5 : leastEndShare;
          expect(Math.min(first, last)).toBeGreaterThanOrEqual(Math.floor(Math.min(least, 0.5) * input.face));
          // Within 0.1 mm of a whole course nothing is ripped, so that equal ends may differ by as much.
          if (endCourses === 'balanced') expect(Math.abs(first - last)).toBeLessThanOrEqual(100_000);
        }
      }),
      runs,
    );
  });

  test('joints keep their distance, pieces their length, or the place is named', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const layout = layOut(input);
        const named = new Set(layout.departures.map(({ course, at }) => `${course}:${at}`));
        const { stagger, leastPiece, framing } = input.rules;
        layout.courses.forEach((course, i) => {
          const beside = course.number === 1 ? [] : jointsOf(layout.courses[i - 1]);
          for (const joint of jointsOf(course)) {
            if (named.has(`${i}:${joint}`)) continue;
            for (const other of beside) expect(Math.abs(joint - other)).toBeGreaterThanOrEqual(stagger);
            if (framing) expect((joint - originOf(layout, input, course.region)) % framing.spacing).toBe(0);
          }
          course.pieces.forEach((piece, j) => {
            const alone = course.pieces[j - 1]?.end !== piece.start && course.pieces[j + 1]?.start !== piece.end;
            if (!alone && !named.has(`${i}:${piece.start}`)) {
              expect(piece.end - piece.start).toBeGreaterThanOrEqual(leastPiece);
            }
          });
        });
      }),
      runs,
    );
  });

  test('where no rule is hard to keep, none is broken', () => {
    const easy = surfaces.map((surface) => boards([surface]));
    fc.assert(
      fc.property(easy, (input) => {
        expect(layOut(input).departures).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});

describe('on the boards', () => {
  test('each piece lies on its board, apart from other pieces and off-cuts by the kerf', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const layout = layOut(input);
        for (const board of layout.boards) {
          expect(input.stock).toContain(board.length);
          const parts = [...board.pieces, ...board.offcuts];
          for (const { along, across, length, width } of parts) {
            expect(Math.min(along, across)).toBeGreaterThanOrEqual(0);
            // Half of what comes off lies at either end.
            expect(along).toBeGreaterThanOrEqual(Math.floor((input.endTrim ?? 0) / 2));
            expect(along + length).toBeLessThanOrEqual(board.length - Math.ceil((input.endTrim ?? 0) / 2));
            expect(across + width).toBeLessThanOrEqual(input.face);
          }
          parts.forEach((a, i) => {
            for (const b of parts.slice(i + 1)) {
              const apart = Math.max(
                a.along - (b.along + b.length),
                b.along - (a.along + a.length),
                a.across - (b.across + b.width),
                b.across - (a.across + a.width),
              );
              expect(apart).toBeGreaterThanOrEqual(layout.kerf);
            }
          });
        }
      }),
      runs,
    );
  });

  test('pieces + off-cuts + kerf = bought', () => {
    fc.assert(
      fc.property(boardInputs, (input) => {
        const layout = layOut(input);
        for (const { length: whole, pieces, offcuts } of layout.boards) {
          const length = whole - (input.endTrim ?? 0);
          const ends = offcuts.filter(({ along }) => pieces.every((piece) => piece.along + piece.length <= along));
          const used = sum(pieces.map((piece) => piece.length)) + sum(ends.map((offcut) => offcut.length));
          // One cut after each piece; the last may take less than a kerf, or nothing when the piece ends the board.
          expect(length - used).toBeLessThanOrEqual(pieces.length * layout.kerf);
          expect(length - used).toBeGreaterThanOrEqual((pieces.length - 1) * layout.kerf);
        }
        expect(sum(layout.boards.map(({ length }) => length))).toBe(layout.bought);
        expect(sum(layout.stock.map(({ length, count }) => length * count))).toBe(layout.bought);
      }),
      runs,
    );
  });

  test('the cut list and the courses name the same pieces', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const layout = layOut(input);
        const listed = layout.boards.flatMap(({ pieces }, board) =>
          pieces.map(({ course, piece, length }) => `${course}/${piece}: ${length} from ${board}`),
        );
        const laid = layout.courses.flatMap(({ pieces }, course) =>
          pieces.map(({ start, end, board }, piece) => `${course}/${piece}: ${end - start} from ${board}`),
        );
        expect(listed.sort()).toEqual(laid.sort());
        expect(layout.boards.every(({ pieces }) => pieces.length > 0)).toBe(true);
      }),
      runs,
    );
  });

  test('no less is bought than the bound, and waste agrees with the surface', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const layout = layOut(input);
        expect(layout.bought).toBeGreaterThanOrEqual(layout.bound);
        expect(layout.bound).toBeGreaterThanOrEqual(layout.needed);
        const area = input.regions.reduce((total, region) => total + areaOf([ringsOf(region)]), 0);
        const boughtArea = feet(layout.bought) * feet(input.face);
        expect((1 - layout.waste) * boughtArea).toBeCloseTo(area, 2);
        expect(layout.waste).toBeGreaterThan(-1e-6);
        const { bought, ...shares } = layout.surface;
        expect(sum(Object.values(shares)) / bought).toBeCloseTo(1, 9);
        for (const share of Object.values(shares)) expect(share / bought).toBeGreaterThan(-1e-6);
      }),
      runs,
    );
  });
});

describe('the same surface told otherwise', () => {
  test('turned by a right angle, with the courses turned too', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const turned = { ...input, direction: input.direction + 90, regions: input.regions.map(quarterTurn) };
        const a = { ...layOut(input), direction: 0 };
        const b = { ...layOut(turned), direction: 0 };
        if (input.direction % 90 === 0) expect(b).toEqual(a);
        else expect(b.courses.map(({ width }) => width)).toEqual(a.courses.map(({ width }) => width));
      }),
      runs,
    );
  });

  test('outline begun at another corner, walked the other way, stock in another order', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const other = {
          ...input,
          stock: [...input.stock].reverse(),
          regions: input.regions.map(({ outline, holes }) => ({
            outline: [...outline.slice(1), ...outline.slice(0, 1)].reverse(),
            holes: holes.map((hole) => [...hole].reverse()),
          })),
        };
        if (input.direction % 90 === 0) expect(layOut(other).courses).toEqual(layOut(input).courses);
        expect(layOut(other).courses.length).toBe(layOut(input).courses.length);
      }),
      runs,
    );
  });
});

type Ring = [number, number][];

function ringsOf({ outline, holes }: Region): Ring[] {
  return [outline, ...holes].map((ring) => ring.map(pair));
}

function pair({ x, y }: Point): [number, number] {
  return [feet(x), feet(y)];
}

/** Each piece as a ring on the surface. */
function rectanglesOf(layout: Layout, region: number): Ring[] {
  return layout.courses
    .filter((course) => course.region === region)
    .flatMap((course) =>
      course.pieces.map((piece) => cornersOf(course, piece).map((corner) => pair(fromFrame(layout.direction, corner)))),
    );
}

function cornersOf({ offset, width }: Course, { start, end }: Piece): { along: number; across: number }[] {
  return [
    { along: start, across: offset },
    { along: end, across: offset },
    { along: end, across: offset + width },
    { along: start, across: offset + width },
  ];
}

function areaOf(polygons: readonly Ring[][]): number {
  const ringArea = (ring: Ring): number =>
    Math.abs(
      ring.reduce((total, [x, y], i) => {
        const [nextX, nextY] = ring[(i + 1) % ring.length] ?? [x, y];
        return total + x * nextY - nextX * y;
      }, 0) / 2,
    );
  return sum(polygons.map(([outline = [], ...holes]) => ringArea(outline) - sum(holes.map(ringArea))));
}

/** Where pieces of a course meet. */
function jointsOf(course: Course | undefined): readonly number[] {
  const pieces = course?.pieces ?? [];
  return pieces.filter((piece, i) => pieces[i - 1]?.end === piece.start).map(({ start }) => start);
}

/** Low end of a region along the courses, from its corners. */
function originOf({ direction }: Layout, { regions }: LayoutInput, region: number): number {
  const angle = (-direction * Math.PI) / 180;
  const along = (regions[region]?.outline ?? []).map(({ x, y }) => x * Math.cos(angle) - y * Math.sin(angle));
  return Math.round(Math.min(...along) / 3125) * 3125;
}

function quarterTurn({ outline, holes }: Region): Region {
  const turn = (ring: Region['outline']): Region['outline'] => ring.map(({ x, y }) => ({ x: -y as Length, y: x }));
  return { outline: turn(outline), holes: holes.map(turn) };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
