import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Net } from '../../src/core/model/index.js';
import { makeLedger, markupOnNet, netSteps, onNet, priceHouse, shareOf } from '../../src/core/price/index.js';
import type { Cents } from '../../src/base/units/index.js';
import { allowance, cents, contract, item, option, percent, priceBook } from './house.js';
import { randomHouse, randomRules } from './random-house.js';

const rules = { ...contract, markupOn: 'net', workMarkup: percent(10) } as const;
const net = (overAllowances: number, work: number): Net => ({ allowance: cents(overAllowances), work: cents(work) });

describe('mark-up on the net', () => {
  test('additions less deductions, the rest at the rate of what exceeds', () => {
    expect(markupOnNet(net(0, 1000), rules)).toBe(cents(100));
    expect(markupOnNet(net(1000, 0), rules)).toBe(cents(150));
    expect(markupOnNet(net(400, 600), rules)).toBe(cents(60 + 60));
    expect(markupOnNet(net(1000, -400), rules)).toBe(cents(90));
    expect(markupOnNet(net(-400, 1000), rules)).toBe(cents(60));
    expect(markupOnNet(net(400, -400), rules)).toBe(0);
  });

  test('a net decrease returns what the contract says of credits', () => {
    expect(markupOnNet(net(-1000, 400), rules)).toBe(0);
    expect(markupOnNet(net(-1000, 400), { ...rules, creditMarkup: 'as-added' })).toBe(cents(-90));
    expect(markupOnNet(net(-1000, 400), { ...rules, creditMarkup: percent(5) })).toBe(cents(-30));
  });

  test('nothing on the net of a contract that has it on each line', () => {
    expect(markupOnNet(net(1000, 1000), contract)).toBe(0);
  });

  test('change orders keep the net that they were figured on: a later decrease takes none of it back', () => {
    const orders = [
      { number: 1, state: 'approved', netted: { ...net(0, 1000), markup: cents(100) } },
      { number: 2, state: 'declined', netted: { ...net(0, 9000), markup: cents(900) } },
    ] as const;
    // 1 000 was added and 400 taken off since: of the 400 nothing returns, and the hundred stays.
    expect(netSteps(net(0, 600), orders, rules)).toEqual([
      {
        what: 'Mark-up on the net of change order 1',
        kind: 'mark-up',
        of: '1',
        amount: cents(100),
        why: 'additions less deductions: 10 % of $1,000.00',
      },
    ]);
    expect(netSteps(net(0, 600), [], rules)).toMatchObject([{ amount: cents(60) }]);
  });

  test('a fee is a step of its own, on what is added and on what is taken off alike', () => {
    const fee = { ...contract, fee: percent(8) };
    expect(netSteps(net(300, 700), [], fee)).toMatchObject([{ what: 'Contractor’s fee', amount: cents(80) }]);
    expect(netSteps(net(0, -500), [], fee)).toMatchObject([{ amount: cents(-40) }]);
  });

  test('the steps are what the house adds on its net', () => {
    const amount = fc.integer({ min: -900_000, max: 900_000 });
    const order = fc.record({
      number: fc.nat(99),
      state: fc.constantFrom('proposed' as const, 'approved' as const, 'declined' as const, 'void' as const),
      netted: fc.option(
        fc.tuple(amount, amount, amount).map(([a, w, m]) => ({ ...net(a / 100, w / 100), markup: m as Cents })),
        { nil: undefined },
      ),
    });
    fc.assert(
      fc.property(amount, amount, fc.array(order), randomRules, (a, w, list, random) => {
        const all = { ...contract, ...random };
        const orders = list.map(({ netted, ...rest }) => ({ ...rest, ...(netted && { netted }) }));
        const of = net(a / 100, w / 100);
        const steps = netSteps(of, orders, all).reduce((sum, step) => sum + step.amount, 0);
        const netted = orders
          .filter(({ state }) => state === 'proposed' || state === 'approved')
          .reduce(
            (sum, { netted: one }) => ({
              allowance: (sum.allowance + (one?.allowance ?? 0)) as Cents,
              work: (sum.work + (one?.work ?? 0)) as Cents,
              markup: (sum.markup + (one?.markup ?? 0)) as Cents,
            }),
            { ...net(0, 0), markup: cents(0) },
          );
        const { markup, fee } = onNet(of, netted, all);
        expect(steps).toBe(markup + fee);
      }),
    );
  });
});

describe('a house', () => {
  const oak = option({ id: 'floor/oak', material: 10 });
  const pine = option({ id: 'floor/pine', material: 4 });
  const ids = ['floor/oak', 'floor/pine'];

  test('two sums on one change are netted before mark-up, and no line carries any', () => {
    const items = [
      item({ selection: 'a/floor/floor', net: 100, options: ids, standard: 'floor/pine', chosen: 'floor/oak' }),
      item({ selection: 'b/floor/floor', net: 40, options: ids, standard: 'floor/oak', chosen: 'floor/pine' }),
    ];
    const on = (markupOn: 'net' | 'each-line') => priceHouse(items, [], priceBook([oak, pine], { markupOn })).change;
    // 600 more and 240 less: 15 % of 360, and of 600 where every line carries its own
    expect(on('net')).toBe(cents(360 + 54));
    expect(on('each-line')).toBe(cents(360 + 90));
  });

  test('an allowance and other work have rates of their own on each line', () => {
    const items = [
      item({ selection: 'a/floor/floor', net: 100, options: ids, chosen: 'floor/oak', allowance: 'floors' }),
      item({ selection: 'b/floor/floor', net: 100, options: ids, standard: 'floor/pine', chosen: 'floor/oak' }),
    ];
    const book = priceBook([oak, pine], { overageMarkup: percent(20), workMarkup: percent(10) });
    // 200 over the allowance and 40; 600 of other work and 60
    const house = priceHouse(items, [allowance('floors', 800)], book);
    expect(house.change).toBe(cents(240 + 660));
    expect(makeLedger(house)[0]).toMatchObject({ markup: cents(40), change: cents(240) });
  });

  test('lines, allowances and the figures on their net add up to the change, whatever the rules', () => {
    fc.assert(
      fc.property(randomHouse, ({ items, allowances, book }) => {
        const house = priceHouse(items, allowances, book);
        const { markup, fee } = house.onNet;
        const sum = house.net.allowance + house.net.work;
        if (book.contract.markupOn === 'net') expect(house.change).toBe(sum + markup + fee);
        if (book.contract.fee) expect(fee).toBe(shareOf(sum as Cents, book.contract.fee));
        const byLedger = makeLedger(house).reduce((total, { change }) => total + change, 0);
        if (book.contract.markupOn === 'net') expect(byLedger).toBe(house.net.allowance);
      }),
    );
  });
});
