import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addCosts, makeLedger, orderList, priceHouse, worldCost, type Item } from '../../src/core/price/index.js';
import { randomHouse } from './random-house.js';

test('by room, by trade, by category, and by allowance with what is on none, the house adds up to the same', () => {
  fc.assert(
    fc.property(randomHouse, ({ items, allowances, book }) => {
      const house = priceHouse(items, allowances, book);
      const total = worldCost(house.today);
      const cut = (key: (item: Item) => string | undefined) => {
        const keys = [...new Set(items.map(key))];
        return addCosts(
          keys.map((each) =>
            addCosts(
              items.filter((one) => key(one) === each).flatMap((one) => house.today.costs.get(one.selection) ?? []),
            ),
          ),
        );
      };
      expect(cut((item) => item.room)).toEqual(total);
      expect(cut((item) => item.trade)).toEqual(total);
      expect(cut((item) => item.category)).toEqual(total);
      expect(cut((item) => item.allowance)).toEqual(total);
      // What the ledger says is committed is what its places cost in what it covers.
      for (const entry of makeLedger(house)) {
        const own = items.filter((item) => item.allowance === entry.id && item.decided);
        const cost = addCosts(own.flatMap((item) => house.today.costs.get(item.selection) ?? []));
        expect(entry.committed).toBe(entry.covers.reduce((sum, part) => sum + cost[part], 0));
      }
    }),
  );
});

test('an upgrade of nothing is zero: every place at its standard leaves the contract as it is', () => {
  fc.assert(
    fc.property(randomHouse, ({ items, book }) => {
      const plain = items.map(({ allowance: _, chosen: __, ...item }): Item => {
        const { standard } = item;
        return { ...item, decided: true, ...(standard !== undefined && { chosen: standard }) };
      });
      expect(priceHouse(plain, [], book).change).toBe(0);
    }),
  );
});

test('swapping a choice and back is zero', () => {
  fc.assert(
    fc.property(randomHouse, fc.nat(), fc.nat(), ({ items, allowances, book }, which, choice) => {
      const before = priceHouse(items, allowances, book);
      const target = before.items[which % before.items.length] as Item;
      if (target.chosen === undefined) return;
      const ids = [...target.takeoffs.keys()];
      const other = ids[choice % ids.length] as string;
      const swapped = items.map((item) => (item.selection === target.selection ? { ...item, chosen: other } : item));
      const after = priceHouse(swapped, allowances, book);
      const back = after.items.find((item) => item.selection === target.selection) as Item;
      expect(before.choices.figure(target, other).change + after.choices.figure(back, target.chosen).change).toBe(0);
    }),
  );
});

test('prices times ten are totals times ten, within the half cent of each rounding', () => {
  fc.assert(
    fc.property(randomHouse, ({ items, book }) => {
      const times = 10;
      const options = new Map(
        [...book.options].map(([id, option]) => {
          const parts = option.parts.map((part) => ({
            ...part,
            material: { ...part.material, amount: part.material.amount * times },
            ...(part.labor && { labor: { ...part.labor, amount: part.labor.amount * times } }),
          }));
          return [id, { ...option, parts, freight: (option.freight * times) as typeof option.freight }];
        }),
      );
      const one = priceHouse(items, [], book).today;
      const ten = priceHouse(items, [], { ...book, options }).today;
      // Each order rounds material, labor and tax: at most half a cent each, tenfold, and half a cent each of its own; the
      // tax is taken of rounded material besides.
      const slack = orderList(one).length * (3 * (0.5 * times + 0.5) + times);
      expect(Math.abs(worldCost(ten).total - times * worldCost(one).total)).toBeLessThanOrEqual(slack);
    }),
  );
});
