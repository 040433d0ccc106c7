import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rollUp } from '../../scripts/roll-up.js';
import { makeBook, priceRecords, type Book } from '../../src/core/book/index.js';
import { addCosts, priceHouse } from '../../src/core/price/index.js';
import type { Records, Selection } from '../../src/core/model/index.js';
import { demoHouse } from '../demo-house.js';
import { atMost } from '../processor-time.js';

const { records, measures } = await demoHouse();
const bookOf = (of: Records): Book => makeBook(of, measures, '2026-04-20').value!;
const demo = bookOf(records);

const sum = (amounts: readonly number[]): number => amounts.reduce((total, amount) => total + amount, 0);

function withoutChoice(selection: Selection): Selection {
  const open: { -readonly [Key in keyof Selection]: Selection[Key] } = { ...selection };
  delete open.chosen;
  return open;
}

/** The demo with some of its choices made otherwise: `pick` answers a number for each selection. */
function decidedBy(pick: (index: number) => number): Records {
  let index = 0;
  const rooms = records.rooms.map((room) => ({
    ...room,
    selections: room.selections.map((selection) => {
      const open = withoutChoice(selection);
      const options = [undefined, ...selection.considering];
      const option = options[pick(index++) % options.length];
      return option === undefined ? open : { ...open, chosen: option };
    }),
  }));
  return { ...records, rooms };
}

describe.each([
  ['the demo', () => demo],
  ['the demo, all open', () => bookOf(decidedBy(() => 0))],
])('%s can be ticked', (_, make) => {
  const book = make();
  const { money, selections } = book;

  test('step by step from the contract sum to today', () => {
    let running = 0;
    for (const step of money.steps) {
      running = step.kind === 'total' ? running : running + step.amount;
      expect([step.what, step.running, step.why === '']).toEqual([step.what, running, false]);
    }
    expect(running).toBe(money.today);
    expect(money.upgrades + money.credits).toBe(money.net);
    const { contractSum, allowances, net, sharedPacks, onNet } = money;
    const byLines = sum(allowances.map(({ change }) => change)) + net + sharedPacks;
    expect(contractSum + byLines + onNet.markup + onNet.fee).toBe(money.today);
  });

  test('each upgrade and credit from chosen and standard', () => {
    for (const { id, change, reckoning, insteadOf } of selections) {
      const restocking = insteadOf?.restocking?.amount ?? 0;
      if (!reckoning) {
        expect([id, change]).toEqual([id, restocking]);
        continue;
      }
      const { counted, standard, difference, markup, retained } = reckoning;
      expect([id, counted - standard, difference + markup + retained + restocking]).toEqual([id, difference, change]);
    }
    // Of the latches of one door, $84.00 of material, 15 %.
    expect(sum(selections.map(({ insteadOf }) => insteadOf?.restocking?.amount ?? 0))).toBe(12_60);
  });

  test('each allowance from its lines', () => {
    for (const entry of money.allowances) {
      const { amount, lines, committed, openLow, openHigh, balance, overage, markup, retained, credit, change } = entry;
      const { sharedLow, sharedHigh } = entry;
      expect(sum(lines.map(({ covered }) => covered))).toBe(committed);
      expect(sum(lines.filter(({ open }) => open).map(({ low }) => low)) + sharedLow).toBe(openLow);
      expect(sum(lines.filter(({ open }) => open).map(({ high }) => high)) + sharedHigh).toBe(openHigh);
      expect(amount - committed).toBe(balance);
      const saved = entry.settled ? Math.max(0, balance) : 0;
      expect(overage - saved + markup + retained).toBe(change);
      expect(credit).toBe(Math.max(0, -change));
      expect(entry.figures.at(-1)?.amount).toBe(change);
    }
  });

  test('each alternative from its effects', () => {
    for (const { id, alternatives, rest } of selections) {
      for (const { option, againstToday, effects, houseTotal } of alternatives) {
        expect([id, option, sum(effects.map(({ amount }) => amount))]).toEqual([id, option, againstToday]);
        expect(houseTotal).toBe(money.today + (rest?.change ?? 0) + againstToday);
      }
    }
  });

  test('each forecast from today, decision by decision', () => {
    for (const { total, lines, together } of Object.values(money.forecast)) {
      expect(money.today + sum(lines.map(({ alone }) => alone)) + together).toBe(total);
      expect(lines.map(({ decision }) => decision)).toEqual(book.decisions.map(({ id }) => id));
    }
    const { low, expected, high } = money;
    expect([low <= expected, expected <= high]).toEqual([true, true]);
  });

  test('each open choice stands in one decision, and its figures in their ranges', () => {
    const open = selections.filter(({ state }) => state === 'open').map(({ id }) => id);
    expect(book.decisions.flatMap(({ choices }) => choices.map(({ selection }) => selection)).sort()).toEqual(
      open.sort(),
    );
    const usual = (id: string): boolean => {
      const { considering, standard } = selections.find((each) => each.id === id)!;
      return standard !== undefined && considering.includes(standard);
    };
    for (const { choices, low, high, priced: how } of book.decisions) {
      const resting = choices.map(({ selection }) => selection);
      expect(low.change).toBeLessThanOrEqual(high.change);
      for (const { selection: id, options } of choices) {
        const { alternatives, rest, considering } = selections.find((each) => each.id === id)!;
        for (const { option, change, range } of options) {
          expect(change).toBe(alternatives.find((each) => each.option === option)?.againstToday);
          expect([(range?.low ?? change) <= change, change <= (range?.high ?? change)]).toEqual([true, true]);
          // With the others at a standard that nobody considers any more, the figure is of a house outside the range.
          const others = resting.filter((other) => other !== id);
          const among = how === 'all' && considering.includes(option) && others.every(usual);
          const moved = change + (rest?.change ?? 0);
          if (among) expect([id, option, low.change <= moved, moved <= high.change]).toEqual([id, option, true, true]);
        }
      }
    }
    const considered = (way: Book['decisions'][number]['low']) =>
      way.options.every(({ selection: id, option }) => {
        const { category, considering, standard } = selections.find((each) => each.id === id)!;
        const may = considering.length > 0 ? considering : standard === undefined ? [] : [standard];
        return option === undefined ? may.length === 0 : may.some((slug) => `${category}/${slug}` === option);
      });
    for (const { low, high } of book.decisions) expect([considered(low), considered(high)]).toEqual([true, true]);
  });
});

