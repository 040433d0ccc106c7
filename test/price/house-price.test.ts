import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addCosts,
  changeInWorld,
  contractSteps,
  makeLedger,
  orderList,
  ownerPurchases,
  priceHouse,
  worldCost,
  type HousePrice,
  type Item,
} from '../../src/core/price/index.js';
import type { Contract, CostPart } from '../../src/core/model/index.js';
import { allowance, cents, contract, item, option, percent, priceBook } from './house.js';
import { randomHouse } from './random-house.js';

const oak = option({ id: 'floor/oak', material: 10, labor: 5, holds: 20 });
const pine = option({ id: 'floor/pine', material: 4, labor: 5 });
const both = ['floor/oak', 'floor/pine'];

describe('a pooled order', () => {
  // 90 + 15 = 105 sq ft is 6 boxes of 20 for the house; room by room it would be 5 + 1 = 6 for 90 and 15, 7 for 81 and 24.
  test('buys whole boxes once for the house and shares them by what each place needs', () => {
    const items = [
      item({ selection: 'a/floor/floor', net: 81, options: both, standard: 'floor/oak', chosen: 'floor/oak' }),
      item({ selection: 'b/floor/floor', net: 24, options: both, standard: 'floor/oak', chosen: 'floor/oak' }),
    ];
    const { today } = priceHouse(items, [], priceBook([oak, pine]));
    const [order] = orderList(today);
    expect(order).toMatchObject({ packs: 6, ordered: 120, net: 105 });
    expect(order?.cost.material).toBe(cents(1200));
    // 1 200 × 81/105 = 925.714… and 274.285…: the cent left over goes to the larger remainder
    expect(today.costs.get('a/floor/floor')).toMatchObject({ material: 92571, labor: 40500 });
    expect(today.costs.get('b/floor/floor')).toMatchObject({ material: 27429, labor: 12000 });
  });

  test('pays freight once and taxes what the contract says', () => {
    const tile = option({ id: 'floor/tile', material: 6, labor: 9, freight: 100 });
    const items = ['a', 'b'].map((room) =>
      item({
        selection: `${room}/floor/floor`,
        net: 50,
        options: ['floor/tile'],
        standard: 'floor/tile',
        chosen: 'floor/tile',
      }),
    );
    const { today } = priceHouse(
      items,
      [],
      priceBook([tile], { tax: [{ rate: percent(5), on: ['material', 'freight'] }] }),
    );
    expect(worldCost(today)).toEqual({ material: 60000, freight: 10000, tax: 3500, labor: 90000, total: 163500 });
  });
});

describe('upgrades and credits against the standard', () => {
  const chosen = (slug: string, rules = {}) => {
    const items = [item({ selection: 'a/floor/floor', net: 100, options: both, standard: 'floor/pine', chosen: slug })];
    return priceHouse(items, [], priceBook([oak, pine], rules)).change;
  };

  test('the standard itself changes nothing', () => expect(chosen('floor/pine')).toBe(0));
  // oak 5 boxes × 20 × 10 = 1 000 against pine 400: 600 over, 15 % mark-up
  test('an upgrade carries the mark-up', () => expect(chosen('floor/oak')).toBe(cents(690)));

  test('a credit returns what the contract says', () => {
    const items = [
      item({ selection: 'a/floor/floor', net: 100, options: both, standard: 'floor/oak', chosen: 'floor/pine' }),
    ];
    expect(priceHouse(items, [], priceBook([oak, pine])).change).toBe(cents(-600));
    expect(priceHouse(items, [], priceBook([oak, pine], { creditReturns: percent(80) })).change).toBe(cents(-480));
    expect(priceHouse(items, [], priceBook([oak, pine], { creditMarkup: 'as-added' })).change).toBe(cents(-690));
  });

  test('a deliberate none gives the standard back', () => {
    const items = [
      item({ selection: 'a/floor/floor', net: 100, options: both, standard: 'floor/pine', decided: true }),
    ];
    expect(priceHouse(items, [], priceBook([oak, pine])).change).toBe(cents(-900));
  });
});

