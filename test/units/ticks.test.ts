import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asPrinted,
  digitsToTick,
  fewestDigits,
  leftByRounding,
  printAmount,
  printsAs,
} from '../../src/base/units/index.js';

const near = fc.double({ min: -5000, max: 5000, noNaN: true });

describe('a figure as printed', () => {
  test('is what is read from the print', () => {
    expect(asPrinted(617.75, 1)).toBe(617.8);
    expect(asPrinted(0.15, 1)).toBe(0.2);
    expect(asPrinted(-16.83, 1)).toBe(-16.8);
    expect(asPrinted(-0.02, 1)).toBe(0);
  });

  test('for any figure', () => {
    fc.assert(
      fc.property(near, fc.integer({ min: 0, max: 4 }), (amount, digits) => {
        const read = Number(printAmount(amount, digits).replaceAll(',', '').replace('−', '-'));
        expect(asPrinted(amount, digits)).toBe(read);
      }),
    );
  });
});

test('by hand: 617.75 × 2 × 1.08 is 1,334.34; 617.8 would come to 1,334.4, so a second digit is printed', () => {
  const leads = (digits: number) => printsAs(asPrinted(617.75, digits) * 2 * 1.08, 1334.34, 1);
  expect([leads(1), leads(2), fewestDigits(1, leads)]).toEqual([false, true, 2]);
});

describe('what rounding leaves', () => {
  test('by hand: thirds of one are 0.3 each, and a tenth is left', () => {
    expect(leftByRounding([1 / 3, 1 / 3, 1 / 3], 1, 1)).toBe(0.1);
  });

  test('by hand: two walls of 13.416 are 13.42 each and 26.83 together, a hundredth less; with a third digit they add up', () => {
    const walls = [13.416, 13.416];
    expect([2, 3].map((digits) => leftByRounding(walls, 26.832, digits))).toEqual([-0.01, 0]);
    expect(digitsToTick(2, (digits) => leftByRounding(walls, 26.832, digits) === 0)).toBe(3);
  });

  test('no digit is added where that leaves as much', () => {
    expect(digitsToTick(1, (digits) => leftByRounding([1 / 3, 1 / 3, 1 / 3], 1, digits) === 0)).toBe(1);
  });

  test('with it the printed terms add up to the printed sum, and it is no more than half a step for each figure', () => {
    fc.assert(
      fc.property(fc.array(near, { minLength: 1, maxLength: 12 }), fc.integer({ min: 0, max: 3 }), (terms, digits) => {
        const step = 10 ** -digits;
        const sum = terms.reduce((total, term) => total + term, 0);
        const left = leftByRounding(terms, sum, digits);
        const steps = [...terms.map((term) => asPrinted(term, digits)), left].map((term) => Math.round(term / step));
        expect(steps.reduce((total, term) => total + term, 0)).toBe(Math.round(asPrinted(sum, digits) / step));
        expect(Math.abs(left)).toBeLessThanOrEqual(((terms.length + 1) * step) / 2 + 1e-9);
      }),
    );
  });
});