const priced = priceRecords(records, measures)();

/** The demo's total with some open choices made, priced anew; by id of the selection, the option. */
function totalOf(made: ReadonlyMap<string, string>): number {
  const items = priced.items.map((item) => {
    const option = made.get(item.selection);
    return option === undefined ? item : { ...item, decided: true, chosen: `${item.category}/${option}` };
  });
  return priced.book.contract.sum + priceHouse(items, priced.allowances, priced.book).change;
}

test('choosing an option of the demo moves the total by what was shown', { timeout: 60_000 }, () => {
  let count = 0;
  for (const { id, state, alternatives, rest } of demo.selections) {
    if (state !== 'open') continue;
    const others = (rest?.lines ?? []).map(({ selection, option }): [string, string] => {
      expect([selection, demo.selections.find((each) => each.id === selection)?.standard]).toEqual([
        selection,
        option?.split('/')[1],
      ]);
      return [selection, option?.split('/')[1] ?? ''];
    });
    const before = totalOf(new Map(others));
    for (const { option, againstToday, houseTotal } of alternatives) {
      const then = totalOf(new Map([...others, [id, option]]));
      expect([id, option, then - before, then]).toEqual([id, option, againstToday, houseTotal]);
      count += 1;
    }
  }
  expect(count).toBeGreaterThan(90);
});

/** Worked by pricing every combination of the demo's records apart from this program, with mark-up on each line: −5,321.34 to
 *  5,983.09 for stone, 271.43 to 2,556.43 for flooring; since then the gallery and the upper hall were measured anew, 3.375 sq ft more of
 *  floor, which the allowance of $9.25 covers: 31.22 × 1.15 = 35.90 off both ends. The contract figures mark-up on the net: what stone saves takes its 15 %
 *  with it, −5,321.34 × 1.15 = −6,119.54, and the mark-up rounds once for all. Since the
 *  insulation of what stands outside in part, that net is $22,624.23 and its mark-up $3,393.63 (3,393.6345). With the dearest stone it is $5,202.69 more and
 *  $4,174.04 (4,174.038), so +5,202.69 + 780.41; with the cheapest floors $204.81 more and $3,424.36 (3,424.356), so +204.81 + 30.73. */
test.each([
  ['stone', -611954, 598310],
  ['flooring', 23554, 252053],
  ['doors', 28420, 241040],
])('the open choices on %s, decided together', (allowance, low, high) => {
  const decision = demo.decisions.find((each) => each.allowance === allowance);
  expect([decision?.low.change, decision?.high.change, decision?.priced]).toEqual([low, high, 'all']);
  const selections = decision?.low.options.map(({ selection, option }): [string, string] => [
    selection,
    option?.split('/')[1] ?? '',
  ]);
  expect(totalOf(new Map(selections)) - demo.money.today).toBe(low);
});

test('what is open on an allowance is bought together: $1,285.20 of carpet, not $1,338.75', () => {
  const entry = demo.money.allowances.find(({ id }) => id === 'flooring');
  expect([entry?.openLow, entry?.sharedLow]).toEqual([128520, -5355]);
});

test('the forecast takes no door that nobody considers', () => {
  for (const { lines } of Object.values(demo.money.forecast)) {
    for (const { options } of lines) {
      for (const { selection: id, option } of options) {
        const { considering, category } = demo.selections.find((each) => each.id === id)!;
        expect(considering.map((slug) => `${category}/${slug}`)).toContain(option);
      }
    }
  }
});

test('whatever is chosen: rooms, trades, categories and orders add up to the house', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(fc.array(fc.nat(50), { minLength: 1, maxLength: 60 }), (picks) => {
      const { money, orders } = bookOf(decidedBy((index) => picks[index % picks.length] ?? 0));
      const all = addCosts(orders.map(({ cost }) => cost));
      expect(money.finishes).toEqual(all);
      for (const cut of [money.byRoom, money.byTrade, money.byCategory]) {
        expect(addCosts(cut.map(({ cost }) => cost))).toEqual(all);
        expect(sum(cut.map(({ change }) => change))).toBe(money.net);
      }
    }),
    { numRuns: 12 },
  );
});

test('an alternative says what the whole house would order of it', () => {
  for (const { alternatives, category, counted, supply } of demo.selections) {
    const same = alternatives.find(({ option }) => option === counted);
    if (!same) continue;
    const orders = demo.orders.filter((order) => order.option === `${category}/${counted}` && order.supply === supply);
    expect(same.lots.map(({ part, packs, ordered }) => [part, packs, ordered])).toEqual(
      orders.map(({ part, packs, ordered }) => [part, packs, ordered]),
    );
  }
});

/** The limits are 10 ms and a second; 3 ms, and 15 ms for 438 choices, were measured on an idle machine, 20 and 86 on one
 *  with nine times its work. `npm run bench` has the ratios; this bound only catches what has gone astray. */
test('the demo rolls up in 10 ms, and all its choices together in a second', () => {
  const { house: once, choices } = rollUp(records, measures, 8);
  expect(once).toBeLessThan(atMost(100, once));
  expect(choices).toBeLessThan(atMost(1000, choices));
});
