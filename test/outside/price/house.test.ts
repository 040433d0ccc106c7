import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  agreedSteps,
  contractSteps,
  makeLedger,
  netSteps,
  priceHouse,
  shareOut,
  type Item,
} from '../../../src/core/price/index.js';
import { inLocale, type Cents } from '../../../src/base/units/index.js';
import { contract, item, option, priceBook } from '../../price/house.js';
import { randomHouse } from '../../price/random-house.js';
import { asRecorded, handedOut, nothing, onNet, reckoned, sum, totalOf, type House } from './second-way.js';

/** Houses of all kinds priced a second way (`second-way.ts`), today and with other choices; ranges by trying every way. */

const houses = fc.sample(randomHouse, { numRuns: 60, seed: 1997 }).map(({ items, book, allowances }) => {
  const priced = priceHouse(items, allowances, book);
  const recorded = asRecorded(priced.items);
  return { priced, book, allowances, recorded, own: reckoned(recorded, allowances, book) };
});

const changed = (house: House, item: Item, option: string | undefined, decided = true): House =>
  new Map([...house, [item, { option, decided }]]);

describe.each(houses.map((house, index) => [index, house] as const))(
  'house %i',
  (_, { priced, book, allowances, recorded, own }) => {
    test('today', () => {
      for (const [item, cost] of own.costs)
        expect(priced.today.costs.get(item.selection)).toEqual({ ...cost, total: totalOf(cost) });
      expect(priced.change).toBe(own.total);
      expect(priced.net).toEqual(own.net);
      expect(priced.onNet).toEqual({ markup: own.markup, fee: own.fee });
    });

    test('its allowances, with what each still may draw', () => {
      for (const entry of makeLedger(priced)) {
        const mine = own.allowances.get(entry.id);
        if (!mine) throw new Error('reckoned too');
        const draws = priced.items.filter((item) => item.allowance === entry.id);
        const settled = mine.settled && draws.length > 0;
        expect([entry.committed, entry.change, entry.markup, entry.retained, entry.settled]).toEqual([
          mine.committed,
          mine.change,
          mine.markup,
          mine.retained,
          settled,
        ]);
        expect([entry.balance, entry.overage, entry.credit]).toEqual([
          entry.amount - mine.committed,
          Math.max(0, mine.committed - entry.amount),
          Math.max(0, -mine.change),
        ]);
        const figure = (what: string): number | undefined => entry.figures.find((one) => one.what === what)?.amount;
        expect(figure('Drawn')).toBe(mine.committed);
        expect(figure(entry.balance < 0 ? 'Over' : 'Left')).toBe(Math.abs(entry.balance));
        expect(figure('Change of the contract')).toBe(mine.change);
        // An overrun is marked up; what is left once all is decided is told with what stays and what returns.
        const isOver = mine.committed > entry.amount;
        const returns = !isOver && settled && entry.balance > 0;
        expect(figure('Mark-up on it')).toBe(isOver ? mine.markup : undefined);
        expect([figure('Stays with the builder'), figure('Returns to the owner')]).toEqual(
          returns ? [mine.retained, -mine.change] : [undefined, undefined],
        );
        const open = draws.filter((item) => !item.decided);
        if (open.length > 0) {
          expect([figure('Left with the cheapest'), figure('Left with the dearest')]).toEqual([
            entry.balance - entry.openLow,
            entry.balance - entry.openHigh,
          ]);
          expect(entry.sharedLow + sum(entry.lines.filter((line) => line.open).map(({ low }) => low))).toBe(
            entry.openLow,
          );
          expect(entry.sharedHigh + sum(entry.lines.filter((line) => line.open).map(({ high }) => high))).toBe(
            entry.openHigh,
          );
        }
        const ways = waysOf(recorded, open);
        if (ways.length > 300) continue;
        const drawn = ways.map(
          (way) => (reckoned(way, allowances, book).allowances.get(entry.id)?.committed ?? 0) - mine.committed,
        );
        expect([entry.openLow, entry.openHigh, entry.openPriced]).toEqual([
          Math.min(...drawn),
          Math.max(...drawn),
          'all',
        ]);
      }
    });

    test('with another choice, and where the difference comes from', () => {
      for (const item of priced.items.slice(0, 8)) {
        const rest = priced.choices
          .restOf(item)
          .reduce<House>(
            (house, { item: other, stand }) => changed(house, other, stand.option, stand.decided),
            recorded,
          );
        const before = reckoned(rest, allowances, book);
        expect(priced.choices.restChange(item)).toBe(before.total - own.total);
        for (const option of [...item.takeoffs.keys()].slice(0, 3)) {
          const after = reckoned(changed(rest, item, option), allowances, book);
          const figure = priced.choices.figure(item, option);
          expect([figure.change, figure.houseChange]).toEqual([after.total - before.total, after.total - own.total]);
          expect(figure.cost).toEqual({
            ...(after.costs.get(item) ?? nothing),
            total: totalOf(after.costs.get(item) ?? nothing),
          });
          const at = (one: Item): number => (after.places.get(one) ?? 0) - (before.places.get(one) ?? 0);
          expect(figure.here, 'here').toBe(at(item));
          expect(figure.elsewhere, 'elsewhere').toBe(sum(priced.items.filter((one) => one !== item).map(at)));
          expect(figure.onNet).toEqual({ markup: after.markup - before.markup, fee: after.fee - before.fee });
          const through = [...after.allowances].map(([id, is]) => ({
            id,
            change: is.change - (before.allowances.get(id)?.change ?? 0),
          }));
          expect(sum(figure.allowances.map(({ change }) => change))).toBe(sum(through.map(({ change }) => change)));
          for (const { id, change, before: was, committed, settled } of figure.allowances) {
            const is = after.allowances.get(id);
            expect([change, was, committed, settled]).toEqual([
              through.find((one) => one.id === id)?.change,
              before.allowances.get(id)?.committed,
              is?.committed,
              is?.settled,
            ]);
          }
        }
      }
    });

    test('over all ways to decide what is open', () => {
      const open = priced.items.filter((item) => !item.decided && item.considered.length > 0).slice(0, 3);
      const [line] = open;
      if (!line) return;
      const ways = waysOf(recorded, open);
      const totals = ways.map((way) => reckoned(way, allowances, book).total - own.total);
      const found = priced.choices.extremes(open);
      expect([found.low, found.high]).toEqual([Math.min(...totals), Math.max(...totals)]);
      const resting = priced.choices.restOn(line.allowance ?? '').length;
      for (const option of line.considered.slice(0, 2)) {
        const { low, high } = priced.choices.range(line, option, open);
        const others = waysOf(recorded, open.slice(1));
        const stand = recorded.get(line);
        const moves = others.map(
          (way) =>
            reckoned(changed(way, line, option), allowances, book).total -
            reckoned(changed(way, line, stand?.option, stand?.decided), allowances, book).total,
        );
        // How the others rest is compared as well.
        expect(low).toBeLessThanOrEqual(Math.min(...moves));
        expect(high).toBeGreaterThanOrEqual(Math.max(...moves));
        if (
          resting === 0 &&
          open.every(
            ({ allowance, standard, considered }) =>
              allowance === undefined && (standard === undefined || considered.includes(standard)),
          )
        )
          expect([low, high]).toEqual([Math.min(...moves), Math.max(...moves)]);
      }
    });
  },
);

