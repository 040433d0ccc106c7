import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addingUp, asPrinted, fewestDigits, printAmount, printsAs } from '../../src/base/units/index.js';

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

describe('terms that add up', () => {
  test('by hand: thirds of one are 0.4, 0.3 and 0.3', () => {
    expect(addingUp([1 / 3, 1 / 3, 1 / 3], 1)).toEqual([0.4, 0.3, 0.3]);
  });

  test('by hand: 634.58 less 16.83 is 617.75: of 634.5 and −16.9 the first has the larger remainder and is rounded up, and so is the other', () => {
    expect(addingUp([634.58, -16.83], 1)).toEqual([634.6, -16.8]);
  });

  test('to the printed sum, each within one step of its own, in order of their size', () => {
    fc.assert(
      fc.property(fc.array(near, { minLength: 1, maxLength: 12 }), fc.integer({ min: 0, max: 3 }), (terms, digits) => {
        const step = 10 ** -digits;
        const printed = addingUp(terms, digits);
        const sum = terms.reduce((total, term) => total + term, 0);
        const steps = printed.reduce((total, term) => total + Math.round(term / step), 0);
        expect(steps).toBe(Math.round(asPrinted(sum, digits) / step));
        terms.forEach((term, index) => expect(Math.abs((printed[index] ?? NaN) - term)).toBeLessThan(step * 1.000_001));
      }),
    );
  });
});
