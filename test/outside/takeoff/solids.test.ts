import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  casingLength,
  jointVolume,
  leafFaces,
  timberFaces,
  treadFaces,
  trimFaces,
} from '../../../src/core/takeoff/arithmetic/index.js';
import { fromInches, type Length } from '../../../src/base/units/index.js';
import type { OpeningShape } from '../../../src/core/model/index.js';

/** What is coated, cased or grouted, as the surface of solids: boxes by their six faces, curves by many straight pieces. No publication is
 *  behind it: geometry, and which faces are seen is common practice, no source. */

const inch = fromInches;
const sizes = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 16, max: most * 16 }).map((count) => count / 16);

/** All six faces of a box in square inches. */
const boxFaces = (a: number, b: number, c: number): number => 2 * (a * b + b * c + c * a);

/** An upright plate over corners in inches: both faces, and its edge all around. */
function plateFaces(corners: readonly (readonly [number, number])[], thickness: number): number {
  const next = (index: number): readonly [number, number] => corners[(index + 1) % corners.length] ?? [0, 0];
  const area = corners.reduce((sum, [x, y], index) => sum + (x * next(index)[1] - next(index)[0] * y) / 2, 0);
  const around = corners.reduce((sum, [x, y], index) => sum + Math.hypot(next(index)[0] - x, next(index)[1] - y), 0);
  return 2 * Math.abs(area) + around * thickness;
}

describe('coated faces', () => {
  test('a run of trim is a box, less its back, its ends and the edges that are not seen', () => {
    fc.assert(
      fc.property(sizes(12, 400), sizes(1, 12), sizes(0.25, 2), fc.constantFrom(0, 1, 2), (run, face, thick, edges) => {
        const hidden = run * face + 2 * face * thick + (2 - edges) * run * thick;
        const seen = boxFaces(run, face, thick) - hidden;
        expect(trimFaces(run / 12, { face: inch(face), thickness: inch(thick), edges })).toBeCloseTo(seen / 144, 6);
      }),
    );
  });

  test('a leaf is a box; a pair is two of half the width', () => {
    fc.assert(
      fc.property(sizes(20, 100), sizes(60, 120), sizes(1, 3), (width, height, thick) => {
        const form = { width: inch(width), height: inch(height) };
        expect(leafFaces(form, inch(thick), 1)).toBeCloseTo(boxFaces(width, height, thick) / 144, 6);
        expect(leafFaces(form, inch(thick), 2)).toBeCloseTo((2 * boxFaces(width / 2, height, thick)) / 144, 6);
      }),
    );
  });

  test('under a slope a pair is two of different heights, each a plate of four corners', () => {
    fc.assert(
      fc.property(
        sizes(20, 100),
        sizes(70, 120),
        sizes(20, 69),
        sizes(1, 3),
        fc.constantFrom('left' as const, 'right' as const),
        (width, height, to, thick, low) => {
          const form = { width: inch(width), height: inch(height), shape: { is: 'rake', low, to: inch(to) } as const };
          const top = (x: number): number => {
            const up = low === 'left' ? x / width : 1 - x / width;
            return to + (height - to) * up;
          };
          const plate = (from: number, end: number): number =>
            plateFaces(
              [
                [from, 0],
                [end, 0],
                [end, top(end)],
                [from, top(from)],
              ],
              thick,
            );
          expect(leafFaces(form, inch(thick), 1)).toBeCloseTo(plate(0, width) / 144, 6);
          expect(leafFaces(form, inch(thick), 2)).toBeCloseTo((plate(0, width / 2) + plate(width / 2, width)) / 144, 6);
        },
      ),
    );
  });

  test('round and arched leaves are plates of many corners', () => {
    const arc = (from: number, by: number, radius: number, x: number, y: number): [number, number][] =>
      Array.from({ length: 2001 }, (_, index) => {
        const turn = from + (by * index) / 2000;
        return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
      });
    fc.assert(
      fc.property(sizes(20, 60), sizes(70, 120), sizes(1, 9), (width, height, rise) => {
        const disc = { width: inch(width), height: inch(width), shape: { is: 'round' } as const };
        const circle = plateFaces(arc(0, 2 * Math.PI, width / 2, 0, 0), 1.5);
        expect(leafFaces(disc, inch(1.5), 1)).toBeCloseTo(circle / 144, 3);
        // The circle through the springings and the crown: by its two chords.
        const radius = (width ** 2 / 4 + rise ** 2) / (2 * rise);
        const half = Math.asin(width / 2 / radius);
        const crown = arc(Math.PI / 2 - half, 2 * half, radius, width / 2, height - radius);
        const arched = plateFaces([[0, 0], [width, 0], ...crown], 1.5);
        const form = { width: inch(width), height: inch(height), shape: { is: 'arch', rise: inch(rise) } as const };
        expect(leafFaces(form, inch(1.5), 1)).toBeCloseTo(arched / 144, 3);
        // Two leaves of it meet where it is highest.
        expect(leafFaces(form, inch(1.5), 2)).toBeCloseTo((arched + 2 * 1.5 * height) / 144, 3);
      }),
      { numRuns: 40 },
    );
  });

  test('a timber is a box without its ends; under a ceiling its top is hidden', () => {
    fc.assert(
      fc.property(sizes(2, 14), sizes(3, 20), sizes(60, 400), (width, depth, run) => {
        const section = { width: inch(width), depth: inch(depth) };
        const bare = boxFaces(width, depth, run) - 2 * width * depth;
        expect(timberFaces(section, inch(run), 4)).toBeCloseTo(bare / 144, 6);
        expect(timberFaces(section, inch(run), 3)).toBeCloseTo((bare - width * run) / 144, 6);
      }),
    );
  });

  test('treads are strips across the stair: tread, nosing and front edge; seen from below they have as many again', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        sizes(30, 60),
        sizes(9, 12),
        sizes(0.25, 1.5),
        sizes(0.5, 3),
        (treads, width, going, nosing, thickness) => {
          const each = { width: inch(width), going: inch(going), nosing: inch(nosing), thickness: inch(thickness) };
          // Box less its two ends, less the underside and the back where the riser and the string hide them.
          const open = boxFaces(width, going + nosing, thickness) - 2 * (going + nosing) * thickness;
          expect(treadFaces(treads, { ...each, isOpen: true })).toBeCloseTo((treads * open) / 144, 6);
          expect(treadFaces(treads, { ...each, isOpen: false })).toBeCloseTo((treads * open) / 2 / 144, 6);
        },
      ),
    );
  });
});

