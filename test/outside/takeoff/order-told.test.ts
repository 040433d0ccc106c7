import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  orderStatement,
  sumLaid,
  takeoffAsPrinted,
  type LaidShares,
  type Takeoff,
} from '../../../src/core/takeoff/index.js';
import { fromInches } from '../../../src/base/units/index.js';
import { areas, numberIn, read, takeoff } from './second-way/words.js';

/** What is told of an order, worked again from its words. No publication is behind it. */

describe('the order and its check', () => {
  const laid = fc.record({
    bought: areas,
    covered: areas,
    cutAway: fc.constantFrom(0, 0.04, 0.051, 3.3),
    strips: fc.constantFrom(0, 0.049, 12.26),
    ends: fc.constantFrom(0, 0.052, 5),
    endTrim: fc.constantFrom(0, 1.5),
    sawCuts: fc.constantFrom(0, 0.02, 0.2),
  });

  test('say by how much the two are apart, and the same only where they print alike', () => {
    fc.assert(
      fc.property(
        laid,
        fc.constantFrom(-30, -0.2, -0.0524, -0.04, 0, 0.04, 0.0524, 0.2, 30),
        fc.constantFrom('pieces' as const, 'area' as const),
        (surface, more, orderBy) => {
          const required = surface.bought - more;
          fc.pre(required > 0);
          const { order, check, short, why } = orderStatement(
            { orderBy, stock: [{ length: fromInches(96), count: 3 }], surface: surface as unknown as LaidShares },
            { required, wasteWords: 'with 8 % waste' },
          );
          const figure = (area: number): string =>
            `${read(area).toLocaleString('en', { maximumFractionDigits: 1 })} sq ft`;
          const apart = (over: number): string =>
            read(over) === 0 ? 'the same' : `${figure(Math.abs(over))} ${over > 0 ? 'more' : 'less'}`;
          const [asLaid, asArea] = [`3 at 8'-0", ${figure(surface.bought)}`, `${figure(required)} with 8 % waste`];
          if (orderBy === 'pieces') {
            expect([order, check]).toEqual([
              `Order by pieces, as laid: ${asLaid}`,
              `Check by area: ${asArea}; the pieces are ${apart(more)}`,
            ]);
            expect(short).toBe(`Order by the pieces. Check by area: ${figure(required)}, ${apart(-more)}`);
          } else {
            expect(order).toBe(`Order by area: ${asArea}`);
            const spare =
              more > 1e-9
                ? `the pieces are ${apart(more)}, so the packs of the whole house must make up for it`
                : `the order is ${apart(-more)}, for faults and mistakes`;
            if (Math.abs(more) > 1e-9) expect(check).toBe(`Check as laid: ${asLaid}; ${spare}`);
            expect(short).toBe(`Order by area. Check by the pieces: ${figure(surface.bought)}, ${apart(more)}`);
          }
          // What prints as nothing is not told.
          const { cutAway, strips, ends, endTrim, sawCuts } = surface;
          const told = [cutAway, strips, ends, endTrim, sawCuts].filter((area) => read(area) > 0);
          expect(
            why
              .split(', ')
              .filter((part) => /cut away|strips|ends|saw cuts/u.test(part))
              .map((part) => numberIn(/^[\d,.]+/u.exec(part)?.[0])),
          ).toEqual(told.map((area) => read(area)));
        },
      ),
      { numRuns: 300 },
    );
  });

  test('add up over places', () => {
    fc.assert(
      fc.property(laid, laid, (one, other) => {
        const layout = (surface: unknown, count: number) =>
          ({
            ...takeoff([], 1, 0),
            layout: { orderBy: 'pieces', stock: [{ length: fromInches(96), count }], surface },
          }) as unknown as Takeoff;
        const sum = sumLaid([layout(one, 2), layout(other, 5)]);
        expect(sum?.stock).toEqual([{ length: fromInches(96), count: 7 }]);
        for (const [key, area] of Object.entries(sum?.surface ?? {}))
          expect(area).toBeCloseTo(one[key as keyof typeof one] + other[key as keyof typeof other], 9);
        expect(sumLaid([layout(one, 2), takeoff([], 1, 0)])).toBeUndefined();
      }),
    );
  });
});

test('what is taped to hundredths is printed to tenths where these add up, else to hundredths, which do', () => {
  const hundredths = fc.integer({ min: 0, max: 9_000 }).map((count) => count / 100);
  fc.assert(
    fc.property(hundredths, hundredths, hundredths, (net, one, other) => {
      const gross = net + one + other;
      const adjustments = [one, other].map((amount) => ({ what: 'Opening', amount: -amount, why: '' }));
      const places = [{ place: 'north', name: '', gross, adjustments, net }];
      const told = takeoffAsPrinted({ ...takeoff([], 1, 0), places, net, gross, required: net });
      const left = (all: number, taken: readonly number[]): number =>
        read(taken.reduce((rest, each) => rest - read(each), read(all)) - read(net));
      // All together it is the difference, whose half of a tenth may be a hair less than that of the parts added up.
      const isEnough = left(gross, [one, other]) === 0 && left(gross, [gross - net]) === 0;
      expect([told.digits, told.left]).toEqual([isEnough ? 1 : 2, 0]);
    }),
    { numRuns: 300 },
  );
});
