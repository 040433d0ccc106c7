import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tableText } from '../../src/write/index.js';
import {
  houseStanding,
  housesTable,
  housesTotals,
  mostUrgentFirst,
  type HouseStanding,
  type ListedHouse,
} from '../../src/table/index.js';
import type { Cents } from '../../src/base/units/index.js';
import { smallBook } from '../book/small-house.js';

const late = ({ severity }: { readonly severity: string }): boolean => severity !== 'error';

/** The one open choice of the small house is due by 9 June 2026. */
const on = (day: string): HouseStanding => houseStanding(smallBook({}, day, late));

describe('how a house stands', () => {
  test('is what its Book says', () => {
    const book = smallBook();
    expect(houseStanding(book)).toEqual({
      name: 'Small House',
      number: '1',
      currency: 'USD',
      today: book.money.today,
      open: 1,
      late: 0,
      dueSoon: 0,
      next: '2026-06-09',
      overAllowance: 0,
      cautions: 0,
      changeOrders: [],
    });
  });

  test.each([
    ['2026-06-01', { dueSoon: 0, late: 0, next: '2026-06-09' }],
    ['2026-06-02', { dueSoon: 1, late: 0, next: '2026-06-09' }],
    ['2026-06-09', { dueSoon: 1, late: 0, next: '2026-06-09' }],
    ['2026-06-10', { dueSoon: 0, late: 1 }],
  ])('on %s', (day, expected) => {
    const { dueSoon, late: isLate, next } = on(day);
    expect({ dueSoon, late: isLate, ...(next !== undefined && { next }) }).toEqual(expected);
  });

  test('an allowance that is underrun takes nothing off one that is overrun, and what is declined waits for nobody', () => {
    const book = smallBook();
    const [allowance] = book.money.allowances;
    const entry = (overage: number, balance: number) =>
      ({ ...allowance, overage, balance }) as NonNullable<typeof allowance>;
    const order = (number: number, state: 'proposed' | 'declined') =>
      ({ number, state }) as (typeof book.changeOrders)[number];
    const standing = houseStanding({
      ...book,
      money: { ...book.money, allowances: [entry(300, -300), entry(0, 900), entry(20, -20)] },
      changeOrders: [order(1, 'declined'), order(2, 'proposed')],
    });
    expect(standing).toMatchObject({ overAllowance: 320, changeOrders: [2] });
  });
});

const cents = fc.integer({ min: -1e9, max: 1e9 }).map((value) => value as Cents);
const standings: fc.Arbitrary<HouseStanding> = fc
  .record({
    currency: fc.constantFrom('USD', 'EUR', 'JPY'),
    today: cents,
    overAllowance: fc.nat(1e9).map((value) => value as Cents),
    late: fc.nat(3),
    dueSoon: fc.nat(3),
    later: fc.nat(30),
    cautions: fc.nat(9),
    next: fc.option(fc.constantFrom('2026-05-04', '2026-06-01'), { nil: undefined }),
    changeOrders: fc.array(fc.nat(9), { maxLength: 2 }),
  })
  .map(({ later, next, ...of }) => ({
    name: 'A house',
    number: '1',
    ...of,
    open: of.late + of.dueSoon + later,
    ...(next !== undefined && { next }),
  }));
const lists: fc.Arbitrary<readonly ListedHouse[]> = fc
  .array(fc.option(standings, { nil: undefined }), { maxLength: 12 })
  .map((all) =>
    all.map((standing, index) => ({
      folder: `h${index}`,
      ...(standing ? { errors: 0, standing } : { errors: index + 1 }),
    })),
  );

describe('many houses', () => {
  test('add up by currency, and every house without errors is in one sum', () => {
    fc.assert(
      fc.property(lists, (houses) => {
        const totals = housesTotals(houses);
        const without = houses.flatMap(({ standing }) => standing ?? []);
        expect(totals.reduce((sum, { houses: count }) => sum + count, 0)).toBe(without.length);
        for (const total of totals) {
          const own = without.filter(({ currency }) => currency === total.currency);
          for (const key of ['today', 'open', 'late', 'dueSoon', 'overAllowance', 'cautions'] as const)
            expect(total[key]).toBe(own.reduce((sum, standing) => sum + standing[key], 0));
        }
      }),
    );
  });

  test('stand in one order, however they were found', () => {
    fc.assert(
      fc.property(
        lists.chain((houses) =>
          fc.tuple(fc.constant(houses), fc.shuffledSubarray([...houses], { minLength: houses.length })),
        ),
        ([houses, shuffled]) => {
          const sorted = mostUrgentFirst(houses);
          expect(mostUrgentFirst(shuffled)).toEqual(sorted);
          const rank = ({ errors, standing }: ListedHouse) => [errors, standing?.late ?? 0, standing?.dueSoon ?? 0];
          for (const [index, house] of sorted.slice(1).entries()) {
            const [before, after] = [rank(sorted[index] ?? house), rank(house)];
            const differs = before.findIndex((value, at) => value !== after[at]);
            if (differs >= 0) expect(before[differs]).toBeGreaterThan(after[differs] ?? 0);
          }
        },
      ),
    );
  });

  test('are printed in their own currencies, with a sum for each', () => {
    const standing = { ...on('2026-04-20'), today: 1_234_500 as Cents };
    const text = tableText(
      housesTable([
        { folder: 'a', errors: 0, standing },
        { folder: 'b', errors: 0, standing: { ...standing, currency: 'JPY' } },
        { folder: 'c', errors: 0, standing },
        { folder: 'd', errors: 2 },
      ]),
    );
    expect(text).toMatch(/^2 houses in USD .* \$24,690\.00 /mu);
    expect(text).toMatch(/^1 house in JPY .* ¥1,234,500 /mu);
    expect(text).toMatch(/^d +2$/mu);
    expect(text.endsWith('\nIn no sum: 1 house with errors.\n')).toBe(true);
  });
});