describe('an allowance', () => {
  const house = (amount: number, sketches: { chosen?: string; net: number }[]): HousePrice =>
    priceHouse(
      sketches.map(({ chosen, net }, index) =>
        item({ selection: `${index}/floor/floor`, net, options: both, allowance: 'floors', ...(chosen && { chosen }) }),
      ),
      [allowance('floors', amount)],
      priceBook([oak, pine]),
    );

  test('over: the overrun counts at once, with mark-up', () => {
    const priced = house(900, [{ chosen: 'floor/oak', net: 100 }, { net: 10 }]);
    expect(makeLedger(priced)[0]).toMatchObject({
      committed: cents(1000),
      balance: cents(-100),
      overage: cents(100),
      markup: cents(15),
      settled: false,
      change: cents(115),
    });
    expect(priced.change).toBe(cents(115));
  });

  // $1,000 drawn: 900 is overrun by 100 and 15 on it; 1,500, all of it decided, returns 500.
  test.each([
    { amount: 900, change: 115, what: 'floors: over the allowance' },
    { amount: 1500, change: -500, what: 'floors: under the allowance' },
  ])('of $amount: is a step that says on which side of it the draw lies', ({ amount, change, what }) => {
    const priced = house(amount, [{ chosen: 'floor/oak', net: 100 }]);
    const steps = contractSteps(contract, makeLedger(priced), [], cents(0), []);
    const allowances = steps.filter(({ kind }) => kind === 'allowance');
    expect(allowances).toMatchObject([{ what, amount: cents(change), running: cents(100_000 + change) }]);
  });

  test('under: nothing returns until all is decided', () => {
    const open = house(1500, [{ chosen: 'floor/oak', net: 100 }, { net: 10 }]);
    expect(open.change).toBe(0);
    expect(makeLedger(open)[0]).toMatchObject({ openLow: cents(40), openHigh: cents(200) });
    const settled = house(1500, [{ chosen: 'floor/oak', net: 100 }]);
    expect(settled.change).toBe(cents(-500));
    expect(makeLedger(settled)[0]).toMatchObject({ credit: cents(500), settled: true });
  });

  test('what does not return in full says what stays, figure by figure', () => {
    const items = [
      item({ selection: 'a/floor/floor', net: 100, options: both, chosen: 'floor/oak', allowance: 'floors' }),
    ];
    const rules = { creditReturns: percent(80), creditMarkup: 'as-added' } as const;
    const [entry] = makeLedger(priceHouse(items, [allowance('floors', 1500)], priceBook([oak, pine], rules)));
    // 500 left; 80 % is 400, and 15 % of it, 60, returns with it
    expect(entry).toMatchObject({ retained: cents(100), markup: cents(-60), credit: cents(460), change: cents(-460) });
    expect(entry?.figures.map(({ what, amount, why }) => `${what} ${amount / 100}: ${why}`)).toEqual([
      'Allowance 1500: lump sum',
      'Drawn 1000: 1 choice made, in what it covers',
      'Left 500: the allowance less what is drawn',
      'Stays with the builder 100: the contract returns 80 % of what is left',
      'Mark-up that returns with it -60: 15 % of $400.00',
      'Returns to the owner 460: $500.00 less $100.00 plus $60.00',
      'Change of the contract -460: what returns to the owner comes off the contract',
    ]);
    expect(entry?.coversText).toBe('Covers material, freight and tax. Labor is not drawn on it.');
    expect(entry?.lines[0]?.why).toBe('material $1,000.00');
  });

  test('that covers tax says what the tax is on, and what of it is no part of the allowance', () => {
    const said = (covers: readonly CostPart[], tax: Contract['tax']): string | undefined =>
      makeLedger(priceHouse([], [allowance('floors', 1500, covers)], priceBook([oak], { tax })))[0]?.coversText;
    const sixOnBoth = { rate: percent(6), on: ['material', 'labor'] } as const;
    expect(said(['material', 'labor', 'freight', 'tax'], [sixOnBoth])).toBe(
      'Covers material, freight, tax and labor. Everything in place is drawn on it. Tax is 6 % of material and labor.',
    );
    expect(said(['material', 'tax'], [sixOnBoth])).toBe(
      'Covers material and tax. Freight and labor are not drawn on it. Tax is 6 % of material and labor; that of labor is drawn, too.',
    );
    expect(
      said(['material', 'tax'], [{ authority: 'State', rate: percent(5), on: ['material'] }, sixOnBoth]),
    ).toContain('Tax is State 5 % of material plus 6 % of material and labor; that of labor is drawn, too.');
    expect(said(['material', 'labor'], [sixOnBoth])).toBe(
      'Covers material and labor. Freight and tax are not drawn on it.',
    );
  });

  test('one that nothing draws on returns nothing', () => {
    const items = [
      item({ selection: 'a/floor/floor', net: 10, options: both, standard: 'floor/oak', chosen: 'floor/oak' }),
    ];
    const priced = priceHouse(items, [allowance('floors', 900)], priceBook([oak, pine]));
    expect([priced.change, makeLedger(priced)[0]?.change]).toEqual([0, 0]);
  });

  test('what it does not cover is compared with the standard', () => {
    const dear = option({ id: 'floor/dear', material: 4, labor: 8 });
    const items = [
      item({
        selection: 'a/floor/floor',
        net: 100,
        options: ['floor/pine', 'floor/dear'],
        standard: 'floor/pine',
        chosen: 'floor/dear',
        allowance: 'floors',
      }),
    ];
    // material on budget; labor 800 against 500, 15 % on the difference
    expect(priceHouse(items, [allowance('floors', 400)], priceBook([pine, dear])).change).toBe(cents(345));
  });
});

