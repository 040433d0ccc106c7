import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Invoice } from '../../src/core/model/index.js';
import {
  addCosts,
  contractSteps,
  makeLedger,
  orderList,
  priceHouse,
  worldCost,
  type Item,
} from '../../src/core/price/index.js';
import { allowance, cents, contract, item, option, priceBook } from './house.js';
import { randomHouse } from './random-house.js';

const oak = option({ id: 'floor/oak', material: 10, labor: 5 });
const ids = ['floor/oak'];

const invoice = (amount: number, rest: Partial<Invoice> = {}): Invoice => ({
  option: 'floor/oak',
  number: 'F-118',
  on: '2026-04-14',
  amount: cents(amount),
  heldBy: 'The builder',
  last: true,
  ...rest,
});

const place = (room: string, net: number, rest: Partial<Item> = {}): Item => ({
  ...item({ selection: `${room}/floor/floor`, net, options: ids, chosen: 'floor/oak', allowance: 'floors' }),
  ordered: true,
  ...rest,
});

function house(items: readonly Item[], invoices: readonly Invoice[], amount = 2000) {
  const sized = allowance('floors', amount, ['material']);
  return priceHouse(items, [{ ...sized, allowance: { ...sized.allowance, invoices } }], priceBook([oak]));
}

describe('an order that is invoiced', () => {
  test('counts as invoiced in what the allowance covers, shared out by what was computed; labor stays', () => {
    // 1 000 and 500 computed; 1 530.01 invoiced: 1 020.006… and 510.003…
    const { today } = house([place('a', 100), place('b', 50)], [invoice(1530.01)]);
    expect(today.costs.get('a/floor/floor')).toMatchObject({ material: cents(1020.01), labor: cents(500) });
    expect(today.costs.get('b/floor/floor')).toMatchObject({ material: cents(510), labor: cents(250) });
    expect(orderList(today)[0]?.cost).toMatchObject({ material: cents(1530.01), labor: cents(750) });
  });

  test('both figures are told, and the step says why', () => {
    const priced = house([place('a', 100)], [invoice(1200)], 1000);
    const [entry] = makeLedger(priced);
    expect(entry?.lines[0]).toMatchObject({
      covered: cents(1200),
      computed: cents(1000),
      why: 'as invoiced, F-118 of 14 April 2026; computed $1,000.00',
    });
    expect(entry).toMatchObject({ overage: cents(200), truedUpOn: '2026-04-14' });
    expect(entry?.invoiced).toMatchObject([{ option: 'floor/oak', sum: cents(1200), computed: cents(1000) }]);
    expect(entry?.figures[1]?.why).toBe(
      '1 choice made, in what it covers, 1 of them as invoiced, $200.00 more than computed; trued up 14 April 2026, when the last invoice was in',
    );
    const steps = contractSteps(contract, entry ? [entry] : [], [], cents(0), []);
    expect(steps[1]?.why).toBe('$1,200.00 drawn, $1,200.00 of it as invoiced, less $1,000.00, plus $30.00 mark-up');
  });

  test('until its last invoice is in, the computed figure stands', () => {
    const priced = house([place('a', 100)], [invoice(600, { last: false })]);
    expect(makeLedger(priced)[0]).toMatchObject({ committed: cents(1000) });
    expect(makeLedger(priced)[0]?.truedUpOn).toBeUndefined();
    const both = house([place('a', 100)], [invoice(600, { last: false }), invoice(450, { number: 'F-131' })]);
    expect(makeLedger(both)[0]).toMatchObject({ committed: cents(1050) });
  });

  test('a place that was not ordered is none of its business, and keeps the allowance from being trued up', () => {
    const priced = house([place('a', 100), place('b', 50, { ordered: false })], [invoice(900)]);
    expect(priced.today.costs.get('a/floor/floor')?.material).toBe(cents(900));
    expect(priced.today.costs.get('b/floor/floor')?.material).toBe(cents(500));
    expect(makeLedger(priced)[0]?.truedUpOn).toBeUndefined();
  });
});

/** Random houses in which some places are ordered, and some orders invoiced. */
const invoicedHouse = fc
  .tuple(
    randomHouse,
    fc.array(fc.boolean(), { minLength: 25, maxLength: 25 }),
    fc.array(
      fc.record({
        slug: fc.constantFrom('p0', 'p1'),
        amount: fc.integer({ min: 0, max: 900_000 }),
        last: fc.boolean(),
        on: fc.constantFrom(0, 1),
      }),
      { maxLength: 4 },
    ),
  )
  .map(([{ items, allowances, book }, ordered, bills]) => ({
    items: items.map((each, index) => ({ ...each, ordered: each.decided && ordered[index] === true })),
    allowances: allowances.map((sized, index) => {
      const own = bills.filter(({ on }) => on === index);
      const invoices = own.map(({ slug, amount, last }) => invoice(amount / 100, { option: `floor/${slug}`, last }));
      return { ...sized, allowance: { ...sized.allowance, invoices } };
    }),
    book,
  }));

test('whatever is invoiced, places add up to orders and an order to its invoices, to the cent', () => {
  fc.assert(
    fc.property(invoicedHouse, ({ items, allowances, book }) => {
      const priced = priceHouse(items, allowances, book);
      expect(addCosts(orderList(priced.today).map(({ cost }) => cost))).toEqual(worldCost(priced.today));
      for (const { id, invoiced, covers, lines } of makeLedger(priced)) {
        for (const { option: of, sum, complete, computed } of invoiced) {
          const own = items.filter(
            (each) => each.allowance === id && each.ordered && each.chosen === of && each.supply === 'contractor',
          );
          // Without a quantity nothing was bought that an invoice could be for.
          if (
            !complete ||
            computed === undefined ||
            own.every((each) => !priced.today.costs.get(each.selection)?.total)
          )
            continue;
          const drawn = own.reduce((total, each) => {
            const cost = priced.today.costs.get(each.selection);
            return total + covers.reduce((part, key) => part + (cost?.[key] ?? 0), 0);
          }, 0);
          expect(drawn).toBe(sum);
          expect(lines.filter((line) => line.option === of && line.computed !== undefined)).toHaveLength(own.length);
        }
      }
    }),
  );
});

test('what a choice would cost is what the whole house costs with it, invoices or not', () => {
  fc.assert(
    fc.property(invoicedHouse, fc.nat(), fc.nat(), ({ items, allowances, book }, which, choice) => {
      const priced = priceHouse(items, allowances, book);
      const target = priced.items[which % priced.items.length] as Item;
      const options = [...target.takeoffs.keys()];
      const id = options[choice % options.length] as string;
      const chosen = (each: Item): Item => ({
        ...each,
        chosen: id,
        decided: true,
        // Another product was not ordered.
        ordered: each.ordered === true && each.chosen === id,
      });
      // The other open choices on its allowance are chosen as they rest.
      const rest = new Map(priced.choices.restOf(target).map(({ item, stand }) => [item.selection, stand]));
      const resting = (each: Item): Item => {
        const stand = rest.get(each.selection);
        return stand?.option === undefined ? each : { ...each, chosen: stand.option, decided: stand.decided };
      };
      const changed = items.map((each) => (each.selection === target.selection ? chosen(each) : resting(each)));
      const { houseChange } = priced.choices.figure(target, id);
      expect(priced.change + houseChange).toBe(priceHouse(changed, allowances, book).change);
    }),
  );
});
