import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthOfStretches, stretchLess, type Stretch } from '../../src/base/geometry/index.js';

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
