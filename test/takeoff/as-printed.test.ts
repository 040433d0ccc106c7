import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coatsWords, takeoffAsPrinted, type Takeoff } from '../../src/core/takeoff/index.js';
import { asPrinted, printsAs } from '../../src/base/units/index.js';

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

  test('by hand: three walls of 33 1/3 are 33.4, 33.3 and 33.3, as their net is 100', () => {
    const { places, net } = takeoffAsPrinted(takeoffOf({ places: [[100 / 3], [100 / 3], [100 / 3]], waste: 0 }));
    expect([places.map(({ gross }) => gross), net]).toEqual([[33.4, 33.3, 33.3], 100]);
  });

  test('where more is taken off than there is, the rest is said', () => {
    const { places, net } = takeoffAsPrinted(takeoffOf({ places: [[20, -15, -8]], waste: 5 }));
    expect(net).toBe(0);
    expect(places[0]?.adjustments.at(-1)).toMatchObject({ what: 'Taken off twice', amount: 3 });
  });

  test('steps add up to the net, and lead through coats and waste to what is required', () => {
    const size = fc.double({ min: 0, max: 2000, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(size, size), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 0, max: 60 }),
        (list, coats, halves) => {
          const waste = halves / 4;
          const takeoff = takeoffOf({ places: list.map(([gross, less]) => [gross, -less]), coats, waste });
          const { digits, places, gross, less, net } = takeoffAsPrinted(takeoff);
          const terms = places.flatMap((place) => [place.gross, ...place.adjustments.map(({ amount }) => amount)]);
          const sum = terms.reduce((total, term) => total + term, 0);
          expect(asPrinted(sum, digits)).toBe(net);
          expect(asPrinted(gross - less, digits)).toBe(net);
          expect(asPrinted(takeoff.net, digits)).toBe(net);
          expect(digits === 8 || printsAs(net * coats * (1 + waste / 100), takeoff.required, 1)).toBe(true);
        },
      ),
    );
  });
});
