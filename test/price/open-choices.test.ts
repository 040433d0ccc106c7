import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  changeInWorld,
  mostCombinations,
  priceHouse,
  type HousePrice,
  type Item,
  type Stand,
} from '../../src/core/price/index.js';
import { allowance, cents, item, option, priceBook } from './house.js';
import { randomHouse } from './random-house.js';

const oak = option({ id: 'floor/oak', material: 10, holds: 20 });
const pine = option({ id: 'floor/pine', material: 4 });
const book = priceBook([oak, pine]);
const ids = ['floor/oak', 'floor/pine'];

const line = (room: string, more: Partial<Parameters<typeof item>[0]> = {}): Item =>
  item({
    selection: `${room}/floor/floor`,
    net: 50,
    options: ids,
    standard: 'floor/pine',
    allowance: 'floors',
    ...more,
  });

const at = (house: HousePrice, room: string): Item => house.items.find((each) => each.room === room) as Item;

/** The house priced anew with some places standing otherwise: nothing is shared with what is tested. */
function anew(house: HousePrice, stands: ReadonlyMap<Item, Stand>): number {
  const items = house.items.map((each): Item => {
    const stand = stands.get(each);
    if (!stand) return each;
    return { ...each, decided: stand.decided, ...(stand.decided && stand.option && { chosen: stand.option }) };
  });
  return priceHouse(items, house.allowances, house.book).change;
}

const chosen = (id: string): Stand => ({ option: id, decided: true });

describe('an open choice on an allowance that others draw on too', () => {
  // 900 held; both at pine 200 + 200. Oak here: 3 boxes of 20 at 10 = 600, with pine there 200: 800 of 900, 100 returns.
  const house = priceHouse([line('a'), line('b')], [allowance('floors', 900)], book);

  test('is priced with the others at their standard, not as if they stayed open', () => {
    const { choices } = house;
    expect(choices.figure(at(house, 'a'), 'floor/pine').change).toBe(cents(-500));
    expect(choices.figure(at(house, 'a'), 'floor/oak').change).toBe(cents(-100));
  });

  // Oak twice is 5 boxes, 1 000: 100 over, 15 % on it.
  test('ranges over what else may still be chosen, bought together', () => {
    const [a, b] = [at(house, 'a'), at(house, 'b')];
    expect(house.choices.range(a, 'floor/oak', [a, b])).toEqual({ low: cents(-100), high: cents(115), priced: 'all' });
    expect(house.choices.extremes([a, b])).toMatchObject({ low: cents(-500), high: cents(115) });
    expect(house.choices.drawn('floors')).toMatchObject({ low: cents(400), high: cents(1000) });
  });

  test('takes the middle one by price where another has no standard, and leaves open what has nothing to choose', () => {
    const bare = item({ selection: 'b/floor/floor', net: 50, options: ids, allowance: 'floors' });
    const without = priceHouse([line('a'), bare], [allowance('floors', 900)], book);
    expect(without.choices.restOf(at(without, 'a'))[0]?.stand).toEqual(chosen('floor/pine'));
    const nothing = priceHouse([line('a'), { ...bare, considered: [] }], [allowance('floors', 900)], book);
    expect(nothing.choices.restOf(at(nothing, 'a'))[0]?.stand).toEqual({ decided: false });
    expect(nothing.choices.figure(at(nothing, 'a'), 'floor/oak').change).toBe(0);
  });

  test('what is not considered is in no range', () => {
    const only = priceHouse([line('a'), line('b', { considered: ['floor/oak'] })], [allowance('floors', 900)], book);
    const [a, b] = [at(only, 'a'), at(only, 'b')];
    expect(only.choices.extremes([a, b])).toMatchObject({ low: cents(-100), high: cents(115) });
    expect(only.choices.drawn('floors')).toMatchObject({ low: cents(800), high: cents(1000) });
  });
});

// Oak lies in b: 3 boxes of 20, 600 drawn. Oak in a too makes 5 boxes, 1 000, where a alone would buy 3 more; pine is 200.
test('what an open line would draw alone is what the house draws more, with what is bought already', () => {
  const house = priceHouse([line('a'), line('b', { chosen: 'floor/oak' })], [allowance('floors', 900)], book);
  const alone = (id: string) => house.choices.drawnAlone(at(house, 'a'), id, 'floors');
  expect([alone('floor/oak'), alone('floor/pine')]).toEqual([cents(400), cents(200)]);
});

