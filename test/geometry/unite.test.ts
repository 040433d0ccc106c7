import fc from 'fast-check';
import { expect, test } from 'vitest';
import { areaOf, grown, patchFrom, unite, type Patch } from '../../src/base/geometry/index.js';

const box = (x: number, y: number, width: number, depth: number): Patch =>
  patchFrom([
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + depth },
    { x, y: y + depth },
  ]);

/** Feet of a whole number of 64ths of an inch, and of millimetres. */
const units = [1 / (12 * 64), 1 / 304.8];

test('tapes in 64ths of an inch and in millimetres are grown and united to the closed form', () => {
  const count = fc.integer({ min: 200, max: 20_000 });
  fc.assert(
    fc.property(fc.constantFrom(...units), count, count, count, fc.nat(400), (unit, wide, deep, along, by) => {
      const [width, depth, edge] = [wide * unit, deep * unit, by * unit];
      const room = grown([box(0, 0, width, depth)], edge);
      expect(areaOf(room)).toBeCloseTo((width + 2 * edge) * (depth + 2 * edge), 6);
      const next = along * unit;
      expect(areaOf(unite([box(0, 0, width, depth), box(next, 0, width, depth)]))).toBeCloseTo(
        depth * Math.min(2 * width, width + next),
        6,
      );
    }),
  );
});
