import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coatsWords, takeoffAsPrinted, type Takeoff } from '../../src/core/takeoff/index.js';
import { asPrinted, printsAs } from '../../src/base/units/index.js';
import { takeoffSteps } from '../../src/table/index.js';

interface Given {
  readonly places: readonly (readonly number[])[];
  readonly coats?: number;
  readonly waste: number;
}

/** Each place is its gross and what is added to it. */
function takeoffOf({ places, coats = 1, waste }: Given): Takeoff {
  const measured = places.map(([gross = 0, ...rest], index) => ({
    place: `p${index}`,
    name: `Place ${index}`,
    gross,
    adjustments: rest.map((amount) => ({ what: 'Opening', amount, why: 'deducted' })),
    net: Math.max(
      0,
      rest.reduce((sum, amount) => sum + amount, gross),
    ),
  }));
  const net = measured.reduce((sum, place) => sum + place.net, 0);
  return {
    part: 'main',
    unit: 'sq ft',
    places: measured,
    gross: measured.reduce((sum, place) => sum + place.gross, 0),
    net,
    factors: coats === 1 ? [] : [{ times: coats, why: 'coats' }],
    waste: { percent: waste, why: '' },
    required: net * coats * (1 + waste / 100),
    rule: '',
    source: '',
  };
}

describe('a take-off as printed', () => {
  test('by hand: a ceiling of 634.58 less 16.83 in two coats with 8 %: 617.75 × 2 × 1.08 = 1,334.3, which 617.8 is not', () => {
    const takeoff = takeoffOf({ places: [[634.5833, -16.8333]], coats: 2, waste: 8 });
    expect(takeoffAsPrinted(takeoff)).toMatchObject({ digits: 2, gross: 634.58, less: 16.83, net: 617.75 });
    expect(coatsWords(takeoff)).toBe('2 × 667.2 sq ft');
  });

  test('by hand: three walls of 33 1/3 are 33.3 each, and what rounding leaves of 100 is said', () => {
    const takeoff = takeoffOf({ places: [[100 / 3], [100 / 3], [100 / 3]], waste: 0 });
    const { places, net, left } = takeoffAsPrinted(takeoff);
    expect([places.map(({ gross }) => gross), left, net]).toEqual([[33.3, 33.3, 33.3], 0.1, 100]);
    expect(takeoffSteps(takeoff).find(({ what }) => what === 'Rounding')).toMatchObject({ amount: 0.1, digits: 1 });
  });

  test('by hand: walls of 33.25 are printed so, since 33.3 and 33.3 are not 66.5', () => {
    const { places, net, left, digits } = takeoffAsPrinted(takeoffOf({ places: [[33.25], [33.25]], waste: 0 }));
    expect([digits, places.map(({ gross }) => gross), left, net]).toEqual([2, [33.25, 33.25], 0, 66.5]);
  });

  test('where more is taken off than there is, the rest is said', () => {
    const { places, net } = takeoffAsPrinted(takeoffOf({ places: [[20, -15, -8]], waste: 5 }));
    expect(net).toBe(0);
    expect(places[0]?.adjustments.at(-1)).toMatchObject({ what: 'Taken off twice', amount: 3 });
  });

  test('every figure is its own rounding, steps add up to the net with what rounding leaves, and lead through coats and waste to what is required', () => {
    const size = fc.double({ min: 0, max: 2000, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(size, size), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 0, max: 60 }),
        (list, coats, halves) => {
          const waste = halves / 4;
          const takeoff = takeoffOf({ places: list.map(([gross, less]) => [gross, -less]), coats, waste });
          const { digits, places, gross, less, net, left } = takeoffAsPrinted(takeoff);
          const own = (value: number): number => asPrinted(value, digits);
          const terms = places.flatMap((place) => [place.gross, ...place.adjustments.map(({ amount }) => amount)]);
          const sum = (list: readonly number[]): number => own(list.reduce((total, term) => total + term, 0));
          expect(sum([...terms, left])).toBe(net);
          places.forEach((place, index) => {
            const [whole = NaN, off = NaN] = list[index] ?? [];
            expect([place.gross, place.adjustments[0]?.amount]).toEqual([own(whole), own(-off)]);
            expect(sum([place.gross, ...place.adjustments.map(({ amount }) => amount), place.left])).toBe(place.net);
          });
          expect([gross, less, net]).toEqual([takeoff.gross, takeoff.gross - takeoff.net, takeoff.net].map(own));
          expect(digits === 8 || printsAs(net * coats * (1 + waste / 100), takeoff.required, 1)).toBe(true);
        },
      ),
    );
  });
});