describe('steps add up as one goes', () => {
  const money = fc.integer({ min: -90_000, max: 90_000 }).map((cents) => cents as Cents);

  test('from the contract sum to the total', () => {
    for (const { priced, own, book } of houses) {
      const ledger = makeLedger(priced);
      const selections = priced.items.map((item) => ({
        id: item.selection,
        words: '',
        change: (own.places.get(item) ?? 0) as Cents,
        why: '',
      }));
      const net = netSteps(priced.net, [], book.contract);
      const steps = contractSteps(book.contract, ledger, selections, 0 as Cents, net);
      let running = 0;
      for (const { amount, running: told, kind } of steps) {
        if (kind !== 'total') running += amount;
        expect(told).toBe(running);
      }
      expect(running).toBe(book.contract.sum + own.total);
      expect(sum(net.filter(({ kind }) => kind === 'mark-up').map(({ amount }) => amount))).toBe(own.markup);
      for (const { of, kind, amount, what } of steps) {
        if (kind === 'allowance')
          expect(what.endsWith(amount > 0 ? 'over the allowance' : 'under the allowance')).toBe(true);
        if (kind === 'upgrade' || kind === 'credit') expect(kind).toBe(amount > 0 ? 'upgrade' : 'credit');
        if (kind === 'allowance') expect(amount).toBe(own.allowances.get(of ?? '')?.change);
      }
    }
  });

  test('by what was agreed', () => {
    fc.assert(
      fc.property(fc.array(money, { maxLength: 5 }), money, (orders, today) => {
        const approved = orders.map((amount, index) => ({
          number: index + 1,
          title: '',
          amount,
          decidedOn: '2026-03-02' as const,
          decidedBy: '',
        }));
        const steps = agreedSteps(500_000 as Cents, approved, today);
        const current = 500_000 + sum(orders);
        let running = 500_000;
        steps.slice(1, -3).forEach(({ amount, running: told }, index) => {
          running += orders[index] ?? 0;
          expect([amount, told]).toEqual([orders[index], running]);
        });
        expect(steps.slice(-3).map(({ amount }) => amount)).toEqual([current, today - current, today]);
      }),
    );
  });

  test('with shared packs beside', () => {
    const [, packs, total] = contractSteps(contract, [], [], -250 as Cents, []);
    expect([packs?.kind, packs?.amount, packs?.running, total?.amount]).toEqual([
      'shared-packs',
      -250,
      contract.sum - 250,
      contract.sum - 250,
    ]);
  });
});