test('too many combinations are told, and each at its cheapest and dearest is compared', () => {
  const many = Array.from({ length: Math.ceil(Math.log2(mostCombinations)) + 1 }, (_, index) => line(`r${index}`));
  const house = priceHouse(many, [allowance('floors', 3000)], book);
  const lines = house.choices.on('floors');
  // 11 × 50 sq ft: pine 2 200 leaves 800; oak 28 boxes, 5 600, is 2 600 over.
  expect(house.choices.extremes(lines)).toMatchObject({ low: cents(-800), high: cents(2990), priced: 'ends' });
});

describe('random houses', () => {
  const open = (house: HousePrice): readonly Item[] =>
    house.items.filter(({ decided, allowance: on }) => !decided && on !== undefined);

  test('choosing an option moves the total by what was shown, with the others on its allowance at their rest', () => {
    fc.assert(
      fc.property(randomHouse, ({ items, allowances, book: prices }) => {
        const house = priceHouse(items, allowances, prices);
        for (const target of open(house)) {
          const rest = new Map(house.choices.restOf(target).map(({ item: other, stand }) => [other, stand]));
          for (const { standard, selection } of rest.keys()) {
            const stand = house.choices.restOf(target).find(({ item: other }) => other.selection === selection)?.stand;
            if (standard !== undefined) expect(stand).toEqual(chosen(standard));
          }
          const before = anew(house, rest);
          expect(house.change + house.choices.restChange(target)).toBe(before);
          for (const id of target.takeoffs.keys()) {
            const then = anew(house, new Map([...rest, [target, chosen(id)]]));
            const figure = house.choices.figure(target, id);
            expect(figure.change).toBe(then - before);
            expect(house.change + figure.houseChange).toBe(then);
            const { here, elsewhere, onNet } = figure;
            const beside = here + elsewhere + onNet.markup + onNet.fee;
            const moved = figure.allowances.reduce((sum, { change }) => sum + change, beside);
            expect(moved).toBe(figure.change);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('an option’s range holds its figure, and the cheapest and dearest are priced as whole houses', () => {
    fc.assert(
      fc.property(randomHouse, ({ items, allowances, book: prices }) => {
        const house = priceHouse(items, allowances, prices);
        for (const { allowance: sized } of allowances) {
          const lines = house.choices.on(sized.id);
          if (lines.length === 0) continue;
          const found = house.choices.extremes(lines);
          const ends = [
            [found.low, found.lowest],
            [found.high, found.highest],
          ] as const;
          for (const [change, stands] of ends) {
            const way = new Map(lines.map((each, index) => [each, stands[index] as Stand]));
            expect(house.change + change).toBe(anew(house, way));
            const inWorld = changeInWorld(
              house,
              (each) => (way.has(each) ? way.get(each)?.option : house.today.counted.get(each.selection)),
              (each) => way.get(each)?.decided ?? each.decided,
            );
            expect(house.change + change).toBe(inWorld.change);
          }
          for (const each of lines) {
            for (const id of each.considered) {
              const { low, high } = house.choices.range(each, id, lines);
              const { change } = house.choices.figure(each, id);
              expect([low <= change, change <= high]).toEqual([true, true]);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('no combination lies outside a range that was priced whole', () => {
    fc.assert(
      fc.property(randomHouse, fc.array(fc.nat(), { minLength: 25, maxLength: 25 }), (random, picks) => {
        const house = priceHouse(random.items, random.allowances, random.book);
        for (const { allowance: sized } of random.allowances) {
          const lines = house.choices.on(sized.id).filter(({ considered }) => considered.length > 0);
          const { low, high, priced } = house.choices.extremes(lines);
          if (priced !== 'all' || lines.length === 0) continue;
          const way = new Map(
            lines.map((each, index) => [
              each,
              chosen(each.considered[(picks[index] ?? 0) % each.considered.length] as string),
            ]),
          );
          const moved = anew(house, way) - house.change;
          expect([low <= moved, moved <= high]).toEqual([true, true]);
        }
      }),
      { numRuns: 60 },
    );
  });
});