describe('casing', () => {
  const [w, h, f] = [30, 80, 3.5];
  const cased = (sides: 3 | 4, shape?: OpeningShape, face = f): number => {
    const { opening, past } = casingLength(
      { width: inch(w), height: inch(h), sides, ...(shape && { shape }) },
      inch(face),
    );
    return (opening + past) * 12;
  };

  test('by hand, in inches: legs, and head and sill that run past them', () => {
    // Door 2 × 80 + 30 + 2 × 3.5 = 197; window 2 × 80 + 2 × (30 + 7) = 234; without a face 190 and 220.
    expect([cased(3), cased(4), cased(3, undefined, 0), cased(4, undefined, 0)].map(round)).toEqual([
      197, 234, 190, 220,
    ]);
    const none = casingLength({ width: inch(w), height: inch(h), sides: 3 });
    expect([round(none.opening * 12), none.past]).toEqual([190, 0]);
    // Raked to 40" over 30": the head is 50" long. 80 + 40 + 50 + 7 = 177.
    expect(round(cased(3, { is: 'rake', low: 'left', to: inch(40) }))).toBe(177);
    expect(round(cased(4, { is: 'rake', low: 'right', to: inch(40) }))).toBe(177 + 37);
  });

  test('by hand: a half circle over a sill, and a full one', () => {
    // Legs of 80 − 15 twice, π × 15 over them; the sill alone runs past.
    expect(cased(4, { is: 'arch', rise: inch(15) })).toBeCloseTo(130 + 15 * Math.PI + 30 + 7, 6);
    expect(cased(3, { is: 'arch', rise: inch(15) })).toBeCloseTo(130 + 15 * Math.PI, 6);
    expect(cased(4, { is: 'arch', radius: inch(15) })).toBeCloseTo(130 + 15 * Math.PI + 30 + 7, 6);
    const round = { width: inch(30), height: inch(30), shape: { is: 'round' } as const };
    expect(casingLength({ ...round, sides: 4 }, inch(f))).toEqual({
      opening: expect.closeTo((30 * Math.PI) / 12, 9) as number,
      past: 0,
    });
  });
});

test('grout: a floor of many pieces, less the pieces', () => {
  fc.assert(
    fc.property(sizes(1, 24), sizes(1, 24), sizes(0.125, 1), sizes(0.0625, 0.5), (length, width, thick, joint) => {
      const [across, along] = [40, 25];
      const floor = across * (length + joint) * along * (width + joint);
      const left = (floor - across * along * length * width) * thick;
      // Cubic inches for square inches.
      const each = jointVolume({ length: inch(length), width: inch(width), thickness: inch(thick) }, inch(joint));
      expect(each * 12).toBeCloseTo(left / floor, 6);
    }),
  );
  const square = { length: inch(3) as Length, width: inch(3), thickness: inch(0.5) };
  expect(jointVolume(square, inch(0))).toBe(0);
});

function round(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
