import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LeastSquares, type Equation } from '../../src/core/lay/index.js';
import { seeded } from '../geometry/random.js';

/** The usual example of adjusting levels: two ways from a known point to a third, of which one has three tapes and the other one. */
test('the mean of two measurements, weighted by their squares', () => {
  const measured: readonly Equation[] = [
    { of: [[0, 1]], is: 10, sigma: 1 },
    { of: [[0, 1]], is: 13, sigma: 2 },
  ];
  const squares = new LeastSquares(1, measured);
  // (10 / 1 + 13 / 4) / (1 + 1 / 4), and its deviation 1 / sqrt(1 + 1 / 4).
  expect(squares.solution()[0]).toBeCloseTo(10.6, 12);
  expect(squares.deviation(0)).toBeCloseTo(1 / Math.sqrt(1.25), 12);
});

test('an unknown that no equation fixes is told', () => {
  expect(() => new LeastSquares(2, [{ of: [[0, 1]], is: 1, sigma: 1 }])).toThrow(/unknown 1/u);
});

const problems = fc.record({
  seed: fc.integer({ min: 1, max: 1e9 }),
  unknowns: fc.integer({ min: 1, max: 12 }),
  more: fc.integer({ min: 0, max: 20 }),
});

function equationsOf(random: () => number, unknowns: number, more: number): readonly Equation[] {
  return Array.from({ length: unknowns + more }, (_, index) => ({
    of: Array.from({ length: unknowns }, (_one, unknown) => [
      unknown,
      // The first ones hold every unknown.
      index < unknowns ? (index === unknown ? 1 + random() : 0) : random() - 0.5,
    ]) as [number, number][],
    is: random() * 20 - 10,
    sigma: 0.1 + random(),
  }));
}

test('what is left over is at right angles to every column', () => {
  fc.assert(
    fc.property(problems, ({ seed, unknowns, more }) => {
      const equations = equationsOf(seeded(seed), unknowns, more);
      const x = new LeastSquares(unknowns, equations).solution();
      for (let unknown = 0; unknown < unknowns; unknown += 1) {
        const off = equations.reduce((sum, { of, is, sigma }) => {
          const left = of.reduce((total, [i, a]) => total + a * (x[i] as number), -is);
          return sum + ((of[unknown]?.[1] ?? 0) * left) / (sigma * sigma);
        }, 0);
        expect(Math.abs(off)).toBeLessThan(1e-7);
      }
    }),
  );
});

test('what one more unknown would explain is what solving with it explains', () => {
  fc.assert(
    fc.property(problems, ({ seed, unknowns, more }) => {
      const random = seeded(seed);
      const equations = equationsOf(random, unknowns, more + 2);
      const shifts = equations.flatMap((_, equation) => (random() < 0.5 ? [{ equation, by: random() + 0.1 }] : []));
      const prior = 5;
      const squares = new LeastSquares(unknowns, equations);
      const x = squares.solution();
      const { value, gain } = squares.explainedBy(shifts, x, prior);
      // The same with the unknown among the others: is + by · g = of · x.
      const by = new Map(shifts.map((shift) => [shift.equation, shift.by]));
      const whole = [
        ...equations.map((one, index) => ({ ...one, of: [...one.of, [unknowns, -(by.get(index) ?? 0)] as const] })),
        { of: [[unknowns, 1] as const], is: 0, sigma: prior },
      ];
      const y = new LeastSquares(unknowns + 1, whole).solution();
      expect(value).toBeCloseTo(y[unknowns] as number, 6);
      expect(gain).toBeCloseTo(left(equations, x) - left(whole, y), 4);
    }),
  );
});

function left(equations: readonly Equation[], x: Float64Array): number {
  return equations.reduce((sum, { of, is, sigma }) => {
    const off = of.reduce((total, [i, a]) => total + a * (x[i] as number), -is);
    return sum + (off / sigma) ** 2;
  }, 0);
}
