import fc from 'fast-check';
import { expect, test } from 'vitest';
import { poolSupplies, sumSupplies, type Takeoff } from '../../../src/core/takeoff/index.js';
import { takeoff } from './second-way/words.js';

/** Supplies of the house, put together pile by pile as a yard would. No publication is behind it. */

const pack = { name: 'roll', holds: 50 };
const uses = fc.array(
  fc.record({
    selection: fc.constantFrom('a/board/walls', 'b/board/walls'),
    trade: fc.constantFrom('drywall', 'tile'),
    what: fc.constantFrom('Tape', 'Screws'),
    net: fc.integer({ min: 0, max: 400 }),
    waste: fc.constantFrom(0, 10),
    packed: fc.boolean(),
    source: fc.constantFrom('one', 'other'),
  }),
  { maxLength: 8 },
);

test('by trade, name and pack: what each place needs adds up, and the house opens whole packs once', () => {
  fc.assert(
    fc.property(uses, (list) => {
      const used = list.map(({ selection, trade, what, net, waste, packed, source }) => ({
        selection,
        trade,
        takeoff: [
          {
            ...takeoff([], 1, 0),
            supplies: [
              {
                ...{ what, unit: 'lin ft', factors: [], net, source },
                follows: { quantity: 1, unit: 'sq ft' },
                usage: { amount: 1, unit: 'lin ft', per: 1, of: 'sq ft' },
                waste: { percent: waste },
                required: (net * (100 + waste)) / 100,
                ...(packed && { pack }),
              },
            ],
          } satisfies Takeoff,
        ],
      }));
      const piles = new Map<string, (typeof list)[number][]>();
      for (const one of list.filter(({ net }) => net > 0)) {
        const key = `${one.trade} ${one.what} ${one.packed}`;
        piles.set(key, [...(piles.get(key) ?? []), one]);
      }
      const needs = (own: typeof list): number =>
        own.reduce((sum, { net, waste }) => sum + (net * (100 + waste)) / 100, 0);
      const orders = poolSupplies(used);
      expect(orders.map(({ trade, what, pack: own }) => `${trade} ${what} ${own !== undefined}`)).toEqual([
        ...piles.keys(),
      ]);
      orders.forEach(({ net, required, packs, shares, sources }, index) => {
        const own = [...piles.values()][index] ?? [];
        expect(net).toBeCloseTo(
          own.reduce((sum, each) => sum + each.net, 0),
          9,
        );
        expect(required).toBeCloseTo(needs(own), 9);
        expect(packs).toBe(own[0]?.packed ? Math.ceil(needs(own) / 50 - 1e-9) : undefined);
        const places = [...new Set(own.map(({ selection }) => selection))];
        expect(shares.map(({ selection }) => selection)).toEqual(places);
        for (const { selection, required: share } of shares)
          expect(share).toBeCloseTo(needs(own.filter((each) => each.selection === selection)), 9);
        expect(sources).toEqual([...new Set(own.map(({ source }) => source))]);
      });
      expect(sumSupplies(used).map(({ required, packs }) => [required, packs])).toEqual(
        orders.map(({ required }) => [required, undefined]),
      );
    }),
  );
});