test('mark-up on the net, by orders and by what none has yet', () => {
  const money = fc.integer({ min: -500_000, max: 500_000 }).map((cents) => cents as Cents);
  const nets = fc.record({ allowance: money, work: money });
  fc.assert(
    fc.property(
      nets,
      nets,
      fc.constantFrom(...houses.map(({ book }) => book)),
      fc.constantFrom('approved' as const, 'void' as const),
      (all, ordered, book, state) => {
        const rules = { ...book.contract, markupOn: 'net' as const };
        const markup = onNet(ordered, { contract: rules }) as Cents;
        const orders = [{ number: 4, state, netted: { ...ordered, markup } }];
        const steps = netSteps(all, orders, rules);
        const counts = state === 'approved';
        const rest = counts ? { allowance: all.allowance - ordered.allowance, work: all.work - ordered.work } : all;
        const expected = [
          ...(counts ? [['4', markup]] : []),
          [undefined, onNet(rest, { contract: rules })],
          ...(rules.fee
            ? [
                [
                  undefined,
                  Math.sign(all.allowance + all.work) *
                    Math.round((Math.abs(all.allowance + all.work) * rules.fee.amount) / 10 ** rules.fee.scale),
                ],
              ]
            : []),
        ].filter(([, amount]) => amount !== 0);
        expect(steps.map(({ of, amount }) => [of, amount])).toEqual(expected);
      },
    ),
    { numRuns: 200 },
  );
});

test('cents by weights that count to a millionth', () => {
  const weight = fc.oneof(
    fc.integer({ min: 0, max: 40 }).map((count) => count / 1e7),
    fc.integer({ min: 0, max: 9_000_000 }).map((count) => count / 7e3),
  );
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 900_000 }),
      fc.array(weight, { minLength: 1, maxLength: 6 }),
      (amount, weights) => {
        expect(shareOut(amount as Cents, weights)).toEqual(handedOut(amount, weights));
      },
    ),
    { numRuns: 300 },
  );
});

test('in a metric house quantities count by the square metre: to a hundredth where they are bought, to a millionth where they are worked', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 400_000 }), fc.integer({ min: 1, max: 90_000 }), (hundredths, rappen) => {
      const net = hundredths / 100;
      // Written for a square metre, kept for a square foot: 0.3048² of it, exactly.
      const forFoot = (each: number) => ({ amount: each * 9_290_304, scale: 10 });
      const plain = option({ id: 'floor/oak', material: 0 });
      const oak = {
        ...plain,
        parts: plain.parts.map((part) => ({ ...part, material: forFoot(rappen), labor: forFoot(725) })),
      };
      const place = item({ selection: 'a/floor/floor', net, options: ['floor/oak'], chosen: 'floor/oak' });
      const cost = inLocale({ units: 'metric', currency: 'CHF' }, () =>
        priceHouse([place], [], priceBook([oak])).today.costs.get('a/floor/floor'),
      );
      const metres = Math.round(net * 0.09290304 * 1e6);
      const bought = Math.ceil(net * 9.290304 - 1e-9);
      expect(cost?.material).toBe(Math.floor((bought * rappen) / 100 + 1 / 2));
      expect(cost?.labor).toBe(Math.floor(Number(((metres * 725) / 1e6).toPrecision(13)) + 1 / 2));
    }),
  );
});

/** Every way to decide these, each by what is considered there; what has nothing to consider stays. */
function waysOf(house: House, open: readonly Item[]): readonly House[] {
  return open.reduce<readonly House[]>(
    (ways, item) =>
      item.considered.length === 0
        ? ways
        : ways.flatMap((way) => item.considered.map((option) => changed(way, item, option))),
    [house],
  );
}
