import { describe, expect, test } from 'vitest';
import { makeBook } from '../../../src/core/book/index.js';
import { demoHouse } from '../../demo-house.js';
import { choicesIn, countedOf } from './second-way/choice.js';
import { contractOf, standardCosts } from './second-way/contract.js';
import { priced, totalOf } from './second-way/price.js';
import { drawnRooms } from './second-way/room.js';
import { demoWorlds, withChosen } from './second-way/worlds.js';

/** The money of the demo house by a second way, from the take-off of `second-way/`: packs and pieces bought once for the house, material,
 *  labor, freight and tax, the allowances and the contract total, today and with each alternative of each place, to the cent. No
 *  publication is behind it: the same records are worked by other formulas. Left out: railings, which are open on their allowance and so
 *  cost nothing yet; forecasts, ranges and days. */

const { records, measures } = await demoHouse();
const choices = choicesIn(drawnRooms().values());
const worlds = await demoWorlds();
const book = makeBook(records, measures, '2026-04-20').value;
if (!book) throw new Error('the demo house has no book');

describe.each(worlds.map((world) => [world.name, world] as const))('the demo %s is priced a second way', (_, world) => {
  const other = contractOf(world.choices, world.choices);
  const { money, selections } = world.priced;

  test('each allowance', () => {
    for (const { id, amount, committed, isSettled, change } of other.allowances) {
      const entry = money.allowances.find((one) => one.id === id);
      expect(entry?.amount, `${id}: amount`).toBe(amount);
      expect(entry?.committed, `${id}: committed`).toBe(committed);
      expect(entry?.balance, `${id}: balance`).toBe(amount - committed);
      expect(entry?.settled, `${id}: every choice made`).toBe(isSettled);
      expect(entry?.change, `${id}: change`).toBe(change);
    }
  });

  test('each selection beside its allowance', () => {
    const byId = new Map(world.choices.map((choice) => [choice.id, choice]));
    for (const { id, change } of selections) {
      const choice = byId.get(id);
      const stands = choice && countedOf(choice);
      // At its standard a place changes nothing itself: what shared packs move is told once for the house.
      if (stands === undefined || stands !== choice?.standard) expect(change, id).toBe(other.changes.get(id));
    }
  });

  test('mark-up and total', () => {
    expect(money.netChange, 'net').toEqual({ allowance: other.onAllowances, work: other.onWork });
    expect(money.onNet, 'mark-up').toEqual({ markup: other.markup, fee: 0 });
    expect(money.today, 'contract total').toBe(other.total);
  });
});

describe('the demo on a day', () => {
  const { costs, orders } = priced(choices, choices);

  test('buys each product as counted a second way', () => {
    expect(book.orders.map(({ option, supply, part }) => `${option} ${supply} ${part}`).sort()).toEqual(
      [...orders.keys()].sort(),
    );
    // What was invoiced is checked with its allowance.
    for (const { option, supply, part, net, packs, ordered, cost } of book.orders) {
      const order = orders.get(`${option} ${supply} ${part}`);
      expect(net, `${option}: net`).toBeCloseTo(order?.net ?? NaN, 4);
      expect(packs, `${option}: packs`).toBeCloseTo(order?.packs ?? NaN, 6);
      expect(ordered, `${option}: ordered`).toBeCloseTo(order?.ordered ?? NaN, 6);
      if (!option.startsWith('fireplace/') && order)
        expect(cost, `${option}: cost`).toEqual({ ...order.cost, total: totalOf(order.cost) });
    }
  });

  test('costs each place its share', () => {
    expect(costs.size).toBeGreaterThan(200);
    for (const { id, cost, category } of book.selections) {
      const other = costs.get(id);
      if (category !== 'fireplace' && other) expect(cost, id).toEqual({ ...other, total: totalOf(other) });
    }
  });

  test('comes to the same total with each alternative', () => {
    const worked = book.selections.filter(({ category }) => category !== 'railing');
    const cases = worked.flatMap(({ id, rest, alternatives }) =>
      alternatives.map((each) => ({ id, ...each, rest: rest?.lines ?? [] })),
    );
    expect(cases.length).toBeGreaterThan(100);
    const standard = standardCosts(choices);
    for (const { id, option, houseTotal, rest } of cases) {
      const set = new Map(
        [...rest, { selection: id, option }].map((line) => [line.selection, line.option?.split('/').at(-1)]),
      );
      const { total } = contractOf(
        choices.map((choice) => withChosen(choice, set.get(choice.id))),
        choices,
        standard,
      );
      expect(houseTotal, `${id} with ${option}`).toBe(total);
    }
  });
});