test('owner-furnished goods cost the contract their installation only', () => {
  const items = [
    item({
      selection: 'a/floor/floor',
      net: 100,
      options: both,
      standard: 'floor/pine',
      chosen: 'floor/pine',
      supply: 'owner-furnished',
    }),
  ];
  const { today } = priceHouse(items, [], priceBook([oak, pine]));
  expect(worldCost(today)).toMatchObject({ material: 0, labor: cents(500) });
  expect(ownerPurchases(today)).toBe(cents(400));
  const byOwner = priceHouse(items, [], priceBook([oak, pine], { ownerFurnishedInstall: 'owner' }));
  expect(worldCost(byOwner.today).total).toBe(0);
});

// 100 sq ft at $6 is $600; 5 % on it and on $80 of freight is $34. The labor of $900 is the contract's.
test('the owner pays the goods, their freight and the tax on both', () => {
  const tile = option({ id: 'floor/tile', material: 6, labor: 9, freight: 80 });
  const own = { net: 100, options: ['floor/tile'], standard: 'floor/tile', chosen: 'floor/tile' } as const;
  const items = [item({ ...own, selection: 'a/floor/floor', supply: 'owner-furnished' })];
  const tax = [{ rate: percent(5), on: ['material', 'freight'] as const }];
  const { today } = priceHouse(items, [], priceBook([tile], { tax }));
  expect(ownerPurchases(today)).toBe(cents(714));
  expect(worldCost(today)).toEqual({ material: 0, freight: 0, tax: 0, labor: cents(900), total: cents(900) });
});

describe('random houses', () => {
  test('shares add up to the orders to the cent, by room, allowance and house', () => {
    fc.assert(
      fc.property(randomHouse, ({ items, allowances, book }) => {
        const { today } = priceHouse(items, allowances, book);
        const orders = addCosts(orderList(today).map((order) => order.cost));
        expect(worldCost(today)).toEqual(orders);
        const rooms = [...new Set(items.map((each) => each.room))];
        const byRoom = rooms.map((room) =>
          addCosts(items.filter((each) => each.room === room).flatMap((each) => today.costs.get(each.selection) ?? [])),
        );
        expect(addCosts(byRoom)).toEqual(orders);
        for (const order of orderList(today)) expect(order.ordered).toBeGreaterThanOrEqual(order.required - 1e-6);
      }),
    );
  });

  test('the order of files changes no cent', () => {
    fc.assert(
      fc.property(randomHouse, fc.integer(), ({ items, allowances, book }, seed) => {
        const shuffled = [...items].sort(
          (a, b) => ((a.selection.length * 7 + seed) % 5) - ((b.selection.length * 3 + seed) % 7),
        );
        const one = priceHouse(items, allowances, book);
        const other = priceHouse(shuffled.reverse(), allowances, book);
        expect(other.change).toBe(one.change);
        for (const each of items)
          expect(other.today.costs.get(each.selection)).toEqual(one.today.costs.get(each.selection));
      }),
    );
  });

  test('what a choice would cost is what the whole house costs with it', () => {
    fc.assert(
      fc.property(randomHouse, fc.nat(), fc.nat(), ({ items, allowances, book }, which, choice) => {
        const house = priceHouse(items, allowances, book);
        const target = house.items[which % house.items.length] as Item;
        const ids = [...target.takeoffs.keys()];
        const id = ids[choice % ids.length] as string;
        const changed = items.map((each) =>
          each.selection === target.selection ? { ...each, chosen: id, decided: true } : each,
        );
        const whole = priceHouse(changed, allowances, book);
        const { houseChange, cost } = house.choices.figure(target, id);
        if (house.choices.restOf(target).length > 0) return;
        expect(house.change + houseChange).toBe(whole.change);
        expect(whole.today.costs.get(target.selection)).toEqual(cost);
      }),
    );
  });

  test('taking a choice back brings the house back, and choosing what stands changes nothing', () => {
    fc.assert(
      fc.property(randomHouse, fc.nat(), ({ items, allowances, book }, which) => {
        const house = priceHouse(items, allowances, book);
        const target = house.items[which % house.items.length] as Item;
        if (target.chosen !== undefined) expect(house.choices.figure(target, target.chosen).change).toBe(0);
        const decidedAsToday = changeInWorld(house, (each) => each.chosen);
        if (items.every((each) => each.decided)) expect(decidedAsToday.change).toBe(house.change);
      }),
    );
  });
});
