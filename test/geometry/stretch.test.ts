import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  lengthOfStretches,
  stretchDistance,
  stretchLess,
  type Stretch,
  type Xy,
} from '../../src/base/geometry/index.js';

const stretch = (from: number, to: number): Stretch => ({ from, to });

describe('what is left of a stretch', () => {
  const whole = stretch(2, 12);
  test.each([
    { what: 'nothing is taken', taken: [], left: [whole] },
    { what: 'a part of its middle is taken', taken: [stretch(5, 7)], left: [stretch(2, 5), stretch(7, 12)] },
    { what: 'both ends are, reaching past it', taken: [stretch(11, 20), stretch(0, 4)], left: [stretch(4, 11)] },
    {
      what: 'two overlap, and a third lies within one of them',
      taken: [stretch(3, 8), stretch(4, 5), stretch(6, 9)],
      left: [stretch(2, 3), stretch(9, 12)],
    },
    { what: 'two meet', taken: [stretch(4, 6), stretch(6, 8)], left: [stretch(2, 4), stretch(8, 12)] },
    { what: 'they only touch it', taken: [stretch(0, 2), stretch(12, 14)], left: [whole] },
    { what: 'one has no length', taken: [stretch(6, 6)], left: [whole] },
    { what: 'all of it is taken', taken: [stretch(0, 7), stretch(7, 30)], left: [] },
  ])('$what', ({ taken, left }) => {
    expect(stretchLess(whole, taken)).toEqual(left);
  });

  test('holds each unit of it that no other covers, in order and whole', () => {
    const any = fc.tuple(fc.nat(30), fc.nat(12)).map(([from, run]) => stretch(from, from + run));
    fc.assert(
      fc.property(any, fc.array(any, { maxLength: 6 }), (own, taken) => {
        const left = stretchLess(own, taken);
        const covers = (list: readonly Stretch[], unit: number) =>
          list.some(({ from, to }) => from <= unit && unit + 1 <= to);
        const units = Array.from({ length: 43 }, (_, unit) => unit);
        expect(units.filter((unit) => covers(left, unit))).toEqual(
          units.filter((unit) => covers([own], unit) && !covers(taken, unit)),
        );
        expect(lengthOfStretches(left)).toBe(units.filter((unit) => covers(left, unit)).length);
        // Apart, so that each is as long as it can be.
        for (const [index, { from }] of left.slice(1).entries()) expect(from).toBeGreaterThan(left[index]!.to);
      }),
    );
  });
});

const at = (x: number, y: number): Xy => ({ x, y });

test.each([
  ['that cross', at(0, 0), at(4, 4), at(0, 4), at(4, 0), 0],
  ['that touch', at(0, 0), at(4, 0), at(4, 0), at(4, 5), 0],
  ['side by side', at(0, 0), at(4, 0), at(1, 3), at(2, 3), 3],
  ['past each other', at(0, 0), at(4, 0), at(7, 4), at(9, 9), 5],
  ['on one line', at(0, 0), at(4, 0), at(6, 0), at(9, 0), 2],
  ['one of them a point', at(1, 1), at(1, 1), at(0, 0), at(4, 0), 1],
])('stretches %s', (_, a, b, c, d, away) => expect(stretchDistance([a, b], [c, d])).toBeCloseTo(away, 12));

const spot = fc.record({ x: fc.integer({ min: -20, max: 20 }), y: fc.integer({ min: -20, max: 20 }) });

test('no two points of two stretches are nearer than the stretches, whichever comes first', () => {
  fc.assert(
    fc.property(
      spot,
      spot,
      spot,
      spot,
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (a, b, c, d, s, t) => {
        const away = stretchDistance([a, b], [c, d]);
        expect(stretchDistance([d, c], [a, b])).toBeCloseTo(away, 9);
        const [p, q] = [
          at(a.x + (b.x - a.x) * s, a.y + (b.y - a.y) * s),
          at(c.x + (d.x - c.x) * t, c.y + (d.y - c.y) * t),
        ];
        expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThanOrEqual(away - 1e-9);
      },
    ),
  );
});
